package kitwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import kitwright.finding.Finding;
import kitwright.finding.Matter;
import kitwright.finding.Severity;
import kitwright.value.Place;
import org.junit.jupiter.api.Test;

/** What stops comes first, and what follows from another stands under it. */
class CausesTest {
  private static final Map<String, List<String>> FILES =
      Map.of(
          "kit.yaml", List.of("kit: [", "  - {id: mould-1, qty: 1}"),
          "crate.yaml",
              List.of("  - {item: mould-1}", "  - {item: \"mould-10\"}", "  - {item: 1}"));

  private static List<Matter> of(Finding... findings) {
    return Causes.of(List.of(findings), file -> FILES.getOrDefault(file, List.of()));
  }

  private static Finding finding(String rule, Severity severity, int line, String... records) {
    Place at = new Place("a.yaml", line, 1, line, 2);
    return new Finding(rule, severity, at, rule + " " + line, "", "", List.of(records));
  }

  private static Finding dangling(int line, int from, int to) {
    Place at = new Place("crate.yaml", line, from, line, to);
    return new Finding("reference-dangling", Severity.STOP, at, "dangles", "", "", List.of());
  }

  private static final Finding BROKEN =
      new Finding(
          "yaml-unreadable",
          Severity.STOP,
          new Place("kit.yaml", 2, 3, 2, 4),
          "cannot be understood",
          "",
          "",
          List.of());

  @Test
  void whatStopsComesFirstWhateverItsFile() {
    Finding note = finding("claim-draft-unsent", Severity.NOTE, 1);
    Finding warn = finding("tool-overdue", Severity.WARN, 2);
    Finding stop = finding("evidence-altered", Severity.STOP, 3);
    assertThat(of(note, warn, stop)).extracting(Matter::cause).containsExactly(stop, warn, note);
  }

  @Test
  void amongTheSameWeightWhatIsReadFirstComesFirst() {
    Finding sum = finding("rate-missing", Severity.STOP, 1);
    Finding key = finding("key-unknown", Severity.STOP, 9);
    assertThat(of(sum, key)).extracting(Matter::cause).containsExactly(key, sum);
  }

  @Test
  void aNameThatStandsInAnUnreadableFileIsMissingForThatReason() {
    Finding follows = dangling(1, 12, 19);
    assertThat(of(follows, BROKEN)).containsExactly(new Matter(BROKEN, List.of(follows)));
  }

  @Test
  void aNameThatStandsNowhereIsAFaultOfItsOwn() {
    Finding longer = dangling(2, 12, 22);
    assertThat(of(longer, BROKEN))
        .containsExactly(new Matter(BROKEN, List.of()), new Matter(longer, List.of()));
  }

  @Test
  void aHoldPointWaitsForWhatTheSubstitutionLacks() {
    Finding fails = finding("assessment-fails", Severity.STOP, 5, "assessment a", "substitution s");
    Finding unsigned = finding("substitution-unsigned", Severity.WARN, 4, "substitution s");
    Finding near = finding("hold-point-near", Severity.WARN, 1, "substitution s", "task t");
    Finding other = finding("hold-point-near", Severity.WARN, 2, "substitution r", "task t");
    assertThat(of(near, unsigned, fails, other))
        .containsExactly(new Matter(fails, List.of(unsigned, near)), new Matter(other, List.of()));
  }

  @Test
  void nothingIsPutUnderWhatWeighsLess() {
    Finding unsigned = finding("substitution-unsigned", Severity.NOTE, 4, "substitution s");
    Finding near = finding("hold-point-near", Severity.WARN, 1, "substitution s");
    assertThat(of(unsigned, near)).hasSize(2);
  }

  @Test
  void everyNameInTheTableIsARule() {
    assertThat(RuleNames.all()).containsAll(Causes.CAUSES.keySet());
    Causes.CAUSES.values().forEach(causes -> assertThat(RuleNames.all()).containsAll(causes));
  }
}

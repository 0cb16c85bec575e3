package kitwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitwright.assessment.Assessments;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Verdict;
import kitwright.check.Check;
import kitwright.finding.Findings;
import kitwright.ledger.Assessment;
import kitwright.ledger.Delivery;
import kitwright.ledger.Evidence;
import kitwright.ledger.EvidenceFile;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.LedgerFolder;
import kitwright.ledger.LogDay;
import kitwright.ledger.Spend;
import kitwright.substitution.Lack;
import kitwright.substitution.SubstitutionStandings;
import org.junit.jupiter.api.Test;

/** The demonstration ledger reads without a fault and holds what it is meant to show. */
class DemonstrationTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 3, 29);

  private static Ledger ledger(Findings out) {
    return LedgerFolder.at(Path.of("ledger")).read(out).orElseThrow();
  }

  private static Ledger ledger() {
    return ledger(new Findings());
  }

  @Test
  void readsWithoutAFault() {
    Findings faults = new Findings();
    ledger(faults);
    assertThat(faults.inOrder()).isEmpty();
  }

  @Test
  void holdsAKitOfSixCratesAndItsDeliveries() {
    Ledger ledger = ledger();
    assertThat(ledger.kit()).hasSizeGreaterThanOrEqualTo(120);
    assertThat(ledger.kit().stream().map(item -> item.crate().orElseThrow()).distinct())
        .containsExactly("C1", "C2", "C3", "C4", "C5", "C6");
    assertThat(ledger.kit())
        .allMatch(item -> item.drawing().isPresent() && item.price().isPresent());
    assertThat(ledger.deliveries()).filteredOn(d -> d.received().isPresent()).hasSize(3);
    assertThat(ledger.deliveries()).filteredOn(d -> d.received().isEmpty()).hasSize(1);
    assertThat(ledger.deliveries()).extracting(Delivery::note).doesNotHaveDuplicates();
  }

  @Test
  void holdsShortagesClaimsAndSubstitutions() {
    Ledger ledger = ledger();
    assertThat(ledger.shortages()).hasSize(9);
    assertThat(ledger.claims()).hasSizeGreaterThanOrEqualTo(4);
    assertThat(ledger.substitutions()).hasSize(7);
    assertThat(ledger.substitutions()).filteredOn(s -> s.signOffs().isEmpty()).hasSize(1);
    assertThat(ledger.assessments()).extracting(Assessment::method).contains(methods());
  }

  private static Assessment.Method[] methods() {
    return new Assessment.Method[] {
      Assessment.Method.SECTION,
      Assessment.Method.PANEL,
      Assessment.Method.LAMINATE,
      Assessment.Method.BOLT,
      Assessment.Method.EXTERNAL
    };
  }

  @Test
  void holdsMoneyInThreeCurrencies() {
    Ledger ledger = ledger();
    assertThat(ledger.budget()).hasSize(8);
    assertThat(ledger.spending()).hasSizeGreaterThanOrEqualTo(90);
    assertThat(ledger.spending().stream().map(s -> s.amount().currency().getCurrencyCode()))
        .contains("EUR", "NZD", "GBP");
    assertThat(ledger.spending()).extracting(Spend::state).contains(Spend.State.values());
    assertThat(ledger.spending()).filteredOn(s -> s.pays().isPresent()).isNotEmpty();
  }

  @Test
  void holdsTasksToolsStockAndCutsToPlanWith() {
    Ledger ledger = ledger();
    assertThat(ledger.tasks()).hasSizeGreaterThanOrEqualTo(40);
    assertThat(ledger.tasks())
        .filteredOn(task -> task.uses().stream().anyMatch(use -> use.section().isPresent()))
        .isNotEmpty();
    assertThat(ledger.borrowed()).hasSize(6);
    assertThat(ledger.cuts()).hasSizeGreaterThanOrEqualTo(3);
    assertThat(ledger.stock()).hasSizeGreaterThanOrEqualTo(10);
    assertThat(ledger.forecast()).hasSize(10);
  }

  @Test
  void holdsTenWeeksOfLog() {
    List<LogDay> log = ledger().log();
    assertThat(log).hasSizeGreaterThanOrEqualTo(50);
    assertThat(log.get(0).day()).isEqualTo(TODAY.minusWeeks(10).plusDays(1));
    assertThat(log).allMatch(day -> day.day().isBefore(TODAY));
    assertThat(log).allMatch(day -> !day.body().isBlank() && !day.hours().isEmpty());
    assertThat(log).extracting(LogDay::audience).contains(LogDay.Audience.CREW);
  }

  /** What a day says of a task never falls below what an earlier day said. */
  @Test
  void progressNeverFalls() {
    List<LogDay> log = ledger().log();
    for (int later = 1; later < log.size(); later++) {
      LogDay day = log.get(later);
      for (LogDay before : log.subList(0, later)) {
        day.tasks()
            .forEach(
                (task, reached) ->
                    before.tasks().entrySet().stream()
                        .filter(earlier -> earlier.getKey().id().equals(task.id()))
                        .forEach(
                            earlier ->
                                assertThat(reached)
                                    .as(task.id() + " on " + day.day())
                                    .isGreaterThan(earlier.getValue())));
      }
    }
  }

  @Test
  void everyPieceOfEvidenceIsThere() {
    Ledger ledger = ledger();
    assertThat(
            Arrays.stream(Kind.values())
                .flatMap(kind -> ledger.entries(kind).stream())
                .flatMap(entry -> Evidence.in(entry).stream())
                .map(ledger::evidence))
        .isNotEmpty()
        .allMatch(file -> file.state() == EvidenceFile.State.PRESENT);
  }

  /** One letter was altered after its hash was taken; nothing else was. */
  @Test
  void onlyThePlantedLetterIsAltered() {
    Ledger ledger = ledger();
    assertThat(
            Arrays.stream(Kind.values())
                .flatMap(kind -> ledger.entries(kind).stream())
                .flatMap(entry -> Evidence.in(entry).stream())
                .filter(piece -> !piece.sha256().equals(ledger.evidence(piece).sha256()))
                .map(Evidence::file))
        .containsExactly("evidence/kit-maker-2026-02-03.txt");
  }

  /** Copy the right digits from “kitwright fingerprint” when a record was changed on purpose. */
  @Test
  void onlyTheRudderWasChangedAfterItWasSigned() {
    assertThat(SubstitutionStandings.on(Facts.of(ledger(), TODAY)).all())
        .filteredOn(standing -> standing.lacks(Lack.STALE))
        .extracting(standing -> standing.substitution().id())
        .containsExactly("sub-rudder-spine");
  }

  @Test
  void assessesItsSubstitutionsEachWithAnotherEnd() {
    Assessments worked = Assessments.on(Facts.of(ledger(), TODAY));
    assertThat(verdict(worked, "bowsprit")).isEqualTo(Verdict.Outcome.PASS);
    assertThat(verdict(worked, "case-bolts")).isEqualTo(Verdict.Outcome.PASS);
    assertThat(verdict(worked, "hull-skin")).isEqualTo(Verdict.Outcome.PASS);
    assertThat(verdict(worked, "topside-enamel")).isEqualTo(Verdict.Outcome.PASS);
    assertThat(verdict(worked, "cockpit-sole")).isEqualTo(Verdict.Outcome.PASS);
    assertThat(tightest(worked, "cockpit-sole", Measure.RESERVE)).contains("core shear");
    assertThat(verdict(worked, "rudder-spine")).isEqualTo(Verdict.Outcome.FAIL);
    assertThat(worked.of("rudder-spine").orElseThrow().breaks().get(0).part())
        .isEqualTo("rudder-stock");
    assertThat(verdict(worked, "bulkhead")).isEqualTo(Verdict.Outcome.FAIL);
    assertThat(worked.of("bulkhead").orElseThrow().tightest().orElseThrow().margin().getAsDouble())
        .isBetween(-0.25, 0.0);
  }

  private static Verdict.Outcome verdict(Assessments worked, String id) {
    return worked.of(id).orElseThrow().verdict().outcome();
  }

  private static String tightest(Assessments worked, String id, Measure measure) {
    return worked.of(id).orElseThrow().rows().stream()
        .filter(row -> row.measure() == measure)
        .findFirst()
        .flatMap(row -> row.built().orElseThrow().governing())
        .orElseThrow();
  }

  /** The ledger's README lists the planted faults by rule and file; there are no others. */
  @Test
  void checkFindsWhatWasPlantedAndNothingElse() throws IOException {
    Findings found = new Findings();
    Check.examine(Facts.of(ledger(), TODAY), found);
    List<String> planted =
        Files.readString(Path.of("ledger/README.md"))
            .lines()
            .map(Pattern.compile("\\| `([a-z-]+)` \\| `([^`]+)` \\|.*")::matcher)
            .filter(Matcher::matches)
            .map(row -> row.group(1) + " " + row.group(2))
            .toList();
    assertThat(
            found.inOrder().stream()
                .map(finding -> finding.rule() + " " + finding.at().file())
                .distinct())
        .containsExactlyInAnyOrderElementsOf(planted);
  }
}

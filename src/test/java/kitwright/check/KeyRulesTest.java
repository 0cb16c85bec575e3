package kitwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.EvidenceFile;
import kitwright.ledger.Facts;
import kitwright.ledger.LedgerReader;
import kitwright.ledger.Rule;
import kitwright.ledger.SourceFile;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rules that look at every key: what they say at the edge of each case, judged on 2 March 2026. */
class KeyRulesTest {
  private static final String NOTHING = "nothing";

  /** Built from 5 January 2026: ten years back and fifteen ahead a year is doubted. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "shortages: [{id: s, item: k, qty: 1, found: 2026-03-02, cause: wrong}] | nothing",
        "shortages: [{id: s, item: k, qty: 1, found: 2026-03-03, cause: wrong}]"
            + " | STOP is still to come; today is 2 March 2026",
        "shortages: [{id: s, item: k, qty: 1, found: 2026-01-05, cause: wrong}] | nothing",
        "shortages: [{id: s, item: k, qty: 1, found: 2026-01-04, cause: wrong}]"
            + " | WARN is before the build began (5 January 2026)",
        "shortages: [{id: s, item: k, qty: 1, found: 2016-01-05, cause: wrong}]"
            + " | WARN is before the build began (5 January 2026)",
        "shortages: [{id: s, item: k, qty: 1, found: 2016-01-04, cause: wrong}]"
            + " | STOP is more than 10 years before the build began (5 January 2026)",
        "deliveries: [{id: d, from: kit-maker, expected: 2041-03-02}] | nothing",
        "deliveries: [{id: d, from: kit-maker, expected: 2041-03-03}]"
            + " | STOP is more than 15 years off",
        "assessments: [{id: a, method: external, on: 2025-12-01}] | WARN is before the build began",
      })
  void aDayThatCannotBe(String yaml, String told) {
    assertThat(told(new DateImpossible(), yaml)).startsWith(told);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "[1 EUR, 2 EUR, 3 EUR] | nothing",
        "[2 EUR, 2 EUR, 2 EUR] | nothing",
        "[3 EUR, 2 EUR, 4 EUR] | does not rise: 3.00 EUR, 2.00 EUR, 4.00 EUR",
        "[1 EUR, 3 EUR, 2 EUR] | does not rise: 1.00 EUR, 3.00 EUR, 2.00 EUR",
        "[1 EUR, 2 NZD, 3 NZD] | does not rise",
      })
  void aRangeThatDoesNotRise(String range, String told) {
    String line = "budget: [{line: spars, title: Spars, amount: 300, remaining: %s}]";
    assertThat(told(new ThreePointDisordered(), line.formatted(range))).contains(told);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "amount: 300, remaining: 0 | nothing",
        "amount: -1, remaining: 0 | “amount” of the budget line spars is below zero: -1.00 EUR",
        "amount: 300, remaining: [0 EUR, 1 EUR, 2 EUR] | nothing",
        "amount: 300, remaining: [-1 EUR, 1 EUR, 2 EUR] | is below zero: -1.00 EUR",
      })
  void anAmountBelowZero(String keys, String told) {
    String line = "budget: [{line: spars, title: Spars, %s}]";
    assertThat(told(new MoneyNegative(), line.formatted(keys))).contains(told);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "PRESENT | evidence/note.txt | nothing",
        "ABSENT | evidence/note.txt | is not there. Put it back, or correct the path",
        "ABSENT | evidence\\note.txt | is not there. Write “/” between the folders",
        "OUTSIDE | ../note.txt | lies outside the ledger and is not opened. Copy it into",
        "NOT_A_FILE | evidence | is a folder or a device. Name one file.",
        "UNREADABLE | evidence/note.txt | cannot be opened. Check who may read it.",
      })
  void evidenceThatNobodyCanLookAt(EvidenceFile.State state, String file, String told) {
    String yaml =
        "build: {name: S, currency: EUR, started: 2026-01-05}\n"
            + "shortages: [{id: s, item: k, qty: 1, found: 2026-02-02, cause: wrong, evidence:"
            + " [{file: '%s'}]}]\n".formatted(file);
    EvidenceFile seen =
        new EvidenceFile(
            state,
            state == EvidenceFile.State.PRESENT ? Optional.of("0".repeat(64)) : Optional.empty());
    Findings out = new Findings();
    Facts day =
        Facts.of(
            LedgerReader.read(
                    List.of(new SourceFile("l.yaml", yaml)),
                    paths -> Map.of(file, seen),
                    new Findings())
                .orElseThrow(),
            Sample.TODAY);
    new EvidenceAbsent().examine(day, out);
    String found =
        out.inOrder().stream()
            .map(each -> each.what() + " " + each.mend())
            .collect(Collectors.joining());
    assertThat(found.isEmpty() ? NOTHING : found).contains(told);
  }

  private static String told(Rule rule, String yaml) {
    String found =
        Sample.findings(rule, yaml + "\n").stream()
            .map(KeyRulesTest::told)
            .collect(Collectors.joining("\n"));
    return found.isEmpty() ? NOTHING : found;
  }

  private static String told(Finding finding) {
    String what = finding.what().replaceFirst("^“[a-z-]+: .*” of the \\S+ \\S+ ", "");
    return finding.severity() + " " + what.replace('\u00a0', ' ');
  }
}

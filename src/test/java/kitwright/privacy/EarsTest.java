package kitwright.privacy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Initials and sums of a ledger, as people write them, and what only looks like them. */
class EarsTest {
  private static final Overheard OVERHEARD =
      Overheard.of(
          Sample.ledger(
              """
              parties:
                - {id: kai, name: Kai Brekke, role: builder}
                - {id: jo, name: Jo-Ann de Vries, role: helper}
                - {id: tv, name: Tor Vik, role: helper}
                - {id: long, name: A B C D E F, role: helper}
                - {id: open, name: Sunniva Strand, role: helper, public: yes}
              budget: [{line: l, title: L, amount: 4000}]
              kit: [{id: ply, what: ply, qty: 2, price: 87.35 EUR}]
              shortages: [{id: s, item: ply, qty: 1, found: 2026-02-01, cause: not-packed, options: [{kind: buy, cost: [311, 322, 433]}]}]
              spending:
                - {id: a, on: 2026-02-02, line: l, what: x, amount: 1234.56, state: paid}
                - {id: b, on: 2026-02-02, line: l, what: x, amount: 12, state: paid}
                - {id: c, on: 2026-02-02, line: l, what: x, amount: 2026, state: paid}
              """));

  private static List<String> whys(String text) {
    return OVERHEARD.in(text).stream().map(Suspicion::why).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "KB did it., kai",
    "K.B. did it., kai",
    "K. B. did it., kai",
    "K-B did it., kai",
    "J-A did it., jo",
    "J.-A. did it., jo",
    "JV did it., jo", // what stands with a capital
    "J.d.V. did it., jo",
    "JAdV did it., jo", // the halves of a name and all of it
    "T.V. did it., tv"
  })
  void initialsAreHeard(String text, String party) {
    assertThat(whys(text)).contains("the initials of " + party);
  }

  @ParameterizedTest
  @CsvSource({
    "kb did it.", // small
    "AKB did it.",
    "KBC did it.",
    "Watched TV.", // everybody's word, without its dots
    "SS did it.", // who is public is public
    "S.S. did it.",
    "ABCDEF did it." // no one has so many
  })
  void whatIsNobodysInitialsIsNot(String text) {
    assertThat(whys(text)).noneMatch(why -> why.startsWith("the initials"));
  }

  @ParameterizedTest
  @CsvSource({
    "It was 1234 altogether.",
    "'It was 1,234.'",
    "It was 1.234 in all.",
    "It was 1 234 each.",
    "It was 4000.",
    "It was 4000!",
    "It was 311.", // the least, the likely and the most that it may cost
    "It was 322.",
    "It was 433."
  })
  void sumsOfTheLedgerAreHeard(String text) {
    assertThat(whys(text)).contains("an amount of the ledger");
  }

  @ParameterizedTest
  @CsvSource({
    "It was 1235.",
    "It was 12.", // too short to tell
    "It was 2026.", // a year
    "It was 87.",
    "It was 1234 bolts.",
    "It was 4000 grit."
  })
  void otherNumbersAreNot(String text) {
    assertThat(whys(text)).doesNotContain("an amount of the ledger");
  }

  @Test
  void withoutPartiesAndSumsNothingIsHeard() {
    Overheard deaf = Overheard.of(Sample.ledger("parties: []\n"));
    assertThat(deaf.in("KB planed 1234 strokes, 4000 in all.")).isEmpty();
  }
}

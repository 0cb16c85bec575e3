package kitwright.shortage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.kit.Positions;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How much of what it replaces a substitution stands for. */
class ServesTest {
  private static final String YAML =
      """
      kit:
        - {id: cl, what: cleat, qty: 4}
        - {id: peg, what: peg, qty: 9}
        - {id: rail, what: rail, qty: 12 m}
      deliveries:
        - {id: d, received: 2026-02-01, from: kit-maker, counted: [{item: peg, qty: 3}]}
      stock:
        - {id: oak, what: oak cleat, qty: 3 each}
        - {id: ash, what: ash cleat, qty: 5 each}
        - {id: board, what: board, size: 900 x 60 x 30 mm, pieces: 2}
        - {id: pole, what: pole, qty: 6 m}
      shortages: [{id: s, item: %s, qty: %s, found: 2026-02-02, cause: not-packed}]
      substitutions:
        - {id: sub, for: s, instead-of: {item: %2$s, qty: %3$s}, use: [%1$s], why: w, grade: finish,
           sign-offs: [{by: nora, on: 2026-02-12}]}
      """;

  private static String yaml(String use, String item, String qty) {
    return YAML.replace("%s, qty: %s, found", "%2$s, qty: %3$s, found").formatted(use, item, qty);
  }

  private static Serves serves(String use, String item, String qty) {
    Ledger ledger = Sample.ledger(yaml(use, item, qty));
    Facts day = Facts.of(ledger, Sample.TODAY);
    return Serves.of(ledger.substitutions().get(0), Positions.on(day), ledger);
  }

  /** Four cleats were ordered for it; nothing can be built of an order. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "'state: ordered, qty: 4 each, expected: 2026-04-20'; 0",
        "'state: ordered, qty: 4 each, came: 2026-02-20'; 4",
        "'state: paid, qty: 4 each'; 4",
        "'state: paid, qty: 4 each, expected: 2026-04-20'; 0",
        "'state: paid, qty: 3 each'; 3",
        "'state: paid'; 4", // as many as it takes, where nobody says how many were bought
        "'state: ordered, qty: 4 each, withdrawn: 2026-02-20'; 0"
      })
  void whatIsBoughtServesOnceItCame(String bought, String qty) {
    String yaml =
        yaml("{spend: p, qty: 4}", "cl", "4")
            + "budget: [{line: l, title: L, amount: 90}]\n"
            + "spending: [{id: p, on: 2026-02-05, line: l, what: cleats, amount: 9, "
            + bought
            + "}]\n";
    Ledger ledger = Sample.ledger(yaml);
    Facts day = Facts.of(ledger, Sample.TODAY);
    assertThat(Serves.of(ledger.substitutions().get(0), Positions.on(day), ledger).qty())
        .hasToString(qty + " each");
  }

  /** Four of what is weighed: nobody can tell whether they are there. */
  @Test
  void inAnotherUnitNothingServes() {
    assertThat(serves("{stock: pole, qty: 4 each}", "cl", "4").qty()).hasToString("0 each");
    assertThat(serves("{stock: pole, qty: 4 each}", "cl", "4").why().orElseThrow())
        .contains("of which 6 m are there, in another unit");
    assertThat(serves("{item: peg, qty: 2 kg}", "cl", "4").qty()).hasToString("0 each");
  }

  /** Pieces of 3000 x 50 mm out of pieces whose sizes are known: by hand, area by area. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "1000 x 50 x 30 mm; 4; 1", // 4 m for rails of 3 m
        "3000 x 50 x 30 mm; 4; 4",
        "3000 x 110 x 30 mm; 2; 4", // ripped in two
        "6000 x 50 x 30 mm; 1; 2",
        "700 x 40 x 30 mm; 4; 0"
      })
  void noMoreIsCutOfPiecesThanTheyHold(String size, int pieces, String qty) {
    String yaml =
        """
        kit: [{id: bar, what: rail, qty: 4, size: 3000 x 50 x 30 mm}]
        stock: [{id: ash, what: ash, size: %s, pieces: %d}]
        substitutions: [{id: sub, instead-of: {item: bar, qty: 4}, use: [{stock: ash, qty: %2$d}], why: w, grade: finish}]
        """
            .formatted(size, pieces);
    Ledger ledger = Sample.ledger(yaml);
    Facts day = Facts.of(ledger, Sample.TODAY);
    assertThat(Serves.of(ledger.substitutions().get(0), Positions.on(day), ledger).qty())
        .hasToString(qty + " each");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "{stock: ash, qty: 4}; 4", // one for one
        "{stock: ash, qty: 5}; 4", // never more than it replaces
        "{stock: ash, qty: 2}; 2", // two pieces are two
        "'{stock: ash, qty: 2}, {stock: oak, qty: 1}'; 3",
        "{stock: oak, qty: 4}; 3", // three are there
        "{item: peg, qty: 4}; 3", // three were counted
        "{stock: board, qty: 1}; 4", // cut into four
        "{stock: board, qty: 3}; 2", // two of three boards are two of three cleats, in whole ones
        "{stock: pole, qty: 1 m}; 4",
        "{stock: pole, qty: 7 m}; 3",
        "''; 0", // nobody says what takes its place
      })
  void itCountsInPlaceOfNoMoreThanItBrings(String use, int pieces) {
    assertThat(serves(use, "cl", "4").qty().amount()).isEqualByComparingTo(pieces + "");
    assertThat(serves(use, "cl", "4").why().isPresent()).isEqualTo(pieces < 4);
  }

  @Test
  void whatIsMeasuredCountsByItsShare() {
    assertThat(serves("{stock: pole, qty: 8 m}", "rail", "10 m").qty().amount())
        .isEqualByComparingTo("7.5");
  }

  @Test
  void whatTheKitPromisesAndNobodyCountedIsNotLessened() {
    assertThat(serves("{item: rail, qty: 2 m}", "cl", "4").qty().amount())
        .isEqualByComparingTo("4");
  }

  @Test
  void theRestOfTheShortageStaysOpen() {
    Facts day = Facts.of(Sample.ledger(yaml("{stock: oak, qty: 4}", "cl", "4")), Sample.TODAY);
    assertThat(ShortageStandings.on(day).all().get(0).open()).hasToString("1 each");
    Facts none = Facts.of(Sample.ledger(yaml("", "cl", "4")), Sample.TODAY);
    assertThat(ShortageStandings.on(none).all().get(0).open()).hasToString("4 each");
  }

  private static List<Finding> told(String use) {
    return Sample.findings(new SubstitutionServesLess(), yaml(use, "cl", "4"));
  }

  @Test
  void whatItLacksIsTold() {
    assertThat(told("{stock: oak, qty: 4}"))
        .extracting(Finding::what, Finding::follows)
        .containsExactly(
            tuple(
                "The substitution sub shall take the place of 4 × cl, and it takes 4 × oak, and"
                    + " only 3 are there.",
                "It counts in place of 3, signed or not."));
    assertThat(told(""))
        .extracting(Finding::what, Finding::follows)
        .containsExactly(
            tuple(
                "The substitution sub shall take the place of 4 × cl, and nothing says"
                    + " what it takes for them.",
                "It counts in place of none, signed or not."));
    assertThat(told("{stock: ash, qty: 2}"))
        .extracting(Finding::what)
        .containsExactly(
            "The substitution sub shall take the place of 4 × cl, and it takes no more than 2.");
    assertThat(told("{stock: ash, qty: 4}")).isEmpty();
  }
}

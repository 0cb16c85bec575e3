package kitwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import kitwright.Sample;
import kitwright.cutting.saw.Use;
import kitwright.cutting.solve.Effort;
import kitwright.finding.Findings;
import kitwright.ledger.Cut;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** From the ledger's rack to the bench. Every plan here has passed the second look. */
class CutPlanTest {
  private static CutPlan plan(String yaml) {
    return plan(yaml, 0);
  }

  private static CutPlan plan(String yaml, int which) {
    Facts day = Facts.of(Sample.ledger(yaml), Sample.TODAY);
    Cut cut = day.ledger().cuts().get(which);
    assertThat(CutFaults.spoiling(cut, day.ledger())).isEmpty();
    return CutPlan.of(cut, day, Effort.steps(5_000_000));
  }

  private static final String GIVEN_UP =
      """
      stock: [{id: o, what: o, size: 2000 x 100 x 20 mm}]
      tasks: [{id: t, what: T, takes: 1 d%s}]
      substitutions:
        - {id: s, instead-of: {what: w, qty: 1}, why: w, grade: finish%s}
      cuts:
        - {id: c, %s, from: [o], kerf: 3 mm, parts: [{mark: a, length: 960 mm}]}
        - {id: e, from: [o], kerf: 3 mm, parts: [{mark: b, length: 1900 mm}]}
      """;

  /** Seven kilogrammes are not seven pieces, and what lies somewhere unknown may serve better. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "''; 1; true",
        "'pieces: 3'; 3; true",
        "'qty: 3 each'; 3; true",
        "'qty: 3 sheet'; 3; true",
        "'qty: 3 each, pieces: 3'; 3; true",
        "'qty: 3 each, pieces: 2'; 0; false",
        "'qty: 7 kg, pieces: 1'; 0; false",
        "'qty: 3 m'; 0; false",
        "'qty: 2 roll'; 0; false",
        "'flaws: [{from: 900 mm, to: 600 mm}]'; 0; false"
      })
  void onlyANumberOfPiecesIsANumberOfPieces(String says, int pieces, boolean proved) {
    String yaml =
        """
        stock: [{id: o, what: o, size: 1000 x 100 x 20 mm%s}]
        cuts: [{id: c, from: [o], kerf: 3 mm, parts: [{mark: a, length: 960 mm, qty: 9}]}]
        """
            .formatted(says.isEmpty() ? "" : ", " + says);
    Facts day = Facts.of(Sample.ledger(yaml), Sample.TODAY);
    CutPlan plan = CutPlan.of(day.ledger().cuts().get(0), day, Effort.steps(5_000_000));
    assertThat(plan.pieces()).hasSize(pieces);
    assertThat(plan.isProvedBest()).isEqualTo(proved);
  }

  /** Behind a bare key nobody has said what it took; an empty list says that it is booked. */
  @ParameterizedTest
  @CsvSource({"'', true", "', used:', true", "', used: []', false"})
  void whatADoneCutTookIsSaidOnlyByAValue(String used, boolean unsaid) {
    String yaml =
        """
        stock: [{id: o, what: o, size: 2000 x 100 x 20 mm}]
        cuts:
          - {id: c, from: [o], kerf: 3 mm, parts: [{mark: a, length: 960 mm}], done: 2026-02-20%s}
        """;
    Ledger ledger = Sample.ledger(yaml.formatted(used));
    assertThat(new OpenCuts(ledger).isUnsaid(ledger.cuts().get(0))).isEqualTo(unsaid);
  }

  @Test
  void nothingIsProvedBestBesideStockThatCannotBeRead() {
    String yaml =
        """
        stock:
          - {id: o, what: o, size: 2000 x 100 x 20 mm}
          - {id: q, what: q, size: 1000 x 100 x 20 mm, pieces: %s}
        cuts: [{id: c, from: [o, q], kerf: 3 mm, parts: [{mark: a, length: 960 mm}]}]
        """;
    Ledger lost = Sample.read(yaml.formatted("lots"), new Findings()).orElseThrow();
    Facts day = Facts.of(lost, Sample.TODAY);
    CutPlan plan = CutPlan.of(lost.cuts().get(0), day, Effort.steps(5_000_000));
    assertThat(plan.isProvedBest()).isFalse();
    assertThat(plan.quality()).startsWith("Best, if what is noted below holds");
    assertThat(plan.notes())
        .containsExactly("How much of q there is nobody can tell; it might serve better.");
    assertThat(plan.rack().withheld())
        .containsExactly("The stock “q” stands at sample.yaml:3 but cannot be read.");
    assertThat(plan(yaml.formatted("1")).isProvedBest()).isTrue();
  }

  @Test
  void stockOfALaterDayIsNotCalledUnknown() {
    String yaml =
        """
        stock: [{id: o, what: o, size: 2000 x 100 x 20 mm, since: 2026-06-01}]
        cuts: [{id: c, from: [o], kerf: 3 mm, parts: [{mark: a, length: 960 mm}]}]
        """;
    assertThat(plan(yaml).rack().withheld())
        .containsExactly("o is there only from 1\u00a0June\u00a02026 on, by its “since”.");
  }

  @Test
  void aCutForWorkThatWasGivenUpReservesNothing() {
    String up = ", withdrawn: 2026-02-20";
    assertThat(plan(GIVEN_UP.formatted("", "", "task: t"), 1).missing()).hasSize(1);
    assertThat(plan(GIVEN_UP.formatted(up, "", "task: t"), 1).missing()).isEmpty();
    assertThat(plan(GIVEN_UP.formatted("", "", "for: s"), 1).missing()).hasSize(1);
    assertThat(plan(GIVEN_UP.formatted("", up, "for: s"), 1).missing()).isEmpty();
  }

  private static List<String> stocks(CutPlan plan) {
    return plan.pieces().stream().map(piece -> piece.stock().id()).toList();
  }

  private static List<String> lines(CutPlan plan) {
    return Steps.of(plan).stream().flatMap(steps -> steps.lines().stream()).toList();
  }

  private static long largestLeft(CutPlan plan) {
    return plan.pieces().stream()
        .flatMap(piece -> piece.board().becoming(Use.Left.class))
        .mapToLong(piece -> piece.rect().area() / 100)
        .max()
        .orElse(0);
  }

  @Test
  void twoStavesOfAPlankWithKerfAndTrimPaid() {
    CutPlan plan =
        plan(
            """
            stock: [{id: larch, what: larch board, size: 2400 x 110 x 32 mm, pieces: 2}]
            cuts: [{id: staves, from: [larch], kerf: 3 mm, trim: 10 mm, edge-trim: 0 mm, keep-length: 400 mm,
              parts: [{mark: side, length: 1180 mm, width: 110 mm, qty: 3}]}]
            """);
    assertThat(plan.missing()).isEmpty();
    assertThat(plan.quality())
        .isEqualTo(
            "Proved best: no plan by cross-cuts of whole boards uses less stock by its area.");
    assertThat(Steps.of(plan).get(0))
        .isEqualTo(
            new Steps(
                "larch, piece 1: 2400 x 110 x 32 mm",
                List.of(),
                List.of(
                    "trim the ends: the piece begins at 10 mm and ends at 2390 mm from A",
                    "cross-cut at 1190 mm from A: side 1, 1180 x 110 mm",
                    "cross-cut at 2373 mm from A: side 2, 1180 x 110 mm; beyond it waste")));
    assertThat(Steps.of(plan).get(1).lines())
        .last()
        .isEqualTo(
            "cross-cut at 1190 mm from A: side 3, 1180 x 110 mm; beyond it keep 1197 x 110 mm, mark"
                + " it larch-staves-1");
  }

  @Test
  void trimIsTakenOffTheLongEdgesToo() {
    String yaml =
        """
        stock: [{id: oak, what: oak, size: 4300 x 125 x 22 mm, pieces: 3}]
        cuts: [{id: c, from: [oak], kerf: 3 mm, trim: 10 mm, parts: [{mark: a, length: 1900 mm, width: WIDE mm, qty: 4}]}]
        """;
    assertThat(plan(yaml.replace("WIDE", "105")).missing()).isEmpty();
    assertThat(plan(yaml.replace("WIDE", "106")).missing()).isEqualTo(Map.of("a", 4));
  }

  @Test
  void aPartComesOnlyFromWoodThatIsWideAndThickEnough() {
    String stock =
        """
        stock:
          - {id: narrow, what: board, size: 2000 x 60 x 20 mm, pieces: 1, worth: 1 EUR}
          - {id: thin, what: board, size: 2000 x 150 x 9 mm, pieces: 1, worth: 1 EUR}
          - {id: right, what: board, size: 3000 x 150 x 20 mm, pieces: 1, worth: 50 EUR}
          - {id: untold, what: board, size: 3000 x 150 mm, pieces: 1, worth: 1 EUR}
        cuts: [{id: c, from: [narrow, thin, right, untold], kerf: 3 mm,
          parts: [{mark: plank, length: 1900 mm, width: 120 mm, thickness: 20 mm}]}]
        """;
    assertThat(stocks(plan(stock))).containsExactly("right");
  }

  /** An inch is 25.4 mm: three quarters are 19.05 mm, five and a quarter 133.35 mm. */
  @Test
  void aPartAsLargeAsItsStockInInchesFitsIt() {
    CutPlan plan =
        plan(
            """
            stock: [{id: oak, what: oak, size: 96 x 5.25 x 0.75 in, grain: along}]
            cuts: [{id: c, from: [oak, ghost], kerf: 0.125 in, parts: [{mark: a, length: 47.9 in, width: 5.25 in, thickness: 0.75 in, qty: 2}]}]
            """);
    assertThat(plan.missing()).isEmpty();
    assertThat(plan.rack().withheld()).containsExactly("There is no stock “ghost”.");
  }

  @Test
  void plywoodIsNotPlanedButTimberIs() {
    String yaml =
        """
        materials: [{id: larch, kind: timber, source: made up}, {id: okoume-ply, kind: plywood, source: made up}]
        stock: [{id: s, what: s, material: KIND, size: 2000 x 250 x 25 mm, grain: along}]
        cuts: [{id: c, from: [s], kerf: 3 mm, parts: [{mark: a, length: 900 mm, width: 200 mm, thickness: 20 mm}]}]
        """;
    assertThat(plan(yaml.replace("KIND", "larch")).missing()).isEmpty();
    CutPlan ply = plan(yaml.replace("KIND", "okoume-ply"));
    assertThat(ply.refused().get("a")).contains("s is 25 mm thick and cannot be planed");
  }

  @Test
  void aPartOfAMaterialComesFromNoOther() {
    CutPlan plan =
        plan(
            """
            stock:
              - {id: untold, what: board, size: 3000 x 150 x 20 mm}
              - {id: fir, what: board, material: douglas-fir, size: 3000 x 150 x 20 mm}
            cuts: [{id: c, from: [untold, fir], kerf: 3 mm, parts: [{mark: a, length: 1900 mm, width: 120 mm, material: larch}]}]
            """);
    assertThat(plan.refused().get("a"))
        .contains("untold does not say what it is made of", "fir is of douglas-fir");
  }

  @Test
  void aPartMayNameItsOwnStock() {
    CutPlan plan =
        plan(
            """
            stock:
              - {id: cheap, what: board, size: 3000 x 150 x 20 mm, worth: 1 EUR}
              - {id: fine, what: board, size: 3000 x 150 x 20 mm, worth: 90 EUR}
            cuts: [{id: c, from: [cheap, fine], kerf: 3 mm, parts: [{mark: a, length: 1900 mm, width: 120 mm, from: [fine]}]}]
            """);
    assertThat(stocks(plan)).containsExactly("fine");
  }

  @Test
  void theGrainOfStockIsReadAndObeyed() {
    String yaml =
        """
        stock: [{id: s, what: sheet, size: 1000 x 600 x 6 mm, grain: STOCK}]
        cuts: [{id: c, from: [s], kerf: 3 mm, parts: [{mark: door, length: LONG mm, width: 250 mm, grain: PART}]}]
        """;
    assertThat(made(yaml, "along", "900", "along")).isEqualTo(1);
    assertThat(made(yaml, "across", "900", "along")).as("only 600 run with the grain").isZero();
    assertThat(made(yaml, "across", "590", "along")).isEqualTo(1);
    assertThat(made(yaml, "across", "900", "across")).isEqualTo(1);
    assertThat(made(yaml, "any", "900", "along")).isEqualTo(1);
    assertThat(made(yaml, "bananas", "900", "along")).isZero();
    assertThat(made(yaml, "bananas", "900", "any")).isEqualTo(1);
  }

  private static int made(String yaml, String stock, String length, String part) {
    return plan(yaml.replace("STOCK", stock).replace("LONG", length).replace("PART", part))
        .made()
        .getOrDefault("door", 0);
  }

  @Test
  void solidWoodIsNotLaidAcrossUnlessThePartSaysSo() {
    String yaml =
        """
        materials: [{id: larch, kind: timber, source: made up}, {id: okoume-ply, kind: plywood, source: made up}]
        stock: [{id: s, what: sheet, SAID, size: 3000 x 400 x 20 mm}]
        cuts: [{id: c, from: [s], kerf: 3 mm, parts: [{mark: door, length: 350 mm, width: 1000 mm PART}]}]
        """;
    assertThat(made(yaml, "", "")).isZero();
    assertThat(madeOf(yaml, "grain: along", "")).isZero();
    assertThat(madeOf(yaml, "material: larch", "")).isZero();
    assertThat(madeOf(yaml, "grain: along", ", grain: any")).isEqualTo(1);
    assertThat(madeOf(yaml, "material: okoume-ply, grain: along", "")).isEqualTo(1);
    assertThat(made(yaml.replace("400", "290"), "", "")).as("a board by its shape").isZero();
  }

  private static int made(String yaml, String said, String part) {
    return madeOf(yaml, said.isEmpty() ? "grain: along" : said, part);
  }

  private static int madeOf(String yaml, String said, String part) {
    return plan(yaml.replace("SAID", said).replace("PART", part)).made().getOrDefault("door", 0);
  }

  @Test
  void oneImpossiblePartSpoilsOnlyItself() {
    CutPlan plan =
        plan(
            """
            stock: [{id: off, what: off, size: 1000 x 60 x 6 mm}]
            cuts: [{id: c, from: [off, off], kerf: 3 mm, parts: [{mark: door, length: 1500 mm, qty: 2}, {mark: b, length: 300 mm}]}]
            """);
    assertThat(plan.made()).isEqualTo(Map.of("door", 0, "b", 1));
    assertThat(plan.refused().get("door")).contains("off gives 1000 x 60 mm");
  }

  @Test
  void aLongPartIsScarfedWithTheRunOfItsThickness() {
    CutPlan plan =
        plan(
            """
            stock: [{id: larch, what: larch board, size: 1600 x 110 x 30 mm, pieces: 2}]
            cuts: [{id: rail, from: [larch], kerf: 3 mm, parts: [{mark: rail, length: 2400 mm, width: 100 mm, scarf: 8}]}]
            """);
    assertThat(plan.missing()).isEmpty();
    long cut =
        plan.pieces().stream()
            .flatMap(piece -> piece.board().becoming(Use.Part.class))
            .mapToLong(part -> part.rect().length())
            .sum();
    assertThat(Tenths.mm(cut)).as("2400 and one scarf of 8 x 30").isEqualTo("2640");
    assertThat(Steps.joints(plan)).containsExactly("rail: scarf 1 in 8, the lengths lap 240 mm");
  }

  @Test
  void jointedPartsLieBesideOthers() {
    CutPlan plan =
        plan(
            """
            stock: [{id: wide, what: wide, size: 1500 x 400 x 20 mm, pieces: 1, grain: along}]
            cuts: [{id: c, from: [wide], kerf: 3 mm, parts:
              [{mark: rail, length: 2400 mm, width: 90 mm, scarf: 8}, {mark: b, length: 600 mm, width: 90 mm, qty: 4}]}]
            """);
    assertThat(plan.missing()).isEmpty();
  }

  @Test
  void aPartWithoutWidthIsAsWideAsItsBoard() {
    CutPlan plan =
        plan(
            """
            stock: [{id: wide, what: wide, size: 1500 x 400 x 20 mm, pieces: 1, grain: along}]
            cuts: [{id: c, from: [wide], kerf: 3 mm, parts: [{mark: whole, length: 500 mm}, {mark: b, length: 600 mm, width: 190 mm, qty: 2}]}]
            """);
    assertThat(plan.missing()).isEmpty();
    assertThat(lines(plan)).anyMatch(line -> line.contains("whole 1, 500 x 400 mm"));
  }

  @Test
  void oversizeIsSawnAndToBePlanedOff() {
    CutPlan plan =
        plan(
            """
            stock: [{id: larch, what: larch board, size: 1000 x 110 x 30 mm}]
            cuts: [{id: c, from: [larch], kerf: 3 mm, parts: [{mark: a, length: 600 mm, width: 100 mm, thickness: 25 mm, oversize: 4 mm}]}]
            """);
    assertThat(lines(plan))
        .anyMatch(line -> line.contains("a 1, 604 x 104 mm, to be planed to 600 x 100 x 25 mm"));
  }

  @Test
  void theStepsLeadAroundTheFlaw() {
    CutPlan plan =
        plan(
            """
            stock: [{id: ply, what: ply, size: 2440 x 300 x 9 mm, grain: along, flaws: [{from: 1200 mm, to: 1240 mm, what: knot}]}]
            cuts: [{id: c, from: [ply], kerf: 3 mm, keep: 300 x 100 mm, parts: [{mark: a, length: 1000 mm, width: 140 mm, qty: 4, grain: along}]}]
            """);
    assertThat(Steps.of(plan).get(0).flaws())
        .containsExactly("leave out from 1200 mm to 1240 mm from A: knot");
    assertThat(lines(plan)).contains("cross-cut at 1000 mm from A: strip 1, 1000 mm long");
    assertThat(plan.pieces().get(0).board().becoming(Use.Part.class))
        .allMatch(
            part ->
                part.rect().along() + part.rect().length() <= 12000
                    || part.rect().along() >= 12400);
  }

  /** The thin sheet is worth less: nothing else says that the part is to be of the thick one. */
  @Test
  void aPartThatDoesNotSayHowThickItIsIsNotProvedBest() {
    String yaml =
        """
        stock:
          - {id: thin, what: thin, size: 2440 x 1220 x 4 mm, worth: 20.00 EUR}
          - {id: thick, what: thick, size: 2440 x 1220 x 9 mm, worth: 60.00 EUR}
        cuts: [{id: c, from: [thin, thick], kerf: 3 mm, parts: [{mark: x, length: 800 mm, width: 400 mm%s}]}]
        """;
    CutPlan any = plan(yaml.formatted(""));
    assertThat(any.isProvedBest()).isFalse();
    assertThat(any.notes())
        .containsExactly(
            "“x” does not say how thick it is, and is cut of 4 or 9 mm alike: add its thickness if"
                + " it matters.");
    for (String said : List.of(", thickness: 9 mm", ", from: [thick]")) {
      CutPlan plan = plan(yaml.formatted(said));
      assertThat(stocks(plan)).as(said).containsExactly("thick");
      assertThat(plan.notes()).as(said).isEmpty();
    }
  }

  @Test
  void oneUnpricedPieceLeavesThePricesOn() {
    CutPlan plan =
        plan(
            """
            stock:
              - {id: dear, what: dear, size: 1600 x 100 x 22 mm, pieces: 2, worth: 40.00 EUR}
              - {id: cheap, what: cheap, size: 3000 x 100 x 22 mm, pieces: 2, worth: 5.00 EUR}
              - {id: rem, what: rem, size: 1400 x 100 x 22 mm}
            cuts: [{id: c, from: [dear, cheap, rem], kerf: 3 mm, parts: [{mark: x, length: 1500 mm}]}]
            """);
    assertThat(stocks(plan)).containsExactly("cheap");
    assertThat(plan.notes())
        .containsExactly(
            "rem has no worth that can be used; it is counted at 13.70 EUR, by its size and what is"
                + " known of the others.");
    assertThat(plan.worth().orElseThrow()).hasToString("5.00 EUR");
  }

  @Test
  void worthIsReadByPieceMetreAreaAndWeightInAnyCurrencyWithARate() {
    String yaml =
        """
        rates: [{on: 2026-01-01, from: NZD, to: EUR, rate: 0.5}]
        materials: [{id: wood, kind: timber, density: 500 kg/m3, source: made up}]
        stock: [{id: s, what: s, material: wood, size: 2000 x 100 x 20 mm, worth: PRICE}]
        cuts: [{id: c, from: [s], kerf: 3 mm, parts: [{mark: x, length: 1500 mm}]}]
        """;
    assertThat(worth(yaml, "6 EUR")).isEqualTo("6.00 EUR");
    assertThat(worth(yaml, "6 EUR/m")).isEqualTo("12.00 EUR");
    assertThat(worth(yaml, "20 EUR/m2")).isEqualTo("4.00 EUR");
    assertThat(worth(yaml, "3 EUR/kg")).as("2 x 0.1 x 0.02 m of 500 kg/m3").isEqualTo("6.00 EUR");
    assertThat(worth(yaml, "9 NZD")).isEqualTo("4.50 EUR");
    assertThat(worth(yaml, "99999999999999999 EUR")).isEqualTo("99999999999999999.00 EUR");
  }

  private static String worth(String yaml, String price) {
    return plan(yaml.replace("PRICE", price)).worth().orElseThrow().toString();
  }

  @Test
  void openCutsTakeTheirBoardsOneAfterTheOther() {
    String yaml =
        """
        stock: [{id: oak, what: oak, size: 3000 x 100 x 20 mm, pieces: 4}]
        cuts:
          - {id: c1, from: [oak], kerf: 3 mm DONE, parts: [{mark: a, length: 2900 mm, qty: 3}]}
          - {id: c2, from: [oak], kerf: 3 mm, parts: [{mark: b, length: 2900 mm, qty: 3}]}
        """;
    CutPlan open = plan(yaml.replace("DONE", ""), 1);
    assertThat(open.made()).isEqualTo(Map.of("b", 1));
    assertThat(open.pieces().get(0).name()).isEqualTo("oak, piece 4");
    assertThat(open.rack().withheld())
        .containsExactly("3 of oak go to the cut c1, which is planned first.");
    CutPlan unsaid = plan(yaml.replace("DONE", ", done: 2026-02-20"), 1);
    assertThat(unsaid.made())
        .as("as if it had taken what its plan takes")
        .isEqualTo(Map.of("b", 1));
    String said = ", done: 2026-02-20, used: [{stock: oak, pieces: 1}]";
    assertThat(plan(yaml.replace("DONE", said), 1).made()).isEqualTo(Map.of("b", 3));
  }

  @Test
  void aCutUsesTheWoodThatItsOwnSubstitutionWasPromised() {
    CutPlan plan =
        plan(
            """
            stock: [{id: board, what: larch board, size: 2450 x 110 x 32 mm, pieces: 4}]
            tasks: [{id: plane, what: Plane, takes: 1 d}, {id: close, what: Close, takes: 1 d, after: [plane]}]
            substitutions:
              - {id: sub-1, instead-of: {what: staves, qty: 9 m}, use: [{stock: board, qty: 4 each}], grade: finish,
                 why: here, hold: close, proposed: {by: me, on: 2026-01-06}}
            cuts: [{id: staves, task: plane, from: [board], kerf: 3 mm, parts: [{mark: wide, length: 1180 mm, width: 96 mm, qty: 4}]}]
            """);
    assertThat(plan.missing()).isEmpty();
  }

  @Test
  void whatOtherWorkNeedsIsLeftAloneAndSaid() {
    String yaml =
        """
        stock:
          - {id: kept, what: larch board, size: 2400 x 110 x 32 mm, pieces: 2, keep-for: [other]}
          - {id: free, what: larch board, size: 1300 x 110 x 32 mm, pieces: 1}
        tasks: [{id: other, what: Other work, takes: 1 d}, {id: mine, what: My work, takes: 1 d}]
        cuts: [{id: staves, task: TASK, from: [kept, free], kerf: 3 mm, parts: [{mark: side, length: 1180 mm, qty: 2}]}]
        """;
    CutPlan plan = plan(yaml.replace("TASK", "mine"));
    assertThat(plan.missing()).isEqualTo(Map.of("side", 1));
    assertThat(plan.rack().withheld()).containsExactly("kept is kept for the task other.");
    assertThat(plan(yaml.replace("TASK", "other")).missing()).isEmpty();
  }

  @Test
  void leftOversBesideNarrowerPartsAreKept() {
    CutPlan plan =
        plan(
            """
            stock: [{id: ply, what: ply, size: 1530 x 510 x 9 mm, grain: along}]
            cuts: [{id: c, from: [ply], kerf: 3 mm, keep: 300 x 100 mm, parts: [{mark: sq, length: 500 mm, width: 500 mm}, {mark: rail, length: 1000 mm, width: 100 mm}]}]
            """);
    assertThat(largestLeft(plan)).isEqualTo(1000 * 407 * 1L);
  }

  @Test
  void sliversAreWasteWhereNothingSaysWhatIsWorthKeeping() {
    CutPlan plan =
        plan(
            """
            stock: [{id: a, what: a, size: 1220 x 1010 x 9 mm}]
            cuts: [{id: c, from: [a], kerf: 3 mm, parts: [{mark: x, length: 1210 mm, width: 1000 mm}]}]
            """);
    assertThat(largestLeft(plan)).isZero();
    assertThat(Remnants.records(plan, Sample.TODAY)).isEmpty();
  }

  @Test
  void theRestGoesBackOnTheRackAsRecordsThatReadAndKeepTheirWorth() {
    CutPlan plan =
        plan(
            """
            stock: [{id: larch, what: larch board, material: sitka-spruce, size: 2400 x 110 x 32 mm, pieces: 2, worth: 24 EUR}]
            cuts: [{id: staves, from: [larch], kerf: 3 mm, keep-length: 400 mm, parts: [{mark: side, length: 1180 mm, qty: 1}]}]
            """);
    Ledger after = Sample.ledger(Remnants.records(plan, Sample.TODAY));
    assertThat(after.stock())
        .singleElement()
        .satisfies(
            rest -> {
              assertThat(rest.size().orElseThrow()).hasToString("1217 x 110 x 32 mm");
              // 24 EUR x 1217 / 2400
              assertThat(rest.worth().orElseThrow()).hasToString("12.17 EUR");
            });
    assertThat(Remnants.keys(plan, Sample.TODAY))
        .containsExactly("done: " + Sample.TODAY, "used: [{stock: larch, pieces: 1}]");
  }

  /** What is written on the wood is what its record is called. */
  @Test
  void everyRestIsMarkedWithTheIdOfItsRecord() {
    CutPlan plan =
        plan(
            """
            stock: [{id: ply, what: off-cut, size: 900 x 500 x 6 mm, pieces: 2}]
            cuts: [{id: gussets, from: [ply], kerf: 3 mm, parts: [{mark: gusset, length: 200 mm, width: 150 mm, qty: 16}]}]
            """);
    List<String> marks =
        lines(plan).stream()
            .flatMap(
                line -> java.util.regex.Pattern.compile("mark it (\\S+)").matcher(line).results())
            .map(found -> found.group(1))
            .sorted()
            .toList();
    assertThat(marks).isNotEmpty().doesNotHaveDuplicates();
    assertThat(Sample.ledger(Remnants.records(plan, Sample.TODAY)).stock())
        .extracting(stock -> stock.id())
        .containsExactlyInAnyOrderElementsOf(marks);
  }

  @Test
  void aWorthThatIsGuessedProvesNothing() {
    String yaml =
        """
        stock:
          - {id: a, what: board, size: 2000 x 100 x 20 mm, worth: 12 EUR}
          - {id: b, what: board, size: 2000 x 100 x 20 mm WORTH}
        cuts: [{id: c, from: [a, b], kerf: 3 mm, parts: [{mark: p, length: 900 mm}]}]
        """;
    CutPlan stated = plan(yaml.replace("WORTH", ", worth: 11 EUR"));
    assertThat(stated.isProvedBest()).isTrue();
    assertThat(stated.quality())
        .isEqualTo("Proved best: no plan by cross-cuts of whole boards uses stock worth less.");
    CutPlan guessed = plan(yaml.replace("WORTH", ""));
    assertThat(guessed.isProvedBest()).isFalse();
    assertThat(guessed.quality()).startsWith("Best, if what is noted below holds: no plan by");
    CutPlan weighed = plan(yaml.replace("WORTH", ", worth: 9 EUR/kg"));
    assertThat(weighed.isProvedBest()).isFalse();
    assertThat(weighed.notes())
        .contains(
            "The worth of b, 9 EUR/kg, does not fit its size: its material has no density here.");
  }

  /** A flaw whose ends cannot be lies nobody knows where: the piece is left alone. */
  @ParameterizedTest
  @ValueSource(strings = {"{from: 500 mm, to: 300 mm}", "{from: 2000 mm, to: 2100 mm}"})
  void aPieceWithAFlawThatCannotBePlacedIsLeftAlone(String flaw) {
    CutPlan plan =
        plan(
            """
            stock: [{id: o, what: oak, size: 2000 x 100 x 20 mm, flaws: [FLAW]}]
            cuts: [{id: c, from: [o], kerf: 3 mm, parts: [{mark: p, length: 900 mm}]}]
            """
                .replace("FLAW", flaw));
    assertThat(plan.pieces()).isEmpty();
    assertThat(plan.rack().withheld())
        .containsExactly("It is not known where a flaw of o lies: its ends cannot be.");
  }

  @Test
  void aPieceThatIsUsedWholeSaysSoAndASteepScarfIsTold() {
    String yaml =
        """
        stock: [{id: o, what: oak, size: 2000 x 100 x 20 mm, pieces: 2}]
        cuts: [{id: c, from: [o], kerf: 3 mm, TRIM parts: [{mark: a, length: 3000 mm, scarf: SLOPE}]}]
        """;
    CutPlan usual = plan(yaml.replace("TRIM", "").replace("SLOPE", "8"));
    assertThat(lines(usual))
        .contains("no cut: it is a 1, piece 1 of 2, 2000 x 100 mm, to be scarfed");
    assertThat(Steps.joints(usual)).containsExactly("a: scarf 1 in 8, the lengths lap 160 mm");
    CutPlan steep = plan(yaml.replace("TRIM", "trim: 5 mm,").replace("SLOPE", "7.9"));
    assertThat(lines(steep))
        .anyMatch(line -> line.startsWith("no further cut: it is a 1, piece 1"));
    assertThat(Steps.joints(steep))
        .singleElement()
        .asString()
        .endsWith("; steeper than the usual 1 in 8 it holds less: ask the designer");
  }

  /** Only what is known to be solid wood is planed thinner. */
  @Test
  void aSheetIsNotPlaned() {
    String yaml =
        """
        stock: [{id: o, what: sheet, size: 2000 x 1000 x 9 mm MATERIAL}]
        cuts: [{id: c, from: [o], kerf: 3 mm, parts: [{mark: p, length: 900 mm, width: 400 mm, thickness: 6 mm}]}]
        """;
    assertThat(plan(yaml.replace("MATERIAL", "")).refused().get("p"))
        .endsWith("o is 9 mm thick and does not say whether it is wood that can be planed.");
    assertThat(plan(yaml.replace("MATERIAL", ", material: western-larch, grain: along")).refused())
        .isEmpty();
  }
}

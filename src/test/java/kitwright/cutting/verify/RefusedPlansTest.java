package kitwright.cutting.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import kitwright.Sample;
import kitwright.cutting.saw.Board;
import kitwright.cutting.saw.Rect;
import kitwright.cutting.saw.Use;
import kitwright.cutting.saw.Way;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a plan may just say, and what it may just not: sides in tenths of a millimetre, a board of
 * 1000 by 100 mm and a blade of 3 mm, which takes 2 where it rips.
 */
class RefusedPlansTest {
  private static final String CUT =
      """
      stock:
        - {id: s, what: s, size: 1000 x 100 x 20 mm%s}
        - {id: other, what: other, size: 1000 x 100 x 20 mm}
      cuts: [{id: c, from: [s%s], kerf: 3 mm, rip-kerf: 2 mm%s, parts: [{mark: a%s}%s]}]
      """;

  private static final Rect WHOLE = new Rect(0, 0, 10_000, 1_000);
  private static final Use LEFT = new Use.Left();

  /** The first of a part, in one length. */
  private static Use part(String mark, boolean turned) {
    return new Use.Part(mark, 1, 1, 1, turned);
  }

  private static Board piece(long along, long across, long length, long width, Use use) {
    return new Board.Piece(new Rect(along, across, length, width), use);
  }

  /** A cut across the board, so far from its end. */
  private static Board cross(long at, long kerf, Use near, Use far) {
    return new Board.Sawn(
        WHOLE,
        Way.CROSS,
        at,
        kerf,
        piece(0, 0, at, 1_000, near),
        piece(at + kerf, 0, 10_000 - at - kerf, 1_000, far));
  }

  /** A cut along the board. */
  private static Board rip(long at, long kerf, Use near, Use far) {
    return new Board.Sawn(
        WHOLE,
        Way.RIP,
        at,
        kerf,
        piece(0, 0, 10_000, at, near),
        piece(0, at + kerf, 10_000, 1_000 - at - kerf, far));
  }

  private static String yaml(String stock, String cut, String part, String more) {
    return CUT.formatted(stock, "", cut, part, more);
  }

  private static List<String> faults(String yaml, Board... boards) {
    Ledger ledger = Sample.ledger(yaml);
    List<PlanCheck.Bench> bench = new java.util.ArrayList<>();
    for (int i = 0; i < boards.length; i++) {
      bench.add(new PlanCheck.Bench(ledger.stock().get(0), i + 1, boards[i]));
    }
    return PlanCheck.faults(ledger.cuts().get(0), Map.of("s", 2), bench, Map.of());
  }

  private static final String WIDE = ", length: 600 mm, width: 100 mm";

  @Test
  void aPieceIsSawnOnceAndOnlyIfItIsThereAndOfTheCut() {
    Board board = cross(6_000, 30, part("a", false), LEFT);
    Ledger ledger = Sample.ledger(yaml("", "", WIDE, ""));
    PlanCheck.Bench once = new PlanCheck.Bench(ledger.stock().get(0), 1, board);
    Map<String, Integer> last = Map.of("s", 1, "other", 1);
    assertThat(PlanCheck.faults(ledger.cuts().get(0), last, List.of(once), Map.of())).isEmpty();
    assertThat(PlanCheck.faults(ledger.cuts().get(0), last, List.of(once, once), Map.of()))
        .contains("s, piece 1 is cut twice");
    PlanCheck.Bench none = new PlanCheck.Bench(ledger.stock().get(0), 0, board);
    assertThat(PlanCheck.faults(ledger.cuts().get(0), last, List.of(none), Map.of()))
        .containsExactly("there is no free s, piece 0");
    PlanCheck.Bench strange = new PlanCheck.Bench(ledger.stock().get(1), 1, board);
    assertThat(PlanCheck.faults(ledger.cuts().get(0), last, List.of(strange), Map.of()))
        .containsExactly("other, piece 1 is not among the stock of the cut");
    assertThat(PlanCheck.faults(ledger.cuts().get(0), Map.of(), List.of(once), Map.of()))
        .containsExactly("there is no free s, piece 1");
    assertThat(PlanCheck.faults(ledger.cuts().get(0), last, List.of(), Map.of()))
        .containsExactly("a: 1 wanted, 0 made, 0 missing");
    assertThat(PlanCheck.faults(ledger.cuts().get(0), last, List.of(), Map.of("a", 1))).isEmpty();
  }

  @Test
  void theBoardIsAsLargeAsItIs() {
    assertThat(faults(yaml("", "", WIDE, ""), piece(0, 0, 6_000, 1_000, part("a", false))))
        .containsExactly("s, piece 1 is not as large as the plan says");
    assertThat(
            faults(
                yaml("", "", ", length: 1000 mm, width: 100 mm", ""),
                piece(0, 0, 10_000, 1_000, part("a", false))))
        .isEmpty();
  }

  /** Across the blade takes 3 mm, along 2; at the end it may hang over where nothing is left. */
  @ParameterizedTest
  @CsvSource({
    "CROSS, 6000, 30, true",
    "CROSS, 6000, 29, false",
    "CROSS, 6000, 31, false",
    "RIP, 600, 20, true",
    "RIP, 600, 19, false",
    "RIP, 600, 30, false"
  })
  void eachCutHasRoomForItsBlade(Way way, long at, long kerf, boolean right) {
    boolean across = way == Way.CROSS;
    Use a = part("a", false);
    String size = across ? ", length: 600 mm, width: 100 mm" : ", length: 1000 mm, width: 60 mm";
    Board board = across ? cross(at, kerf, a, LEFT) : rip(at, kerf, a, LEFT);
    List<String> faults = faults(yaml("", "", size, ""), board);
    assertThat(faults)
        .containsExactlyElementsOf(
            right
                ? List.of()
                : List.of("s, piece 1: a cut at " + at + " has no room for the blade"));
  }

  @Test
  void whereNoRipIsNamedTheBladeTakesAsMuchAsAcross() {
    String yaml =
        yaml("", "", ", length: 1000 mm, width: 60 mm", "").replace(", rip-kerf: 2 mm", "");
    assertThat(faults(yaml, rip(600, 30, part("a", false), LEFT))).isEmpty();
    assertThat(faults(yaml, rip(600, 20, part("a", false), LEFT))).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource({
    "9980, 20, true", // nothing is left: the blade hangs over
    "9970, 30, true",
    "9970, 20, false", // a tenth of something is left
    "9980, 40, false"
  })
  void theBladeMayHangOverWhereNothingIsLeft(long at, long kerf, boolean right) {
    String yaml = yaml("", "", ", length: " + at / 10.0 + " mm, width: 100 mm", "");
    List<String> faults = faults(yaml, cross(at, kerf, part("a", false), new Use.Waste()));
    assertThat(faults.isEmpty()).as(faults.toString()).isEqualTo(right);
  }

  @Test
  void noCutRunsOutsideItsPiece() {
    assertThat(faults(yaml("", "", WIDE, ""), cross(9_990, 30, part("a", false), new Use.Waste())))
        .contains("s, piece 1: a cut at 9990 runs outside its piece");
    assertThat(faults(yaml("", "", WIDE, ""), cross(-10, 30, new Use.Waste(), LEFT)))
        .contains("s, piece 1: a cut at -10 runs outside its piece");
  }

  @ParameterizedTest
  @CsvSource({"600, true", "599, false", "601, false"})
  void aPartIsAsWideAsItIsAsked(long at, boolean right) {
    List<String> faults =
        faults(
            yaml("", "", ", length: 1000 mm, width: 60 mm", ""),
            rip(at, 20, part("a", false), LEFT));
    assertThat(faults)
        .containsExactlyElementsOf(
            right ? List.of() : List.of("s, piece 1: a 1 comes out " + at + " tenths wide"));
  }

  /** Turned, its width lies along the board. */
  @Test
  void aTurnedPartIsMeasuredTurned() {
    String yaml = yaml("", "", ", length: 100 mm, width: 60 mm", "");
    assertThat(faults(yaml, cross(600, 30, part("a", true), LEFT))).isEmpty();
    assertThat(faults(yaml, cross(600, 30, part("a", false), LEFT)))
        .containsExactly(
            "s, piece 1: a 1 comes out 1000 tenths wide", "a 1 comes out 600 tenths long");
  }

  @Test
  void nothingIsMadeThatNobodyWants() {
    assertThat(faults(yaml("", "", WIDE, ""), cross(6_000, 30, part("a", false), part("b", false))))
        .containsExactly("s, piece 1: b 1 is not wanted");
    Use second = new Use.Part("a", 2, 1, 1, false);
    assertThat(
            faults(
                yaml("", "", WIDE, ""),
                cross(6_000, 30, part("a", false), LEFT),
                cross(6_000, 30, second, LEFT)))
        .containsExactly("a 2 is made beyond need");
    assertThat(
            faults(
                yaml("", "", WIDE + ", qty: 2", ""),
                cross(6_000, 30, part("a", false), LEFT),
                cross(6_000, 30, second, LEFT)))
        .isEmpty();
  }

  private static Board length(int number, int of, long at) {
    return cross(at, 30, new Use.Part("a", 1, number, of, false), LEFT);
  }

  /** 1500 mm of two lengths; a scarf of 1 in 8 through 20 mm laps 160. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        ", butt: yes | 7500 | 7500 |",
        ", butt: yes | 7500 | 7499 | a 1 comes out 14999 tenths long",
        ", butt: yes | 7500 | 7600 |",
        ", scarf: 8, thickness: 20 mm | 8300 | 8300 |",
        ", scarf: 8, thickness: 20 mm | 8300 | 8299 | a 1 comes out 16599 tenths long",
        " | 7500 | 7500 | a 1 is joined, though nothing permits it"
      })
  void twoLengthsReachWithTheirLap(String join, long one, long other, String told) {
    String keys = ", length: 1500 mm, width: 100 mm" + (join == null ? "" : join);
    assertThat(faults(yaml("", "", keys, ""), length(1, 2, one), length(2, 2, other)))
        .containsExactlyElementsOf(told == null ? List.of() : List.of(told));
  }

  @Test
  void allLengthsOfAPartAreThereOnce() {
    String keys = ", length: 1500 mm, width: 100 mm, butt: yes";
    assertThat(faults(yaml("", "", keys, ""), length(1, 2, 9_000)))
        .contains("a 1 has 1 of its 2 lengths");
    assertThat(faults(yaml("", "", keys, ""), length(1, 2, 7_500), length(1, 2, 7_500)))
        .contains("a 1 has 2 of its 2 lengths");
  }

  @ParameterizedTest
  @CsvSource({
    "along, along, false, true",
    "along, along, true, false",
    "along, across, false, false",
    "along, across, true, true",
    "across, across, false, true",
    "across, across, true, false",
    "across, along, false, false",
    "across, along, true, true",
    "any, along, true, true",
    "none, along, true, true",
    "'', along, false, false", // nobody knows
    "'', any, false, true",
    "along, any, true, true"
  })
  void theGrainRunsAsAsked(String stock, String asked, boolean turned, boolean right) {
    String has = stock.isEmpty() ? "" : ", grain: " + stock;
    String keys = ", length: 60 mm, width: 100 mm, grain: " + asked;
    String turnedKeys = ", length: 100 mm, width: 60 mm, grain: " + asked;
    List<String> faults =
        faults(
            yaml(has, "", turned ? turnedKeys : keys, ""), cross(600, 30, part("a", turned), LEFT));
    assertThat(faults)
        .containsExactlyElementsOf(
            right
                ? List.of()
                : List.of("s, piece 1: a 1 lies wrong to the grain, or the grain is not known"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        ", thickness: 20 mm |",
        ", thickness: 20.1 mm | a 1 comes from wood too thin, or of unknown thickness",
        ", material: oak |",
        ", material: ash | a 1 comes from another material",
        ", from: [s] |",
        ", from: [other] | a 1 comes from stock that is not named for it",
        ", from: [other, s] |"
      })
  void aPartIsOfTheWoodThatItAsksFor(String keys, String told) {
    String materials =
        "materials: [{id: oak, kind: timber, source: x}, {id: ash, kind: timber, source: x}]\n";
    String yaml = materials + CUT.formatted(", material: oak", ", other", "", WIDE + keys, "");
    assertThat(faults(yaml, cross(6_000, 30, part("a", false), LEFT)))
        .containsExactlyElementsOf(told == null ? List.of() : List.of("s, piece 1: " + told));
  }

  /** The part lies from 0 to 600 mm, the rest from 603 on. */
  @ParameterizedTest
  @CsvSource({
    "590, 599.9, 1",
    "600, 603, 0", // in the cut
    "599.9, 600, 1",
    "603, 603.1, 1",
    "602.9, 603, 0"
  })
  void aFlawMayLieInTheCutOnly(String from, String to, int faults) {
    String flaw = ", flaws: [{from: " + from + " mm, to: " + to + " mm, what: knot}]";
    assertThat(faults(yaml(flaw, "", WIDE, ""), cross(6_000, 30, part("a", false), LEFT)))
        .hasSize(faults);
  }

  /** The part is 980 by 80 mm, from 10 mm of each edge; the cuts take the rest. */
  @ParameterizedTest
  @CsvSource({
    "trim: 10 mm, 0",
    "trim: 10.1 mm, 1",
    "'trim: 10 mm, edge-trim: 10.1 mm', 1",
    "'trim: 10.1 mm, edge-trim: 10 mm', 1",
    "'trim: 0 mm, edge-trim: 10 mm', 0",
    "'trim: 20 mm, edge-trim: 0 mm', 1",
    "'trim: 0 mm, edge-trim: 20 mm', 1"
  })
  void whatIsTrimmedOffHoldsNoPart(String trim, int faults) {
    Use waste = new Use.Waste();
    Board inner =
        new Board.Sawn(
            new Rect(100, 0, 9_800, 1_000),
            Way.RIP,
            80,
            20,
            piece(100, 0, 9_800, 80, waste),
            new Board.Sawn(
                new Rect(100, 100, 9_800, 900),
                Way.RIP,
                900,
                20,
                piece(100, 100, 9_800, 800, part("a", false)),
                piece(100, 920, 9_800, 80, waste)));
    Board all =
        new Board.Sawn(
            WHOLE,
            Way.CROSS,
            70,
            30,
            piece(0, 0, 70, 1_000, waste),
            new Board.Sawn(
                new Rect(100, 0, 9_900, 1_000),
                Way.CROSS,
                9_900,
                30,
                inner,
                piece(9_930, 0, 70, 1_000, waste)));
    assertThat(faults(yaml("", ", " + trim, ", length: 980 mm, width: 80 mm", ""), all))
        .hasSize(faults);
  }
}

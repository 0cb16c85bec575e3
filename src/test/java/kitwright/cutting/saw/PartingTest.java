package kitwright.cutting.saw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How one board of 1000 by 100 mm is parted, in tenths of a millimetre: a blade of 3 mm across and
 * 2 along; what is at least 100 by 20 mm is kept.
 */
class PartingTest {
  private static final Rect WHOLE = new Rect(0, 0, 10_000, 1_000);

  private static Saw saw(long trim, long edge) {
    return new Saw(30, 20, trim, edge, 1_000, 200, Optional.empty());
  }

  private static Saw first(Way way) {
    return new Saw(30, 20, 0, 0, 1_000, 200, Optional.of(way));
  }

  private static Laid laid(String mark, long along, long across, long length, long width) {
    return new Laid(new Rect(along, across, length, width), new Use.Part(mark, 1, 1, 1, false));
  }

  /** The tree in words: each cut with what it leaves before and behind it. */
  private static String told(Board board) {
    if (board instanceof Board.Sawn sawn) {
      return (sawn.way() == Way.CROSS ? "cross" : "rip")
          + " at "
          + sawn.at()
          + (sawn.kerf() == (sawn.way() == Way.CROSS ? 30 : 20) ? "" : " by " + sawn.kerf())
          + " ("
          + told(sawn.near())
          + ", "
          + told(sawn.far())
          + ")";
    }
    Board.Piece piece = (Board.Piece) board;
    if (piece.use() instanceof Use.Part part) {
      return part.mark();
    }
    return piece.use() instanceof Use.Left
        ? "keep " + piece.rect().length() + "x" + piece.rect().width()
        : "waste";
  }

  private static String parted(Saw saw, List<Flaw> flaws, Laid... parts) {
    return Parting.of(WHOLE, flaws, List.of(parts), saw)
        .map(PartingTest::told)
        .orElse("cannot be parted");
  }

  private static String parted(Laid... parts) {
    return parted(saw(0, 0), List.of(), parts);
  }

  @Test
  void aPartThatIsTheWholeBoardNeedsNoCut() {
    assertThat(parted(laid("a", 0, 0, 10_000, 1_000))).isEqualTo("a");
  }

  @Test
  void whatIsLeftBehindThePartIsKeptIfItIsLargeEnough() {
    assertThat(parted(laid("a", 0, 0, 6_000, 1_000)))
        .isEqualTo("cross at 6000 (a, keep 3970x1000)");
    assertThat(parted(laid("a", 0, 0, 8_970, 1_000)))
        .isEqualTo("cross at 8970 (a, keep 1000x1000)");
    assertThat(parted(laid("a", 0, 0, 10_000, 780))).isEqualTo("rip at 780 (a, keep 10000x200)");
    assertThat(parted(laid("a", 0, 0, 10_000, 781))).isEqualTo("rip at 781 (a, waste)");
  }

  /** The blade hangs over where less is left than it takes. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "9970 | cross at 9970 (a, waste)",
        "9980 | cross at 9980 by 20 (a, waste)",
        "9999 | cross at 9999 by 1 (a, waste)"
      })
  void theBladeTakesNoMoreThanThereIs(long length, String told) {
    assertThat(parted(laid("a", 0, 0, length, 1_000))).isEqualTo(told);
  }

  @Test
  void whatLiesBeforeThePartIsCutOffFirst() {
    assertThat(parted(laid("a", 4_000, 0, 6_000, 1_000)))
        .isEqualTo("cross at 3970 (keep 3970x1000, a)");
    assertThat(parted(laid("a", 10, 0, 9_990, 1_000))).isEqualTo("cross at 0 by 10 (waste, a)");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "5030 | cross at 5000 (a, b)",
        "5029 | cannot be parted", // no room for the blade
        "5000 | cannot be parted",
        "4000 | cannot be parted" // on each other
      })
  void betweenTwoPartsThereIsRoomForTheBlade(long second, String told) {
    assertThat(parted(laid("a", 0, 0, 5_000, 1_000), laid("b", second, 0, 10_000 - second, 1_000)))
        .isEqualTo(told);
  }

  @Test
  void betweenTwoStripsTheRipSawHasItsOwnRoom() {
    assertThat(parted(laid("a", 0, 0, 10_000, 500), laid("b", 0, 520, 10_000, 480)))
        .isEqualTo("rip at 500 (a, b)");
    assertThat(parted(laid("a", 0, 0, 10_000, 500), laid("b", 0, 519, 10_000, 481)))
        .isEqualTo("cannot be parted");
  }

  /** Four parts in a pinwheel: no straight cut parts them. */
  @Test
  void whatNoStraightCutPartsIsNotParted() {
    assertThat(
            parted(
                laid("a", 0, 0, 6_000, 300),
                laid("b", 6_030, 0, 3_970, 600),
                laid("c", 3_000, 700, 7_000, 300),
                laid("d", 0, 400, 2_000, 600)))
        .isEqualTo("cannot be parted");
  }

  /** Across first the rest is 397 by 100; along first it is a strip of 1000 by 48 and an end. */
  @Test
  void theLargestRestDecidesUnlessTheFirstCutIsAsked() {
    Laid part = laid("a", 0, 0, 6_000, 500);
    assertThat(parted(part))
        .isEqualTo("rip at 500 (cross at 6000 (a, keep 3970x500), keep 10000x480)");
    assertThat(parted(first(Way.CROSS), List.of(), part))
        .isEqualTo("cross at 6000 (rip at 500 (a, keep 6000x480), keep 3970x1000)");
    assertThat(parted(first(Way.RIP), List.of(), part))
        .isEqualTo("rip at 500 (cross at 6000 (a, keep 3970x500), keep 10000x480)");
  }

  @Test
  void endsAndEdgesAreTrimmedFirst() {
    assertThat(parted(saw(50, 0), List.of(), laid("a", 50, 0, 9_900, 1_000)))
        .isEqualTo("cross at 20 (waste, cross at 9950 (a, waste))");
    assertThat(parted(saw(0, 40), List.of(), laid("a", 0, 40, 10_000, 920)))
        .isEqualTo("rip at 20 (waste, rip at 960 (a, waste))");
    assertThat(parted(saw(20, 0), List.of(), laid("a", 20, 0, 9_960, 1_000)))
        .as("a trim narrower than the blade")
        .isEqualTo("cross at 0 by 20 (waste, cross at 9980 by 20 (a, waste))");
    assertThat(parted(saw(50, 0), List.of(), laid("a", 0, 0, 9_900, 1_000)))
        .as("in what is trimmed off")
        .isEqualTo("cannot be parted");
  }

  @Test
  void whatIsKeptIsCutClearOfItsFlaws() {
    Laid part = laid("a", 0, 0, 4_000, 1_000);
    assertThat(parted(saw(0, 0), List.of(new Flaw(7_000, 7_500, "knot")), part))
        .as("the blade runs in the flaw, not in what is kept")
        .isEqualTo(
            "cross at 4000 (a, cross at 7000 (keep 2970x1000, cross at 7470 (waste, keep"
                + " 2500x1000)))");
    assertThat(parted(saw(0, 0), List.of(new Flaw(3_900, 4_020, "knot")), part))
        .as("in the cut")
        .isEqualTo("cross at 4000 (a, keep 5970x1000)");
  }

  @Test
  void areasBalance() {
    Board board =
        Parting.of(WHOLE, List.of(), List.of(laid("a", 0, 0, 6_000, 500)), first(Way.CROSS))
            .orElseThrow();
    assertThat(board.dust()).as("30 × 1000 + 20 × 6000").isEqualTo(150_000);
    assertThat(board.pieces()).hasSize(3);
  }
}

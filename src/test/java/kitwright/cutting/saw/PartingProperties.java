package kitwright.cutting.saw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Rectangles that straight cuts made can be found again by straight cuts. */
class PartingProperties {
  private static final Saw SAW = new Saw(30, 20, 50, 40, 1000, 500, Optional.empty());

  @Property(tries = 300, seed = "71")
  void whatTheSawPartedIsPartedAgain(@ForAll long seed) {
    Random random = new Random(seed);
    Rect whole = new Rect(0, 0, 20_000 + random.nextInt(10_000), 8_000 + random.nextInt(5_000));
    List<Laid> laid = new ArrayList<>();
    Rect inner = new Rect(50, 40, whole.length() - 100, whole.width() - 80);
    part(inner, random, 4, laid);
    Optional<Board> board = Parting.of(whole, List.of(), laid, SAW);
    assertThat(board).isPresent();
    List<Board.Piece> parts = board.get().becoming(Use.Part.class).toList();
    assertThat(parts).hasSameSizeAs(laid);
    assertThat(parts.stream().map(Board.Piece::rect))
        .containsExactlyInAnyOrderElementsOf(laid.stream().map(Laid::rect).toList());
    long all =
        board.get().pieces().stream().mapToLong(piece -> Math.max(0, piece.rect().area())).sum();
    assertThat(all + board.get().dust()).as("nothing lost").isEqualTo(whole.area());
    assertThat(board.get().becoming(Use.Left.class))
        .allMatch(left -> left.rect().length() >= 500 && left.rect().width() >= 500);
  }

  private static void part(Rect rect, Random random, int depth, List<Laid> laid) {
    Way way = random.nextBoolean() ? Way.RIP : Way.CROSS;
    long room = rect.to(way) - rect.from(way);
    if (depth == 0 || room < 2_000 || random.nextInt(5) == 0) {
      if (random.nextInt(4) > 0) {
        laid.add(new Laid(rect, new Use.Part("p", laid.size() + 1, 1, 1, false)));
      }
      return;
    }
    long at = rect.from(way) + 800 + random.nextInt((int) room - 1_600);
    part(rect.between(way, rect.from(way), at), random, depth - 1, laid);
    part(rect.between(way, at + SAW.kerf(way), rect.to(way)), random, depth - 1, laid);
  }

  @Property(tries = 100, seed = "72")
  void aLeftOverHoldsNoFlaw(@ForAll long seed) {
    Random random = new Random(seed);
    Rect whole = new Rect(0, 0, 20_000, 3_000);
    long from = 6_000L + random.nextInt(12_000);
    Flaw flaw = new Flaw(from, from + 10 + random.nextInt(900), "knot");
    Laid part = new Laid(new Rect(50, 40, 4_000, 1_000), new Use.Part("p", 1, 1, 1, false));
    Board board = Parting.of(whole, List.of(flaw), List.of(part), SAW).orElseThrow();
    assertThat(board.becoming(Use.Left.class).toList())
        .isNotEmpty()
        .allMatch(left -> left.rect().areaWithin(flaw.from(), flaw.to()) == 0);
  }
}

package kitwright.cutting.saw;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A piece of stock, or of one, and how it is parted. */
public sealed interface Board {
  Rect rect();

  /**
   * Parted by one cut from edge to edge.
   *
   * @param at where the cut begins: the line; the blade runs beyond it
   * @param kerf what the blade takes; less than its width where no more is left
   */
  record Sawn(Rect rect, Way way, long at, long kerf, Board near, Board far) implements Board {}

  /** Parted no further. */
  record Piece(Rect rect, Use use) implements Board {}

  /** Everything that it is parted into, in the order of the cuts. */
  default List<Piece> pieces() {
    List<Piece> all = new ArrayList<>();
    gather(this, all);
    return all;
  }

  private static void gather(Board board, List<Piece> all) {
    Board rest = board;
    while (rest instanceof Sawn sawn) {
      gather(sawn.near(), all);
      rest = sawn.far();
    }
    if (rest instanceof Piece piece) {
      all.add(piece);
    }
  }

  /** Its pieces that become that. */
  default <U extends Use> Stream<Piece> becoming(Class<U> use) {
    return pieces().stream().filter(piece -> use.isInstance(piece.use()));
  }

  /** What blades turn into dust. */
  default long dust() {
    long dust = 0;
    Board rest = this;
    while (rest instanceof Sawn sawn) {
      Rect cut = sawn.rect().between(sawn.way(), sawn.at(), sawn.at() + sawn.kerf());
      dust += cut.area() + sawn.near().dust();
      rest = sawn.far();
    }
    return dust;
  }
}

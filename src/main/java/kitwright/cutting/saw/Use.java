package kitwright.cutting.saw;

/** What a piece becomes when no saw touches it any more. */
public sealed interface Use {
  /**
   * A part, or a length that it is joined from.
   *
   * @param copy which of the parts of that mark, from 1
   * @param piece which length of that part, from 1
   * @param of how many lengths are joined to make it
   * @param turned whether its width lies along the piece
   */
  record Part(String mark, int copy, int piece, int of, boolean turned) implements Use {
    /** What is written on it. */
    public String label() {
      return mark + " " + copy + (of > 1 ? ", piece " + piece + " of " + of : "");
    }
  }

  /** Worth going back on the rack. */
  record Left() implements Use {}

  /** Not worth keeping, or flawed. */
  record Waste() implements Use {}
}

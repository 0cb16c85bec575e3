package kitwright.cutting.solve;

/** How many turns at the saw a part takes. */
public enum Stages {
  /** A strip is as wide as every part in it: two cuts and the part is done. */
  TWO,
  /** A part may be narrower than its strip and is trimmed by a third cut. */
  TWO_AND_TRIM,
  /** The panel is first parted crosswise into blocks, each block then into strips, and so on. */
  THREE_AND_TRIM
}

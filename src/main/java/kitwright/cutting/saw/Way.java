package kitwright.cutting.saw;

/** Which way a cut runs. */
public enum Way {
  /** Across the length of the piece. */
  CROSS,
  /** Along it. */
  RIP
}

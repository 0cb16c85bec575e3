package kitwright.cutting.solve;

/** Which way a cut or a strip runs in a panel. A panel's length is measured with the grain. */
public enum Run {
  /** With the length of the panel: a rip. */
  ALONG,
  /** With its width: a cross-cut. */
  ACROSS
}

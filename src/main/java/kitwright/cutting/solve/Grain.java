package kitwright.cutting.solve;

/** How a part must lie to the grain of its panel. */
public enum Grain {
  /** The part's length runs with the grain. */
  ALONG,
  /** The part's width runs with the grain. */
  ACROSS,
  /** Either way; the part may be turned. */
  FREE
}

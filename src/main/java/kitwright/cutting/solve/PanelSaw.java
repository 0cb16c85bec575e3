package kitwright.cutting.solve;

/**
 * How panels are cut.
 *
 * @param ripKerf width of a cut that runs along the panel, tenths of a millimetre
 * @param crossKerf width of a cut that runs across it
 * @param trim cut off every edge first, its kerf included
 * @param firstCut which way the strips run
 * @param stages whether a part may be narrower than its strip
 */
public record PanelSaw(long ripKerf, long crossKerf, long trim, FirstCut firstCut, Stages stages) {
  public PanelSaw {
    if (ripKerf < 0 || crossKerf < 0 || trim < 0) {
      throw new IllegalArgumentException("kerf and trim are never negative");
    }
  }

  /** Between pieces of one strip. */
  long within(Run strips) {
    return strips == Run.ALONG ? crossKerf : ripKerf;
  }

  /** Between one strip and the next. */
  long between(Run strips) {
    return strips == Run.ALONG ? ripKerf : crossKerf;
  }
}

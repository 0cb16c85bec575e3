package kitwright.cutting.solve;

import java.util.List;
import java.util.stream.Stream;

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

  /** The same saw, cutting in other stages. */
  PanelSaw in(Stages other) {
    return new PanelSaw(ripKerf, crossKerf, trim, firstCut, other);
  }

  /** Which ways strips may run. */
  List<Run> runs() {
    return Stream.of(Run.values()).filter(run -> mayRun(run) || mayBlock(run)).toList();
  }

  /** Whether a panel may be parted at once into strips that run so. */
  boolean mayRun(Run run) {
    return firstCut.runs().contains(run);
  }

  /** Whether it may first be parted into blocks crosswise to such strips. */
  boolean mayBlock(Run run) {
    Run crosswise = run == Run.ALONG ? Run.ACROSS : Run.ALONG;
    return stages == Stages.THREE_AND_TRIM && firstCut.runs().contains(crosswise);
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

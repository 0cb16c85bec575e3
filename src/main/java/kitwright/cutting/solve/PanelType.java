package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Parts that are the same to the saw.
 *
 * @param width zero where it is as wide as its panel
 * @param ways how it may lie on each kind of panel; empty where it may not come from it
 */
record PanelType(long length, long width, int priority, List<Optional<Grain>> ways) {

  /**
   * A way a part may lie in strips.
   *
   * @param run of the strips
   * @param down extent in the direction of the strip
   * @param over extent over the width of the strip
   */
  record Lie(int type, Run run, long down, long over) {}

  /**
   * All ways this part may lie in strips that run so, on panels of a kind.
   *
   * @param fullWidth of those panels
   */
  List<Lie> lies(int type, Run run, int kind, long fullWidth) {
    List<Lie> lies = new ArrayList<>();
    Optional<Grain> way = ways.get(kind);
    if (way.isEmpty()) {
      return lies;
    }
    long wide = width == 0 ? fullWidth : width;
    if (way.get() != Grain.ACROSS) {
      lies.add(lie(type, run, length, wide));
    }
    if (way.get() != Grain.ALONG && (length != wide || lies.isEmpty())) {
      lies.add(lie(type, run, wide, length));
    }
    return lies;
  }

  /** What it takes out of a panel at the least, kerfs included. */
  long taking(PanelSaw saw, List<PanelKind> kinds) {
    long least = Long.MAX_VALUE;
    for (int k = 0; k < kinds.size(); k++) {
      for (Lie lie : lies(0, Run.ALONG, k, kinds.get(k).fullWidth())) {
        least = Math.min(least, (lie.down() + saw.crossKerf()) * (lie.over() + saw.ripKerf()));
      }
    }
    return least;
  }

  private static Lie lie(int type, Run run, long along, long across) {
    return run == Run.ALONG ? new Lie(type, run, along, across) : new Lie(type, run, across, along);
  }
}

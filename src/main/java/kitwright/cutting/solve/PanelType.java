package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.List;

/** Parts that are the same to the saw. */
record PanelType(long length, long width, Grain grain, int priority) {

  /**
   * A way a part may lie in strips.
   *
   * @param run of the strips
   * @param down extent in the direction of the strip
   * @param over extent over the width of the strip
   */
  record Lie(int type, Run run, long down, long over) {}

  /** All ways this part may lie in strips that run so. */
  List<Lie> lies(int type, Run run) {
    List<Lie> lies = new ArrayList<>();
    if (grain != Grain.ACROSS) {
      lies.add(lie(type, run, length, width));
    }
    if (grain != Grain.ALONG && (length != width || lies.isEmpty())) {
      lies.add(lie(type, run, width, length));
    }
    return lies;
  }

  /** What it takes out of a panel at the least, kerfs included. */
  long taking(PanelSaw saw) {
    long as = (length + saw.crossKerf()) * (width + saw.ripKerf());
    long turned = (width + saw.crossKerf()) * (length + saw.ripKerf());
    return switch (grain) {
      case ALONG -> as;
      case ACROSS -> turned;
      case FREE -> Math.min(as, turned);
    };
  }

  private static Lie lie(int type, Run run, long along, long across) {
    return run == Run.ALONG ? new Lie(type, run, along, across) : new Lie(type, run, across, along);
  }
}

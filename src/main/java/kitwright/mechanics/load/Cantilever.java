package kitwright.mechanics.load;

import java.util.List;
import kitwright.mechanics.Refuse;

/**
 * A beam held at its root and loaded across.
 *
 * @param length m
 * @param loads what acts on it, all in one plane
 */
public record Cantilever(double length, List<SpanLoad> loads) {
  private static final int PIECES = 64;
  private static final double[] PLACE = {0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)};
  private static final double[] WEIGHT = {5 / 18.0, 8 / 18.0, 5 / 18.0};

  public Cantilever {
    Refuse.unlessPositive("length", length);
    loads = List.copyOf(loads);
    for (var load : loads) {
      Refuse.unless(
          load.reach() <= length * (1 + 1e-9), () -> "a load lies beyond the tip: " + load.reach());
    }
  }

  /** What is asked at a distance from the root in m. */
  public Demand at(double x) {
    double shear = 0;
    double moment = 0;
    for (var load : loads) {
      shear += load.shear(x);
      moment += load.moment(x);
    }
    return new Demand(x, shear, moment);
  }

  /**
   * Deflection at a distance from the root by virtual work, ∫M·m/EI + ∫V·v/GA.
   *
   * @param stretches from root to tip without a gap
   */
  public Deflection deflection(List<Stretch> stretches, double at) {
    double bending = 0;
    double shear = 0;
    double end = 0;
    for (var stretch : stretches) {
      Refuse.unless(Math.abs(stretch.from() - end) < 1e-9 * length, "stretches leave no gap");
      end = stretch.to();
      double to = Math.min(end, at);
      double step = Math.max(0, to - stretch.from()) / PIECES;
      for (int i = 0; i < PIECES; i++) {
        for (int k = 0; k < PLACE.length; k++) {
          double x = stretch.from() + step * (i + PLACE[k]);
          var demand = at(x);
          bending += WEIGHT[k] * step * demand.moment() * (at - x) / stretch.bending();
          shear += WEIGHT[k] * step * demand.shear() / stretch.shear();
        }
      }
    }
    Refuse.unless(end >= at * (1 - 1e-9), "stretches reach to the place asked for");
    return new Deflection(bending, shear);
  }
}

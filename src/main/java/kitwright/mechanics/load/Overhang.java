package kitwright.mechanics.load;

import kitwright.mechanics.Refuse;

/**
 * A beam on two supports that reaches beyond one of them: a force at its free end and a load spread
 * evenly over all of it. Moments that sag between the supports count positive.
 *
 * @param span between the supports, m
 * @param beyond the second support, m
 * @param tip force at the free end, N
 * @param spread over span and overhang together, N
 * @see "AWC, Design Aid 6, Beam Formulas with Shear and Moment Diagrams, 2007, figures 24 and 26
 *     (their numbers not read); each follows from the balance of forces and from beam theory, and
 *     is held to virtual work and moments about a support by tests"
 */
public record Overhang(double span, double beyond, double tip, double spread) {
  private static final int PLACES = 200;
  private static final int PIECES = 400;

  public Overhang {
    Refuse.unlessPositive("span", span);
    Refuse.unlessPositive("overhang", beyond);
    Refuse.ifNegative("tip force", tip);
    Refuse.ifNegative("spread load", spread);
  }

  /** The same with more spread over all of it. */
  public Overhang with(double more) {
    return new Overhang(span, beyond, tip, spread + more);
  }

  private double perLength() {
    return spread / (span + beyond);
  }

  /** Reaction at the far support, N; below nought where it holds the beam down. */
  public double reaction() {
    double all = perLength() * (span + beyond) * ((span + beyond) / 2 - span);
    return (-tip * beyond - all) / span;
  }

  /** What the support that bears more bears, N, whichever way. */
  public double greatestReaction() {
    return Math.max(Math.abs(reaction()), tip + spread - reaction());
  }

  /** N·m at a distance from the far support. */
  public double moment(double x) {
    if (x <= span) {
      return reaction() * x - perLength() * x * x / 2;
    }
    double rest = span + beyond - x;
    return -tip * rest - perLength() * rest * rest / 2;
  }

  /** N at a distance from the far support, to the left of the second one at that. */
  public double shear(double x) {
    return x <= span ? reaction() - perLength() * x : tip + perLength() * (span + beyond - x);
  }

  /** The greatest of all, N·m, whatever way it bends. */
  public double greatestMoment() {
    double w = perLength();
    double flat = w > 0 ? reaction() / w : 0;
    double sags = flat > 0 && flat < span ? Math.abs(moment(flat)) : 0;
    return Math.max(sags, Math.abs(moment(span)));
  }

  /** N. */
  public double greatestShear() {
    return Math.max(
        Math.max(Math.abs(shear(0)), Math.abs(shear(span))), tip + perLength() * beyond);
  }

  /** The greatest deflection, up or down, m, for EI in N·m² and GA in N. */
  public Deflection deflection(double bending, double shearing) {
    Refuse.unlessPositive("EI", bending);
    Refuse.unlessPositive("GA", shearing);
    Deflection most = at(span + beyond, bending, shearing);
    for (int i = 1; i < PLACES; i++) {
      Deflection one = at(span * i / PLACES, bending, shearing);
      most = Math.abs(one.total()) > Math.abs(most.total()) ? one : most;
    }
    return most.total() < 0 ? new Deflection(-most.bending(), -most.shear()) : most;
  }

  /** By virtual work, downwards positive. */
  Deflection at(double place, double bending, double shearing) {
    double bent = 0;
    double sheared = 0;
    for (double[] part : new double[][] {{0, span}, {span, span + beyond}}) {
      double step = (part[1] - part[0]) / PIECES;
      for (int i = 0; i < PIECES; i++) {
        double x = part[0] + (i + 0.5) * step;
        bent += moment(x) * unitMoment(x, place) * step;
        sheared += shear(x) * unitShear(x, place) * step;
      }
    }
    return new Deflection(bent / bending, sheared / shearing);
  }

  private double unitMoment(double x, double place) {
    if (place > span) {
      return x <= span ? -(place - span) / span * x : -Math.max(0, place - x);
    }
    double left = 1 - place / span;
    return x > span ? 0 : left * x - Math.max(0, x - place);
  }

  private double unitShear(double x, double place) {
    if (place > span) {
      return x <= span ? -(place - span) / span : x < place ? 1 : 0;
    }
    double left = 1 - place / span;
    return x > span ? 0 : x < place ? left : left - 1;
  }
}

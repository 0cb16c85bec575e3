package kitwright.mechanics.load;

import kitwright.mechanics.Refuse;

/** A load across a cantilever held at x = 0; x in m towards the tip, forces in N. */
public sealed interface SpanLoad {
  /** m/s², by definition (3rd General Conference on Weights and Measures, 1901). */
  double STANDARD_GRAVITY = 9.80665;

  /** Shear force at x, N: what acts beyond it. */
  double shear(double x);

  /** Bending moment at x, N·m, of what acts beyond it. */
  double moment(double x);

  /** How far from the root it reaches, m. */
  double reach();

  /** A force at one place. */
  record Point(double at, double force) implements SpanLoad {
    public Point {
      Refuse.unlessPositive("place of the force", at);
      Refuse.unlessFinite("force", force);
    }

    @Override
    public double shear(double x) {
      return x < at ? force : 0;
    }

    @Override
    public double moment(double x) {
      return x < at ? force * (at - x) : 0;
    }

    @Override
    public double reach() {
      return at;
    }
  }

  /** A force spread evenly from one place to another; self-weight is a row of these. */
  record Even(double from, double to, double force) implements SpanLoad {
    public Even {
      Refuse.ifNegative("start of the load", from);
      Refuse.unless(to > from, "a spread load has a length");
      Refuse.unlessFinite("end of the load", to);
      Refuse.unlessFinite("force", force);
    }

    /** The weight of a length of beam of so many kg/m. */
    public static Even weight(double from, double to, double massPerLength) {
      return new Even(from, to, massPerLength * STANDARD_GRAVITY * (to - from));
    }

    @Override
    public double shear(double x) {
      return force * beyond(x) / (to - from);
    }

    @Override
    public double moment(double x) {
      double beyond = beyond(x);
      return shear(x) * (to - beyond / 2 - Math.min(x, to));
    }

    private double beyond(double x) {
      return Math.max(0, to - Math.max(x, from));
    }

    @Override
    public double reach() {
      return to;
    }
  }

  /** A force spread as a triangle, greatest at the root and nought at the tip. */
  record Triangular(double span, double force) implements SpanLoad {
    public Triangular {
      Refuse.unlessPositive("span", span);
      Refuse.unlessFinite("force", force);
    }

    @Override
    public double shear(double x) {
      double rest = rest(x);
      return force * rest * rest;
    }

    @Override
    public double moment(double x) {
      double rest = rest(x);
      return force * span / 3 * rest * rest * rest;
    }

    private double rest(double x) {
      return Math.max(0, 1 - x / span);
    }

    @Override
    public double reach() {
      return span;
    }
  }

  /**
   * A force spread as a quarter ellipse, greatest at the root and nought at the tip; its resultant
   * stands 4/(3π) of the span from the root.
   */
  record Elliptic(double span, double force) implements SpanLoad {
    public Elliptic {
      Refuse.unlessPositive("span", span);
      Refuse.unlessFinite("force", force);
    }

    @Override
    public double shear(double x) {
      double u = Math.min(1, x / span);
      return force * (1 - 2 / Math.PI * (u * Math.sqrt(1 - u * u) + Math.asin(u)));
    }

    @Override
    public double moment(double x) {
      double u = Math.min(1, x / span);
      double root = Math.sqrt(1 - u * u);
      double arm = 2 / Math.PI * (u * Math.asin(u) + root - root * root * root / 3) - u;
      return force * span * Math.max(0, arm);
    }

    @Override
    public double reach() {
      return span;
    }
  }
}

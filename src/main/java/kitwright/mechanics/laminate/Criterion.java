package kitwright.mechanics.laminate;

/**
 * When a ply fails.
 *
 * @see "A. K. Kaw, Mechanics of Composite Materials, 2nd ed., 2006, sections 2.8.4 and 2.8.6"
 */
public enum Criterion {
  /** A strain reaches the strength over the modulus of its direction. */
  MAXIMUM_STRAIN {
    @Override
    double factor(PlyState at, Lamina stuff, LaminaStrength limit) {
      double one = reach(at.strain1(), limit.tension(), limit.compression(), stuff.e1());
      double two =
          reach(at.strain2(), limit.tensionAcross(), limit.compressionAcross(), stuff.e2());
      double shear = reach(at.shearStrain(), limit.shear(), limit.shear(), stuff.g12());
      return Math.min(shear, Math.min(one, two));
    }
  },
  /** Tsai and Wu, F12 = −½·√(F11·F22). */
  TSAI_WU {
    @Override
    double factor(PlyState at, Lamina stuff, LaminaStrength limit) {
      double f1 = 1 / limit.tension() - 1 / limit.compression();
      double f2 = 1 / limit.tensionAcross() - 1 / limit.compressionAcross();
      double f11 = 1 / (limit.tension() * limit.compression());
      double f22 = 1 / (limit.tensionAcross() * limit.compressionAcross());
      double f66 = 1 / (limit.shear() * limit.shear());
      double s1 = at.stress1();
      double s2 = at.stress2();
      double square =
          f11 * s1 * s1
              + f22 * s2 * s2
              + f66 * at.shearStress() * at.shearStress()
              - Math.sqrt(f11 * f22) * s1 * s2;
      double linear = f1 * s1 + f2 * s2;
      return square > 0
          ? 2 / (linear + Math.sqrt(linear * linear + 4 * square))
          : Double.POSITIVE_INFINITY;
    }
  };

  /** The factor on all loads at which this state fails; infinite where it never does. */
  abstract double factor(PlyState at, Lamina stuff, LaminaStrength limit);

  private static double reach(double strain, double tension, double compression, double modulus) {
    double limit = strain >= 0 ? tension / modulus : compression / modulus;
    return strain == 0 ? Double.POSITIVE_INFINITY : limit / Math.abs(strain);
  }
}

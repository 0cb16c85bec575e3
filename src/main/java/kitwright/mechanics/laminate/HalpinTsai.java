package kitwright.mechanics.laminate;

import java.util.Optional;
import kitwright.mechanics.Refuse;

/**
 * A ply of straight fibres from fibre and resin: along by the rule of mixtures, across and in shear
 * by Halpin and Tsai (ξ = 2 and 1).
 *
 * @see "J. C. Halpin, J. L. Kardos, The Halpin–Tsai equations: a review, Polymer Engineering and
 *     Science 16, 1976, 344–352; R. M. Jones, Mechanics of Composite Materials, 2nd ed., 1999,
 *     sections 3.2 and 3.3"
 */
final class HalpinTsai {
  private static final double SHAPE_ACROSS = 2;
  private static final double SHAPE_SHEAR = 1;

  private HalpinTsai() {}

  private static double across(double fibre, double resin, double volume, double shape) {
    double ratio = fibre / resin;
    double eta = (ratio - 1) / (ratio + shape);
    return resin * (1 + shape * eta * volume) / (1 - eta * volume);
  }

  /** A ply with a fibre fraction by volume between 0 and 1; its strengths remain unknown. */
  static Lamina lamina(String name, Fibre fibre, Matrix resin, double volume) {
    Refuse.outside("fibre fraction by volume", 0, 1, volume);
    double rest = 1 - volume;
    return new Lamina(
        name,
        volume * fibre.axial() + rest * resin.modulus(),
        across(fibre.across(), resin.modulus(), volume, SHAPE_ACROSS),
        across(fibre.shear(), resin.shear(), volume, SHAPE_SHEAR),
        volume * fibre.poisson() + rest * resin.poisson(),
        volume * fibre.density() + rest * resin.density(),
        Optional.empty());
  }
}

package kitwright.mechanics.beam;

import kitwright.mechanics.beam.BeamMaterial.Flat;

/**
 * The wall of a long tube, without flaw, pushed along. Waves 1/α long and 1/β round with k = (β/α)²
 * take N = (2/r)·√(P/Q), where P = D₁₁ + 2(D₁₂ + 2D₆₆)k + D₂₂k² is what bending of the wall
 * withstands and Q = 1/E₂ + (1/G − 2ν₁₂/E₁)k + k²/E₁, over t, how far it stretches; the least over
 * k counts. Rings, k = 0, are E·t/(r·√(3(1 − ν²))) of what is the same every way; a wall that
 * shears easily, as wood and unidirectional cloth do, folds into diamonds at half of that and less.
 *
 * @param face the wall
 * @param flat what it is in its plane
 * @param radius of its middle, m
 * @see "NASA SP-8007 (2020 rev.), 4.1.2, orthotropic cylinders, read by way of public code that
 *     quotes it; this is the least of its determinant where waves are of any length"
 */
record RoundWall(Skin face, Flat flat, double radius) {
  /** The compressive stress at which it goes, Pa. */
  double stress() {
    double along = 1 / face.modulus();
    var plate = face.plate().orElseThrow();
    var bent = new Quadratic(plate.d11(), 2 * (plate.d12() + 2 * plate.d66()), plate.d22());
    var pulled =
        new Quadratic(1 / flat.across(), 1 / flat.shear() - 2 * flat.poisson() * along, along);
    return 2 / radius * Math.sqrt(bent.leastOver(pulled) / face.thickness());
  }

  /** c + b·k + a·k² of a k that is not negative. */
  private record Quadratic(double c, double b, double a) {
    private double at(double k) {
      return c + k * (b + k * a);
    }

    /**
     * The least this is in the other's measure: at none, without end, or where it turns between.
     */
    private double leastOver(Quadratic other) {
      double least = Math.min(c / other.c, a / other.a);
      double square = a * other.b - b * other.a;
      double half = a * other.c - c * other.a;
      double none = b * other.c - c * other.b;
      double root = Math.sqrt(half * half - square * none);
      for (double turn : new double[] {(-half + root) / square, (-half - root) / square}) {
        if (turn > 0 && turn < Double.POSITIVE_INFINITY) { // neither where it never turns
          least = Math.min(least, at(turn) / other.at(turn));
        }
      }
      return least;
    }
  }
}

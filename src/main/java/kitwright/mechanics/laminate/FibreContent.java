package kitwright.mechanics.laminate;

import kitwright.mechanics.Refuse;

/**
 * How much of a laminate is fibre, by mass, and what follows: rules of mixtures, no voids.
 *
 * @param byMass fibre mass over laminate mass, between 0 and 1
 * @param fibreDensity kg/m³
 * @param matrixDensity kg/m³
 */
public record FibreContent(double byMass, double fibreDensity, double matrixDensity) {
  public FibreContent {
    Refuse.outside("fibre fraction by mass", 0, 1, byMass);
    Refuse.unlessPositive("fibre density", fibreDensity);
    Refuse.unlessPositive("resin density", matrixDensity);
  }

  /** Fibre volume over laminate volume. */
  public double byVolume() {
    double fibre = byMass / fibreDensity;
    return fibre / (fibre + (1 - byMass) / matrixDensity);
  }

  /** Density of the laminate, kg/m³. */
  public double density() {
    return 1 / (byMass / fibreDensity + (1 - byMass) / matrixDensity);
  }

  /**
   * Cured thickness of a cloth, m, from its dry mass in kg/m²; for glass 2560 and resin 1200 kg/m³
   * the same as the formula of ISO 12215-5:2008, Annex C.
   */
  public double thickness(double arealMass) {
    return Refuse.unlessPositive("areal mass", arealMass) / (byMass * density());
  }

  /** Mass of the cured cloth, kg/m². */
  public double laminateMass(double arealMass) {
    return Refuse.unlessPositive("areal mass", arealMass) / byMass;
  }
}

package kitwright.mechanics.laminate;

import kitwright.mechanics.Refuse;

/**
 * A cured resin.
 *
 * @param name as it is told to a person
 * @param density kg/m³
 * @param modulus Young's modulus, Pa
 * @param shear shear modulus, Pa
 * @param poisson Poisson's ratio
 */
public record Matrix(String name, double density, double modulus, double shear, double poisson) {
  public Matrix {
    Refuse.unlessPositive("resin density", density);
    Refuse.unlessPositive("resin modulus", modulus);
    Refuse.unlessPositive("resin shear modulus", shear);
    Refuse.outside("Poisson’s ratio", -1, 0.5, poisson);
  }

  /** An isotropic resin, G = E/(2(1 + ν)). */
  public static Matrix of(String name, double density, double modulus, double poisson) {
    return new Matrix(name, density, modulus, modulus / 2 / (1 + poisson), poisson);
  }
}

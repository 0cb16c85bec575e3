package kitwright.mechanics.laminate;

import kitwright.mechanics.Refuse;

/**
 * A fibre.
 *
 * @param name as it is told to a person
 * @param density kg/m³
 * @param axial Young's modulus along it, Pa
 * @param across Young's modulus across it, Pa; for glass and basalt the same as along
 * @param shear shear modulus, Pa
 * @param poisson Poisson's ratio for a pull along it
 */
public record Fibre(
    String name, double density, double axial, double across, double shear, double poisson) {
  public Fibre {
    Refuse.unlessPositive("fibre density", density);
    Refuse.unlessPositive("fibre modulus", axial);
    Refuse.unlessPositive("fibre modulus across", across);
    Refuse.unlessPositive("fibre shear modulus", shear);
    Refuse.outside("Poisson’s ratio", -1, 0.5, poisson);
  }
}

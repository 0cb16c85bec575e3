package kitwright.mechanics.panel;

import kitwright.mechanics.Refuse;

/**
 * Stiffness of a plate whose axes are its own: no bend–twist coupling.
 *
 * @param d11 N·m
 * @param d12 N·m
 * @param d22 N·m
 * @param d66 N·m
 * @param shearX transverse shear stiffness in the x–z plane, N/m
 * @param shearY transverse shear stiffness in the y–z plane, N/m
 */
public record PlateStiffness(
    double d11, double d12, double d22, double d66, double shearX, double shearY) {

  public PlateStiffness {
    Refuse.unlessPositive("D11", d11);
    Refuse.unlessPositive("D22", d22);
    Refuse.unlessPositive("D66", d66);
    Refuse.unlessPositive("shear stiffness", shearX);
    Refuse.unlessPositive("shear stiffness", shearY);
    Refuse.unless(d12 * d12 < d11 * d22, "D12 is beyond √(D11·D22)");
  }
}

package kitwright.mechanics.beam;

import kitwright.mechanics.Refuse;

/**
 * Sandwich beam values with thin faces on a core that carries no bending, to show beside the exact
 * ones.
 *
 * @param width b, m
 * @param lower stiffness per width of the lower face E·t, N/m
 * @param upper stiffness per width of the upper face E·t, N/m
 * @param lowerThickness m
 * @param upperThickness m
 * @param core thickness of the core, m
 * @param shear shear modulus of the core, Pa
 * @see "H. G. Allen, Analysis and Design of Structural Sandwich Panels, 1969, chapter 2"
 */
public record ThinFaces(
    double width,
    double lower,
    double upper,
    double lowerThickness,
    double upperThickness,
    double core,
    double shear) {
  public ThinFaces {
    Refuse.unlessPositive("width", width);
    Refuse.unlessPositive("lower face", lower);
    Refuse.unlessPositive("upper face", upper);
    Refuse.unlessPositive("lower face thickness", lowerThickness);
    Refuse.unlessPositive("upper face thickness", upperThickness);
    Refuse.unlessPositive("core thickness", core);
    Refuse.unlessPositive("core shear modulus", shear);
  }

  /** d, between the middles of the faces, m. */
  public double spacing() {
    return core + (lowerThickness + upperThickness) / 2;
  }

  /** EI = b·d²·E₁t₁·E₂t₂/(E₁t₁ + E₂t₂), N·m². */
  public double bendingStiffness() {
    return width * spacing() * spacing() * lower * upper / (lower + upper);
  }

  /** GA = Gc·b·d²/tc, N. */
  public double shearStiffness() {
    return shear * width * spacing() * spacing() / core;
  }
}

package kitwright.mechanics.laminate;

import kitwright.mechanics.Refuse;

/**
 * Strengths of a ply in its own axes, Pa, all positive.
 *
 * @param tension along the fibre
 * @param compression along the fibre
 * @param tensionAcross across the fibre
 * @param compressionAcross across the fibre
 * @param shear in the plane
 */
public record LaminaStrength(
    double tension,
    double compression,
    double tensionAcross,
    double compressionAcross,
    double shear) {
  public LaminaStrength {
    Refuse.unlessPositive("tensile strength", tension);
    Refuse.unlessPositive("compressive strength", compression);
    Refuse.unlessPositive("tensile strength across", tensionAcross);
    Refuse.unlessPositive("compressive strength across", compressionAcross);
    Refuse.unlessPositive("shear strength", shear);
  }
}

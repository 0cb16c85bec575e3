package kitwright.mechanics.timber;

import kitwright.mechanics.Refuse;

/**
 * A solid timber in place of another of the same width: how deep it must be. Stiffness goes with
 * E·h³, strength in bending with f·h².
 *
 * @param oldModulus Pa
 * @param oldStrength bending strength, Pa
 * @param newModulus Pa
 * @param newStrength bending strength, Pa
 */
public record Replacement(
    double oldModulus, double oldStrength, double newModulus, double newStrength) {
  public Replacement {
    Refuse.unlessPositive("old modulus", oldModulus);
    Refuse.unlessPositive("old strength", oldStrength);
    Refuse.unlessPositive("new modulus", newModulus);
    Refuse.unlessPositive("new strength", newStrength);
  }

  /** Depth over the old depth that makes it as stiff. */
  public double depthForStiffness() {
    return Math.cbrt(oldModulus / newModulus);
  }

  /** Depth over the old depth that makes it as strong. */
  public double depthForStrength() {
    return Math.sqrt(oldStrength / newStrength);
  }
}

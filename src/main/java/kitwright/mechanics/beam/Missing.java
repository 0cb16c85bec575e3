package kitwright.mechanics.beam;

/**
 * A limit that could not be checked, for want of a value.
 *
 * @param lay how the material lies, by which it is told which of its values is meant
 */
public record Missing(String where, String material, BeamMaterial.Lay lay, Property property) {
  /** What is not known. */
  public enum Property {
    TENSILE_STRENGTH,
    COMPRESSIVE_STRENGTH,
    BENDING_STRENGTH,
    SHEAR_STRENGTH,
    THROUGH_THICKNESS_MODULUS,
    ACROSS_MODULUS,
    /** What its wall bears before it buckles: a modulus across, or a wall not too thin. */
    WALL,
    /** Whether its wall bears the shear that its material bears, before it buckles. */
    SHEARED_WALL
  }
}

package kitwright.mechanics.beam;

/** A limit that could not be checked, for want of a value. */
public record Missing(String where, String material, Property property) {
  /** What is not known. */
  public enum Property {
    TENSILE_STRENGTH,
    COMPRESSIVE_STRENGTH,
    BENDING_STRENGTH,
    SHEAR_STRENGTH,
    THROUGH_THICKNESS_MODULUS
  }
}

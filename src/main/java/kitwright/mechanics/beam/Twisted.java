package kitwright.mechanics.beam;

/**
 * The greatest shear stress that a torque makes in a piece.
 *
 * @param where the piece
 * @param material what it is made of
 * @param perUnit Pa for one N·m
 * @param cell the area inside the middle of the walls that it closes with others, m²; nought where
 *     it closes none
 */
public record Twisted(String where, BeamMaterial material, double perUnit, double cell) {
  /** In a section that closes round nothing. */
  public Twisted(String where, BeamMaterial material, double perUnit) {
    this(where, material, perUnit, 0);
  }
}

package kitwright.mechanics.beam;

/**
 * The greatest shear stress that a torque makes in a piece.
 *
 * @param where the piece
 * @param material what it is made of
 * @param perUnit Pa for one N·m
 */
public record Twisted(String where, BeamMaterial material, double perUnit) {}

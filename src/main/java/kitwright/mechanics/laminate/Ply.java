package kitwright.mechanics.laminate;

import kitwright.mechanics.Refuse;

/**
 * A ply in a stack.
 *
 * @param stuff what it is made of
 * @param thickness m
 * @param angle of its fibre from the x axis, degrees, anticlockwise seen from above
 */
public record Ply(Lamina stuff, double thickness, double angle) {
  public Ply {
    Refuse.unlessPositive("ply thickness", thickness);
    Refuse.unlessFinite("ply angle", angle);
  }
}

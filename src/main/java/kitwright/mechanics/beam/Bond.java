package kitwright.mechanics.beam;

import java.util.OptionalDouble;

/**
 * A glue line, a segment along one of the axes.
 *
 * @param where what a person calls it
 * @param from one end
 * @param to the other end
 * @param one the material on one side
 * @param other the material on the other side
 * @param glue the shear strength of the glue, Pa, where known; the wood or laminate beside it is
 *     checked in any case
 */
public record Bond(
    String where, Point from, Point to, BeamMaterial one, BeamMaterial other, OptionalDouble glue) {

  /** Whether it lies along y, so that a load along z shears it. */
  boolean level() {
    return from.z() == to.z();
  }

  /** m. */
  double length() {
    return Math.abs(to.y() - from.y()) + Math.abs(to.z() - from.z());
  }

  /** The shear modulus that shares out the shear between bonds at one level: the softer side. */
  double shearModulus() {
    return Math.min(one.shearModulus(), other.shearModulus());
  }

  /** The weakest of glue and both sides, Pa, as far as known. */
  OptionalDouble strength() {
    double least = Double.POSITIVE_INFINITY;
    for (var s : java.util.List.of(glue, one.strength().shear(), other.strength().shear())) {
      least = Math.min(least, s.orElse(Double.POSITIVE_INFINITY));
    }
    return Double.isInfinite(least) ? OptionalDouble.empty() : OptionalDouble.of(least);
  }

  Bond turned() {
    return new Bond(where, from.turned(), to.turned(), one, other, glue);
  }
}

package kitwright.assessment;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import kitwright.ledger.Material.Sort;
import kitwright.mechanics.beam.BeamMaterial;
import kitwright.mechanics.beam.BeamMaterial.Kind;
import kitwright.mechanics.beam.BeamMaterial.Strength;
import kitwright.mechanics.laminate.Criterion;
import kitwright.mechanics.laminate.Lamina;
import kitwright.mechanics.laminate.LaminaStrength;
import kitwright.mechanics.laminate.Laminate;
import kitwright.mechanics.laminate.Ply;

/**
 * A material of the ledger as mechanics wants it, in its own axes: along and across its grain or
 * first fibre.
 *
 * @param id of the material
 * @param density kg/m³
 * @param scatter coefficient of variation of its strengths and moduli; nought where none is stated
 * @param ply thickness of one cured ply of a cloth, m
 * @param turned how far a cloth's own axes are turned from the roll, degrees
 */
record Stuff(
    String id,
    Sort sort,
    double density,
    Elastic elastic,
    Limits limits,
    double scatter,
    OptionalDouble ply,
    double turned) {
  /** Moduli in Pa, Poisson's ratio, and the modulus through the thickness of a core. */
  record Elastic(
      double along, double across, double shear, double poisson, OptionalDouble through) {}

  /** Strengths in Pa, each of which may be unknown. */
  record Limits(
      OptionalDouble tension,
      OptionalDouble compression,
      OptionalDouble bending,
      OptionalDouble shear,
      OptionalDouble tensionAcross,
      OptionalDouble compressionAcross) {
    Limits times(double factor) {
      return new Limits(
          times(tension, factor),
          times(compression, factor),
          times(bending, factor),
          times(shear, factor),
          times(tensionAcross, factor),
          times(compressionAcross, factor));
    }

    private static OptionalDouble times(OptionalDouble value, double factor) {
      return value.isEmpty() ? value : OptionalDouble.of(value.getAsDouble() * factor);
    }
  }

  /** How a beam takes it. */
  Kind kind() {
    return switch (sort) {
      case TIMBER, PLYWOOD -> Kind.TIMBER;
      case CORE -> Kind.CORE;
      case METAL, BOLT -> Kind.METAL;
      case FIBRE, RESIN, CLOTH, LAMINATE, GLUE, OTHER -> Kind.LAMINATE;
    };
  }

  /** As a ply. */
  Lamina lamina() {
    Lamina bare =
        new Lamina(
            id,
            elastic.along(),
            elastic.across(),
            elastic.shear(),
            elastic.poisson(),
            density,
            Optional.empty());
    return strength().map(bare::with).orElse(bare);
  }

  private Optional<LaminaStrength> strength() {
    OptionalDouble pull = limits.tension().isPresent() ? limits.tension() : limits.bending();
    if (pull.isEmpty()
        || limits.compression().isEmpty()
        || limits.tensionAcross().isEmpty()
        || limits.compressionAcross().isEmpty()
        || limits.shear().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new LaminaStrength(
            pull.getAsDouble(),
            limits.compression().getAsDouble(),
            limits.tensionAcross().getAsDouble(),
            limits.compressionAcross().getAsDouble(),
            limits.shear().getAsDouble()));
  }

  /** As a material of a beam that runs at an angle in degrees to the grain or first fibre. */
  BeamMaterial beam(double angle) {
    double square = Math.abs(angle % 180);
    if (square < 1e-6 || square > 180 - 1e-6) {
      return beam(
          elastic.along(),
          new Strength(limits.tension(), limits.compression(), limits.bending(), limits.shear()));
    }
    if (Math.abs(square - 90) < 1e-6) {
      // Bent across its grain wood fails where it is pulled across.
      return beam(
          elastic.across(),
          new Strength(
              limits.tensionAcross(),
              limits.compressionAcross(),
              limits.tensionAcross(),
              limits.shear()));
    }
    Laminate turned = new Laminate(List.of(new Ply(lamina(), 1e-3, angle)));
    BeamMaterial off = turned.asBeamMaterial(id, Criterion.MAXIMUM_STRAIN);
    return new BeamMaterial(
        id,
        kind(),
        density,
        new BeamMaterial.Elastic(off.axial(), off.shearModulus(), elastic.through()),
        off.strength());
  }

  private BeamMaterial beam(double modulus, Strength strength) {
    return new BeamMaterial(
        id,
        kind(),
        density,
        new BeamMaterial.Elastic(modulus, elastic.shear(), elastic.through()),
        strength);
  }
}

package kitwright.assessment.material;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import kitwright.ledger.Material.Sort;
import kitwright.mechanics.beam.BeamMaterial;
import kitwright.mechanics.beam.BeamMaterial.Kind;
import kitwright.mechanics.beam.BeamMaterial.Lay;
import kitwright.mechanics.beam.BeamMaterial.Strength;
import kitwright.mechanics.laminate.Criterion;
import kitwright.mechanics.laminate.Lamina;
import kitwright.mechanics.laminate.LaminaStrength;
import kitwright.mechanics.laminate.Laminate;
import kitwright.mechanics.laminate.Ply;
import kitwright.mechanics.timber.Hankinson;

/**
 * A material of the ledger as mechanics wants it, in its own axes: along and across its grain or
 * first fibre.
 *
 * @param id of the material
 * @param density kg/m³
 * @param elastic moduli along, and through the thickness
 * @param limits strengths along
 * @param flat what it is across, in its plane; empty where that is not known
 * @param rolling what it is in shear square to its grain, through its thickness
 * @param scatter coefficient of variation of its strengths and moduli; nought where none is stated
 * @param ply thickness of one cured ply of a cloth, m
 * @param veneer thickness of the veneers of a plywood that is worked out veneer by veneer, m
 * @param turned how far a cloth's own axes are turned from the roll, degrees
 */
public record Stuff(
    String id,
    Sort sort,
    double density,
    Elastic elastic,
    Limits limits,
    Optional<Flat> flat,
    Rolling rolling,
    double scatter,
    OptionalDouble ply,
    OptionalDouble veneer,
    double turned) {
  /** Pa: along, in shear along, and through the thickness of a core. */
  public record Elastic(double along, double shear, OptionalDouble through) {}

  /** Strengths in Pa, each of which may be unknown. */
  public record Limits(
      OptionalDouble tension,
      OptionalDouble compression,
      OptionalDouble bending,
      OptionalDouble shear) {
    public Limits times(double factor) {
      return new Limits(
          Stuff.times(tension, factor),
          Stuff.times(compression, factor),
          Stuff.times(bending, factor),
          Stuff.times(shear, factor));
    }
  }

  /** Across, in its plane: modulus and strengths in Pa, Poisson's ratio for a pull along. */
  public record Flat(
      double across, double poisson, OptionalDouble tension, OptionalDouble compression) {
    public Flat times(double strength, double stiffness) {
      return new Flat(
          across * stiffness,
          poisson,
          Stuff.times(tension, strength),
          Stuff.times(compression, strength));
    }
  }

  /** In shear square to the grain, Pa; wood rolls, a honeycomb has a second way. */
  public record Rolling(OptionalDouble modulus, OptionalDouble strength) {
    public Rolling times(double share, double stiffness) {
      return new Rolling(Stuff.times(modulus, stiffness), Stuff.times(strength, share));
    }
  }

  private static OptionalDouble times(OptionalDouble value, double factor) {
    return value.isEmpty() ? value : OptionalDouble.of(value.getAsDouble() * factor);
  }

  /** The same with factors on its strengths and moduli. */
  public Stuff times(double strength, double stiffness) {
    if (strength == 1 && stiffness == 1) {
      return this;
    }
    Elastic less =
        new Elastic(
            elastic.along() * stiffness,
            elastic.shear() * stiffness,
            times(elastic.through(), stiffness));
    return new Stuff(
        id,
        sort,
        density,
        less,
        limits.times(strength),
        flat.map(across -> across.times(strength, stiffness)),
        rolling.times(strength, stiffness),
        scatter,
        ply,
        veneer,
        turned);
  }

  /** How a beam takes it. */
  public Kind kind() {
    return switch (sort) {
      case TIMBER, PLYWOOD -> Kind.TIMBER;
      case CORE -> Kind.CORE;
      case METAL, BOLT -> Kind.METAL;
      case FIBRE, RESIN, CLOTH, LAMINATE, GLUE, OTHER -> Kind.LAMINATE;
    };
  }

  /** Whether what it is across is known well enough to lay it flat or at an angle. */
  boolean isFlat() {
    return flat.isPresent() && rolling.modulus().isPresent();
  }

  /** As a ply; only of what {@link #isFlat()}. */
  public Lamina lamina() {
    Flat across = flat.orElseThrow();
    Lamina bare =
        new Lamina(
            id,
            elastic.along(),
            across.across(),
            elastic.shear(),
            across.poisson(),
            density,
            Optional.empty());
    return strength(across).map(bare::with).orElse(bare);
  }

  private Optional<LaminaStrength> strength(Flat across) {
    OptionalDouble pull = limits.tension().isPresent() ? limits.tension() : limits.bending();
    if (pull.isEmpty()
        || limits.compression().isEmpty()
        || across.tension().isEmpty()
        || across.compression().isEmpty()
        || limits.shear().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new LaminaStrength(
            pull.getAsDouble(),
            limits.compression().getAsDouble(),
            across.tension().getAsDouble(),
            across.compression().getAsDouble(),
            limits.shear().getAsDouble()));
  }

  /** How far an angle in degrees is from the length, between 0 and 90. */
  public static double off(double angle) {
    double within = Math.abs(angle % 180);
    return Math.min(within, 180 - within);
  }

  public static boolean isAlong(double angle) {
    return off(angle) < 1e-6;
  }

  /**
   * As a material of a beam that runs at an angle in degrees to the grain or first fibre; other
   * than along only of what {@link #isFlat()}.
   */
  public BeamMaterial beam(double angle) {
    if (isAlong(angle)) {
      return along();
    }
    return Math.abs(off(angle) - 90) < 1e-6 ? across(Lay.ACROSS) : bias(angle);
  }

  /** A veneer in a board: one square to the beam may crack. */
  public BeamMaterial veneer(double angle) {
    return Math.abs(off(angle) - 90) < 1e-6 ? across(Lay.CROSS_VENEER) : beam(angle);
  }

  private BeamMaterial along() {
    Optional<BeamMaterial.Flat> plate =
        flat.map(one -> new BeamMaterial.Flat(one.across(), one.poisson(), elastic.shear()));
    return new BeamMaterial(
        id,
        kind(),
        Lay.ALONG,
        density,
        new BeamMaterial.Elastic(elastic.along(), elastic.shear(), elastic.through(), plate),
        new Strength(limits.tension(), limits.compression(), limits.bending(), limits.shear()));
  }

  /** Bent across its grain wood fails where it is pulled across. */
  private BeamMaterial across(Lay lay) {
    Flat across = flat.orElseThrow();
    double poisson = across.poisson() * across.across() / elastic.along();
    BeamMaterial.Flat plate = new BeamMaterial.Flat(elastic.along(), poisson, elastic.shear());
    return new BeamMaterial(
        id,
        kind(),
        lay,
        density,
        new BeamMaterial.Elastic(
            across.across(),
            rolling.modulus().orElseThrow(),
            elastic.through(),
            Optional.of(plate)),
        new Strength(across.tension(), across.compression(), across.tension(), rolling.strength()));
  }

  /**
   * Transverse shear turns with the angle as a tensor; its strength is the less of both planes.
   * What solid wood bears bent is no more than it bears pulled or pushed.
   */
  private BeamMaterial bias(double angle) {
    Laminate turned = new Laminate(List.of(new Ply(lamina(), 1e-3, angle)));
    BeamMaterial off = turned.asBeamMaterial(id, Criterion.MAXIMUM_STRAIN);
    double cos = Math.cos(Math.toRadians(angle));
    double shear = cos * cos * elastic.shear() + (1 - cos * cos) * rolling.modulus().orElseThrow();
    Flat across = flat.orElseThrow();
    OptionalDouble pull = limits.tension().isPresent() ? limits.tension() : limits.bending();
    OptionalDouble tension = wooden(off.strength().tension(), pull, across.tension(), angle);
    OptionalDouble compression =
        wooden(off.strength().compression(), limits.compression(), across.compression(), angle);
    return new BeamMaterial(
        id,
        kind(),
        Lay.BIAS,
        density,
        new BeamMaterial.Elastic(off.axial(), shear, elastic.through()),
        new Strength(
            tension,
            compression,
            least(tension, compression),
            least(limits.shear(), rolling.strength())));
  }

  /** Of wood no more than by {@link Hankinson}: what acts along, across and in shear adds up. */
  private OptionalDouble wooden(
      OptionalDouble strength, OptionalDouble along, OptionalDouble across, double angle) {
    if (kind() != Kind.TIMBER || along.isEmpty() || across.isEmpty()) {
      return strength;
    }
    return least(
        strength,
        OptionalDouble.of(
            Hankinson.strength(along.getAsDouble(), across.getAsDouble(), Math.toRadians(angle))));
  }

  /** The lesser; empty where one of them is not known. */
  private static OptionalDouble least(OptionalDouble one, OptionalDouble other) {
    return one.isEmpty() || other.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(Math.min(one.getAsDouble(), other.getAsDouble()));
  }
}

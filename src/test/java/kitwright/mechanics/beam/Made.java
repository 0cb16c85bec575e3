package kitwright.mechanics.beam;

import java.util.List;
import java.util.OptionalDouble;
import kitwright.mechanics.beam.BeamMaterial.Elastic;
import kitwright.mechanics.beam.BeamMaterial.Kind;
import kitwright.mechanics.beam.BeamMaterial.Strength;

/** Materials and sections for tests. */
public final class Made {
  private Made() {}

  /** Tension, compression and shear known, all in Pa. */
  public static Strength strength(double tension, double compression, double shear) {
    return new Strength(of(tension), of(compression), OptionalDouble.empty(), of(shear));
  }

  /** Bending, compression along the grain and shear along the grain known, all in Pa. */
  public static Strength ofTimber(double bending, double compression, double shear) {
    return new Strength(OptionalDouble.empty(), of(compression), of(bending), of(shear));
  }

  private static OptionalDouble of(double strength) {
    return OptionalDouble.of(strength);
  }

  /** An isotropic core: as stiff through its thickness as along it. */
  public static BeamMaterial core(
      String name, double density, double modulus, double shear, Strength strength) {
    Elastic elastic = new Elastic(modulus, shear, OptionalDouble.of(modulus));
    return new BeamMaterial(name, Kind.CORE, density, elastic, strength);
  }

  /** A rectangular hollow section of walls of two thicknesses, corners square. */
  public static Section box(
      BeamMaterial material, double width, double height, double side, double flange) {
    Strip wall = Strip.of(side, material);
    return LayeredSection.ofWidth(width)
        .layer(material, flange)
        .strips(height - 2 * flange, List.of(wall, Strip.gap(width - 2 * side), wall))
        .layer(material, flange)
        .section();
  }
}

package kitwright.mechanics.beam;

import java.util.Optional;
import java.util.OptionalDouble;
import kitwright.mechanics.Refuse;

/**
 * A material as a beam feels it: along the beam and in shear.
 *
 * @param name as it is told to a person
 * @param kind decides which limits apply to it
 * @param lay how it lies along the beam
 * @param density kg/m³
 * @param elastic its moduli
 * @param strength its limits, each of which may be unknown
 */
public record BeamMaterial(
    String name, Kind kind, Lay lay, double density, Elastic elastic, Strength strength) {

  /** What sort of stuff it is; a core supports a face, timber has a strength in bending. */
  public enum Kind {
    TIMBER,
    CORE,
    LAMINATE,
    METAL
  }

  /** How its grain or first fibre lies along the beam. */
  public enum Lay {
    ALONG,
    /** Square to the beam: wood so shears by rolling. */
    ACROSS,
    BIAS,
    /** A veneer of plywood square to the beam: it may crack, and only its shear is checked. */
    CROSS_VENEER
  }

  /**
   * What it is as a thin plate along the beam, in its plane.
   *
   * @param across Young's modulus across the beam, Pa
   * @param poisson strain across over strain along for a pull along the beam
   * @param shear shear modulus in its plane, Pa
   */
  public record Flat(double across, double poisson, double shear) {
    public Flat {
      Refuse.unlessPositive("modulus across", across);
      Refuse.unlessFinite("Poisson’s ratio", poisson);
      Refuse.unlessPositive("shear modulus", shear);
    }
  }

  /**
   * Moduli in Pa.
   *
   * @param axial Young's modulus along the beam
   * @param shear shear modulus in the plane of the load
   * @param through Young's modulus across the layer (for a core: normal to the faces)
   * @param flat as a plate in its plane, where known
   */
  public record Elastic(double axial, double shear, OptionalDouble through, Optional<Flat> flat) {
    /** Of something of which nothing is known in its plane. */
    public Elastic(double axial, double shear, OptionalDouble through) {
      this(axial, shear, through, Optional.empty());
    }

    public Elastic {
      Refuse.unlessPositive("Young’s modulus", axial);
      Refuse.unlessPositive("shear modulus", shear);
      through.ifPresent(e -> Refuse.unlessPositive("through-thickness modulus", e));
    }
  }

  /**
   * Strengths in Pa, each a positive number or unknown.
   *
   * @param tension along the beam
   * @param compression along the beam
   * @param bending modulus of rupture, of solid timber only
   * @param shear in the plane of the load
   */
  public record Strength(
      OptionalDouble tension,
      OptionalDouble compression,
      OptionalDouble bending,
      OptionalDouble shear) {
    public Strength {
      tension.ifPresent(s -> Refuse.unlessPositive("tensile strength", s));
      compression.ifPresent(s -> Refuse.unlessPositive("compressive strength", s));
      bending.ifPresent(s -> Refuse.unlessPositive("bending strength", s));
      shear.ifPresent(s -> Refuse.unlessPositive("shear strength", s));
    }

    /** Nothing known. */
    public static Strength unknown() {
      var none = OptionalDouble.empty();
      return new Strength(none, none, none, none);
    }
  }

  public BeamMaterial {
    Refuse.unless(!name.isBlank(), "a material has a name");
    Refuse.unlessPositive("density", density);
  }

  /** Along the beam. */
  public BeamMaterial(String name, Kind kind, double density, Elastic elastic, Strength strength) {
    this(name, kind, Lay.ALONG, density, elastic, strength);
  }

  /** A material whose stiffness across the layer is not needed. */
  public static BeamMaterial of(
      String name, Kind kind, double density, double axial, double shear, Strength strength) {
    var elastic = new Elastic(axial, shear, OptionalDouble.empty());
    return new BeamMaterial(name, kind, density, elastic, strength);
  }

  /** Young's modulus along the beam, Pa. */
  public double axial() {
    return elastic.axial();
  }

  /** Shear modulus in the plane of the load, Pa. */
  public double shearModulus() {
    return elastic.shear();
  }

  /**
   * The tensile limit in Pa. Where timber's is unknown its bending strength stands in, which the
   * Wood Handbook calls a low or conservative estimate of tensile strength for clear, straight
   * wood.
   *
   * @see "USDA Forest Products Laboratory, Wood Handbook FPL-GTR-190, 2010, chapter 5"
   */
  public OptionalDouble tensionLimit() {
    return strength.tension().isEmpty() && kind == Kind.TIMBER && lay == Lay.ALONG
        ? strength.bending()
        : strength.tension();
  }
}

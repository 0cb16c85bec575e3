package kitwright.assessment.sheet;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitwright.ledger.Material.Sort;
import kitwright.ledger.MaterialProperty;

/**
 * What is compared between the part as designed and as built. Several measures may share one key: a
 * requirement on {@code moment} is a requirement on both ways of bending.
 */
public enum Measure {
  STIFFNESS("stiffness", "bending stiffness EI", "N·m²", Lean.STIFF),
  STIFFNESS_ACROSS("stiffness-across", "bending stiffness EI, across", "N·m²", Lean.STIFF),
  SHEAR_STIFFNESS("shear-stiffness", "shear stiffness GA", "N", Lean.SHEAR_STIFF),
  TORSION("torsion", "torsional stiffness GJ", "N·m²", Lean.SHEAR_STIFF),
  MOMENT_SAGGING("moment", "moment at first failure, tension below", "N·m", Lean.BENT),
  MOMENT_HOGGING("moment", "moment at first failure, tension above", "N·m", Lean.BENT),
  MOMENT_ACROSS("moment-across", "moment at first failure, across", "N·m", Lean.BENT),
  SHEAR("shear", "shear force at first failure", "N", Lean.SHEARED),
  SHEAR_ACROSS("shear-across", "shear force at first failure, across", "N", Lean.SHEARED),
  THRUST("thrust", "push along it at which it fails", "N", Lean.ALL),
  TORQUE("torsion-strength", "torque at first failure", "N·m", Lean.SHEARED),
  PLATE_STIFFNESS("stiffness", "pressure for 1 mm at the middle", "Pa/mm", Lean.SHEAR_STIFF),
  PLATE_MOMENT("moment", "moment per width at first failure, along", "N", Lean.BENT),
  PLATE_MOMENT_ACROSS("moment", "moment per width at first failure, across", "N", Lean.BENT),
  PLATE_SHEAR("shear", "shear per width at first failure, along", "N/m", Lean.SHEARED),
  PLATE_SHEAR_ACROSS("shear", "shear per width at first failure, across", "N/m", Lean.SHEARED),
  PLATE_STRENGTH("strength", "pressure at first failure", "kPa", Lean.ALL),
  STRETCH("stiffness", "stiffness in its plane A11, along", "MN/m", Lean.STIFF),
  STRETCH_FREE("stiffness", "stiffness in its plane, pulled freely", "MN/m", Lean.STIFF),
  STRETCH_ACROSS("stiffness-across", "stiffness in its plane A22, across", "MN/m", Lean.STIFF),
  SHEAR_IN_PLANE("shear-stiffness", "shear stiffness in its plane A66", "MN/m", Lean.SHEAR_STIFF),
  BENDING("bending", "bending stiffness D11", "N·m", Lean.STIFF),
  TENSION("strength", "pull at first ply failure", "kN/m", Lean.ALL),
  COMPRESSION("strength", "push at first ply failure", "kN/m", Lean.ALL),
  TENSION_ACROSS("strength-across", "pull at first ply failure, across", "kN/m", Lean.ALL),
  COMPRESSION_ACROSS("strength-across", "push at first ply failure, across", "kN/m", Lean.ALL),
  SHEAR_STRENGTH("shear", "shear in its plane at first ply failure", "kN/m", Lean.ALL),
  BOLT_TENSION("strength", "breaking load in tension", "kN", Lean.ALL),
  BOLT_PROOF("proof", "proof load", "kN", Lean.ALL),
  BOLT_SHEAR("shear", "breaking load in shear through the thread", "kN", Lean.ALL),
  BOLT_BEARING("bearing", "load at which wood or bolt yields, in shear", "kN", Lean.ALL),
  BOLT_WASHER("washer", "pull at which the washer sinks into the wood", "kN", Lean.ALL),
  CRUSHING("crushing", "pull at which the core is crushed under the washer", "kN", Lean.ALL),
  WITHDRAWAL("strength", "pull at which it comes out of the wood", "kN", Lean.DRIVEN),
  HEAD("strength", "pull at which the head sinks into the wood", "kN", Lean.ALL),
  FIRST_FAILURE("strength", "load at first failure over the design load", "", Lean.ALL),
  RESERVE("reserve", "reserve factor against the load", "", Lean.ALL),
  LINK(
      "weak-link",
      "strength of protected part ÷ part meant to break, by their means",
      "",
      Lean.ALL),
  LINK_CHANCE("weak-link-chance", "chance that the protected part breaks first", "%", Lean.ALL),
  DEFLECTION("deflection", "deflection under the load, no safety factor", "mm", Lean.SHEAR_STIFF),
  MASS("mass", "mass", "kg/m", Lean.HEAVY),
  PLATE_MASS("mass", "mass", "kg/m²", Lean.HEAVY),
  THICKNESS("thickness", "thickness", "mm", Lean.THICK);

  /** Which properties a measure leans on. */
  private enum Lean {
    HEAVY,
    THICK,
    STIFF,
    SHEAR_STIFF,
    BENT,
    SHEARED,
    DRIVEN,
    ALL
  }

  private static final Set<MaterialProperty> CURED =
      EnumSet.of(
          MaterialProperty.AREAL_WEIGHT, MaterialProperty.FIBRE_FRACTION, MaterialProperty.CRIMP);
  private static final Set<MaterialProperty> MODULI =
      EnumSet.of(MaterialProperty.E, MaterialProperty.E_ACROSS, MaterialProperty.POISSON);
  private static final Set<MaterialProperty> IN_SHEAR =
      EnumSet.of(
          MaterialProperty.SHEAR_STRENGTH,
          MaterialProperty.SHEAR_STRENGTH_ACROSS,
          MaterialProperty.BOND_STRENGTH);

  private final String key;
  private final String words;
  private final String unit;
  private final Lean lean;

  Measure(String key, String words, String unit, Lean lean) {
    this.key = key;
    this.words = words;
    this.unit = unit;
    this.lean = lean;
  }

  /** As {@code require} and {@code allow} name it. */
  public String key() {
    return key;
  }

  /** As a sheet names it. */
  public String words() {
    return words;
  }

  /** The unit in which it is told; empty for a ratio. */
  public String unit() {
    return unit;
  }

  /** Whether the number itself is held against the limit, not built over designed. */
  public boolean absolute() {
    return this == RESERVE || this == LINK || this == LINK_CHANCE;
  }

  /** Whether it is one of strength, not of stiffness, mass or size. */
  public boolean isStrength() {
    return lean == Lean.BENT || lean == Lean.SHEARED || lean == Lean.DRIVEN || lean == Lean.ALL;
  }

  /** Whether it hangs on the load. */
  public boolean loaded() {
    return absolute()
        || this == DEFLECTION
        || this == FIRST_FAILURE
        || this == PLATE_STRENGTH
        || this == PLATE_STIFFNESS;
  }

  /** Whether a wrong value of the property makes this measure wrong. */
  boolean leansOn(MaterialProperty property, Sort sort) {
    if (property == MaterialProperty.SCATTER) {
      return isStrength();
    }
    boolean constituent = sort == Sort.FIBRE || sort == Sort.RESIN;
    if (property == MaterialProperty.DENSITY) {
      return lean == Lean.HEAVY || lean == Lean.DRIVEN || this == BOLT_BEARING || constituent;
    }
    if (lean == Lean.DRIVEN) {
      return false;
    }
    if (CURED.contains(property)) {
      return true;
    }
    if (MODULI.contains(property)) {
      return lean != Lean.HEAVY && lean != Lean.THICK;
    }
    return switch (lean) {
      case HEAVY, THICK, STIFF, DRIVEN -> false;
      case SHEAR_STIFF -> property == MaterialProperty.G || property == MaterialProperty.G_ACROSS;
      case BENT -> !IN_SHEAR.contains(property);
      case SHEARED -> IN_SHEAR.contains(property);
      case ALL -> true;
    };
  }

  /** The measures of a key that a method knows. */
  public static List<Measure> of(String key, Set<Measure> known) {
    return known.stream().filter(measure -> measure.key.equals(key)).toList();
  }

  /** Any measure with that key. */
  static Optional<Measure> anyOf(String key) {
    return Arrays.stream(values()).filter(measure -> measure.key.equals(key)).findFirst();
  }
}

package kitwright.assessment.material;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import kitwright.assessment.sheet.Inputs;
import kitwright.assessment.sheet.Trust;
import kitwright.ledger.Material;
import kitwright.ledger.Material.Sort;
import kitwright.ledger.MaterialProperty;
import kitwright.value.Ref;

/**
 * A material that is no cloth: what it states, and what follows from that by a published rule. What
 * it does not state and no rule gives is lacking; only metals and resins are the same every way
 * without saying so.
 */
public final class Solid {
  private static final String PRACTICE = "EN 338:2016, table 1";

  /** EN 338:2016, table 1: mean shear modulus of every softwood class, E₀/16. */
  private static final double SHEAR = 16;

  /** EN 338:2016, table 1: mean modulus across of every softwood class, E₀/30. */
  private static final double ACROSS = 30;

  /** EN 14080:2013: rolling shear modulus of glued laminated timber, G/10. */
  private static final double ROLLING = 10;

  /** ν_LR of Douglas-fir, white oak and northern white-cedar: 0.292, 0.369, 0.337; their mean. */
  private static final double POISSON_WOOD = 0.333;

  /** Steel and aluminium. */
  private static final double POISSON_METAL = 0.3;

  private final Function<Ref, Optional<Material>> table;
  private final Inputs along;
  private final Inputs plate;
  private final Inputs flat;
  private final Material material;
  private final boolean isotropic;

  /**
   * @param along where it is noted what was leaned on along the grain
   * @param plate where what it is as a thin plate: its modulus across and Poisson's ratio
   * @param flat where what else it is across
   */
  Solid(
      Function<Ref, Optional<Material>> table,
      Inputs along,
      Inputs plate,
      Inputs flat,
      Material material) {
    this.table = table;
    this.along = along;
    this.plate = plate;
    this.flat = flat;
    this.material = material;
    this.isotropic =
        (material.isotropic() && !isWood())
            || material.sort() == Sort.METAL
            || material.sort() == Sort.RESIN;
  }

  public Optional<Stuff> stuff() {
    if (material.isotropic() && isWood()) {
      along.lacks(
          "material "
              + material.id()
              + " says “isotropic: yes”, and no wood is the same every way");
    }
    if (material.sort() == Sort.PLYWOOD && material.wood().isPresent()) {
      return ofWood(material.wood().get());
    }
    if (isHalfTold()) {
      along.lacks(
          "plywood "
              + material.id()
              + " states strengths across and no E-across: add it if the values are the board’s, or"
              + " name the wood of its veneers (wood) if they are the wood’s");
    }
    OptionalDouble density = along.needed(material, MaterialProperty.DENSITY);
    OptionalDouble e = along.needed(material, MaterialProperty.E);
    if (density.isEmpty() || e.isEmpty()) {
      return Optional.empty();
    }
    return shear(e.getAsDouble())
        .map(
            g ->
                stuff(
                    density.getAsDouble(),
                    e.getAsDouble(),
                    g,
                    veneered() ? along.value(material, MaterialProperty.VENEER) : empty()));
  }

  private Stuff stuff(double density, double e, double g, OptionalDouble veneer) {
    return new Stuff(
        material.id(),
        material.sort(),
        density,
        new Stuff.Elastic(e, g, through(e)),
        limits(),
        flat(e, g),
        rolling(e, g),
        Materials.scatter(material),
        OptionalDouble.empty(),
        veneer,
        0);
  }

  /** Plywood of which a veneer is stated and no value of the board: its values are the wood's. */
  private boolean veneered() {
    return material.sort() == Sort.PLYWOOD
        && material.properties().containsKey(MaterialProperty.VENEER)
        && !material.properties().containsKey(MaterialProperty.E_ACROSS);
  }

  /** Values across are of a board, and one whose E-across is not among them is half told. */
  private boolean isHalfTold() {
    return veneered()
        && Stream.of(
                MaterialProperty.TENSILE_STRENGTH_ACROSS,
                MaterialProperty.COMPRESSIVE_STRENGTH_ACROSS)
            .anyMatch(material.properties()::containsKey);
  }

  private Optional<Stuff> ofWood(Ref wood) {
    Optional<Material> found = table.apply(wood);
    OptionalDouble veneer = along.needed(material, MaterialProperty.VENEER);
    if (found.isEmpty() || found.get().sort() != Sort.TIMBER) {
      along.lacks("the wood “" + wood + "” of plywood " + material.id() + " is no timber there is");
      return Optional.empty();
    }
    if (veneer.isEmpty()) {
      return Optional.empty();
    }
    material.properties().keySet().stream()
        .filter(one -> one.dimension() == kitwright.value.Dimension.STRESS)
        .forEach(
            one ->
                along.lacks(
                    "plywood "
                        + material.id()
                        + " states its "
                        + one.key()
                        + " and the wood of its veneers: keep the one that is meant"));
    return new Solid(table, along, plate, flat, found.get())
        .stuff()
        .map(
            one ->
                new Stuff(
                    one.id(),
                    Sort.PLYWOOD,
                    along.value(material, MaterialProperty.DENSITY).orElse(one.density()),
                    one.elastic(),
                    one.limits(),
                    one.flat(),
                    one.rolling(),
                    one.scatter(),
                    OptionalDouble.empty(),
                    veneer,
                    0));
  }

  private Optional<Double> shear(double e) {
    OptionalDouble stated = along.value(material, MaterialProperty.G);
    if (stated.isPresent()) {
      return Optional.of(stated.getAsDouble());
    }
    if (isWood()) {
      return Optional.of(
          along.derived(
              material,
              MaterialProperty.G,
              e / SHEAR,
              ofWood(),
              "E/16: " + PRACTICE + "; Wood Handbook, eq. 9-9"));
    }
    if (isotropic) {
      double nu = poisson(along);
      return Optional.of(
          along.derived(
              material,
              MaterialProperty.G,
              e / 2 / (1 + nu),
              Trust.DERIVED,
              "G = E/(2(1 + ν)), the same every way"));
    }
    OptionalDouble needed = along.needed(material, MaterialProperty.G);
    return needed.isPresent() ? Optional.of(needed.getAsDouble()) : Optional.empty();
  }

  private boolean isWood() {
    return material.sort() == Sort.TIMBER || material.sort() == Sort.PLYWOOD;
  }

  /** The rules are of wood: a board whose own values are stated is taken so, and not leaned on. */
  private Trust ofWood() {
    return material.sort() == Sort.TIMBER || veneered() ? Trust.DERIVED : Trust.ASSUMED;
  }

  /** Of what is the same every way; a rule there is for metals alone. */
  private double poisson(Inputs noting) {
    boolean metal = material.sort() == Sort.METAL;
    return noting
        .value(material, MaterialProperty.POISSON)
        .orElseGet(
            () ->
                noting.derived(
                    material,
                    MaterialProperty.POISSON,
                    POISSON_METAL,
                    metal ? Trust.DERIVED : Trust.ASSUMED,
                    metal
                        ? "0.3: EN 1993-1-1, 3.2.6 (steel), EN 1999-1-1, 3.2.5 (aluminium)"
                        : "no rule gives it: state it"));
  }

  private OptionalDouble through(double e) {
    OptionalDouble stated = along.value(material, MaterialProperty.E_THROUGH);
    if (stated.isPresent() || material.sort() != Sort.CORE || !isotropic) {
      return stated;
    }
    return OptionalDouble.of(
        along.derived(
            material, MaterialProperty.E_THROUGH, e, Trust.DERIVED, "E, the same every way"));
  }

  private Stuff.Limits limits() {
    OptionalDouble yield = along.value(material, MaterialProperty.YIELD_STRENGTH);
    OptionalDouble pull = along.value(material, MaterialProperty.TENSILE_STRENGTH);
    OptionalDouble push = along.value(material, MaterialProperty.COMPRESSIVE_STRENGTH);
    OptionalDouble shear = along.value(material, MaterialProperty.SHEAR_STRENGTH);
    if (material.sort() == Sort.METAL && yield.isPresent()) {
      pull = yield;
      push = yield;
      if (shear.isEmpty()) {
        shear =
            OptionalDouble.of(
                along.derived(
                    material,
                    MaterialProperty.SHEAR_STRENGTH,
                    yield.getAsDouble() / Math.sqrt(3),
                    Trust.DERIVED,
                    "yield/√3, von Mises; EN 1993-1-1, 6.2.6"));
      }
    }
    return new Stuff.Limits(
        pull, push, along.value(material, MaterialProperty.BENDING_STRENGTH), shear);
  }

  private Optional<Stuff.Flat> flat(double e, double g) {
    OptionalDouble across = plate.value(material, MaterialProperty.E_ACROSS);
    if (across.isEmpty() && isWood()) {
      across =
          OptionalDouble.of(
              plate.derived(
                  material,
                  MaterialProperty.E_ACROSS,
                  e / ACROSS,
                  ofWood(),
                  "E/30: " + PRACTICE + ", softwood"));
    } else if (across.isEmpty() && isotropic) {
      across = OptionalDouble.of(e);
    } else if (across.isEmpty() && material.sort() == Sort.CORE) {
      across = OptionalDouble.of(asAlong(plate, MaterialProperty.E_ACROSS, e));
    } else if (across.isEmpty()) {
      notSaid(plate, MaterialProperty.E_ACROSS);
      return Optional.empty();
    }
    Stuff.Limits at = limits();
    return Optional.of(
        new Stuff.Flat(
            across.getAsDouble(),
            poissonAcross(e, g),
            flat(MaterialProperty.TENSILE_STRENGTH_ACROSS, at.tension()),
            flat(MaterialProperty.COMPRESSIVE_STRENGTH_ACROSS, at.compression())));
  }

  private OptionalDouble flat(MaterialProperty property, OptionalDouble along) {
    OptionalDouble stated = flat.value(material, property);
    return stated.isEmpty() && isotropic ? along : stated;
  }

  private double poissonAcross(double e, double g) {
    if (isWood()) {
      return plate
          .value(material, MaterialProperty.POISSON)
          .orElseGet(
              () ->
                  plate.derived(
                      material,
                      MaterialProperty.POISSON,
                      POISSON_WOOD,
                      ofWood(),
                      "mean ν_LR of three species, Wood Handbook, table 5-2"));
    }
    if (material.sort() == Sort.CORE) {
      double nu = isotropic ? Math.max(0, Math.min(0.49, e / 2 / g - 1)) : 0;
      String rule = isotropic ? "E/(2G) − 1, held to 0 to 0.49" : "0: walls of cells do not narrow";
      return plate.stated(material, MaterialProperty.POISSON, nu, rule);
    }
    return poisson(plate);
  }

  private Stuff.Rolling rolling(double e, double g) {
    OptionalDouble modulus = flat.value(material, MaterialProperty.G_ACROSS);
    OptionalDouble strength = flat.value(material, MaterialProperty.SHEAR_STRENGTH_ACROSS);
    if (isotropic || isBalanced(e)) {
      return new Stuff.Rolling(
          modulus.isPresent() ? modulus : OptionalDouble.of(g),
          strength.isPresent() ? strength : limits().shear());
    }
    if (modulus.isEmpty() && isWood()) {
      modulus =
          OptionalDouble.of(
              flat.derived(
                  material,
                  MaterialProperty.G_ACROSS,
                  g / ROLLING,
                  ofWood(),
                  "G/10: EN 14080:2013, rolling shear"));
    } else if (modulus.isEmpty() && material.sort() == Sort.CORE) {
      modulus = OptionalDouble.of(asAlong(flat, MaterialProperty.G_ACROSS, g));
    } else if (modulus.isEmpty()) {
      notSaid(flat, MaterialProperty.G_ACROSS);
    }
    return new Stuff.Rolling(modulus, strength);
  }

  /** A core is shown as if it were the same every way, and nothing leans on that. */
  private double asAlong(Inputs noting, MaterialProperty property, double along) {
    return noting.derived(
        material,
        property,
        along,
        Trust.ASSUMED,
        "taken as along: state it, or “isotropic: yes” if the core is the same every way");
  }

  /** As stiff across as along, such as a woven laminate: both planes through it are alike. */
  private boolean isBalanced(double e) {
    var across = material.properties().get(MaterialProperty.E_ACROSS);
    return !isWood()
        && material.sort() != Sort.CORE
        && across != null
        && Math.abs(across.base() - e) < 1e-9 * e;
  }

  private void notSaid(Inputs noting, MaterialProperty property) {
    noting.lacks(
        "material "
            + material.id()
            + " does not state its "
            + property.key()
            + ": write it there with its source, or “isotropic: yes” if it is the same every way");
  }

  private static OptionalDouble empty() {
    return OptionalDouble.empty();
  }
}

package kitwright.assessment.material;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import kitwright.assessment.sheet.Inputs;
import kitwright.assessment.sheet.Trust;
import kitwright.ledger.Kind;
import kitwright.ledger.Material;
import kitwright.ledger.Material.Weave;
import kitwright.ledger.MaterialProperty;
import kitwright.mechanics.laminate.Cloth;
import kitwright.mechanics.laminate.Fibre;
import kitwright.mechanics.laminate.FibreContent;
import kitwright.mechanics.laminate.GlassByFormula;
import kitwright.mechanics.laminate.Lamina;
import kitwright.mechanics.laminate.Laminate;
import kitwright.mechanics.laminate.Matrix;
import kitwright.mechanics.laminate.Moduli;
import kitwright.value.Ref;

/**
 * A cloth cured in its resin: thickness and mass from areal weight and fibre content, moduli by
 * micromechanics and laminate theory unless the material states its own, strengths as stated along
 * its fibres.
 */
public final class Curing {
  /** Crimp takes from the modulus of a woven cloth that does not state its own. */
  private static final double CRIMP = 0.93;

  private static final String PRACTICE = "common practice for a woven cloth, no source";

  private final Function<Ref, Optional<Material>> table;
  private final Inputs inputs;
  private final Inputs plate;
  private final Inputs flat;
  private final Material cloth;

  /**
   * @param inputs where it is noted what was leaned on along the roll
   * @param plate where what it is as a thin plate
   * @param flat where what else it is across
   */
  Curing(
      Function<Ref, Optional<Material>> table,
      Inputs inputs,
      Inputs plate,
      Inputs flat,
      Material cloth) {
    this.table = table;
    this.inputs = inputs;
    this.plate = plate;
    this.flat = flat;
    this.cloth = cloth;
  }

  public Optional<Stuff> stuff() {
    OptionalDouble weight = inputs.needed(cloth, MaterialProperty.AREAL_WEIGHT);
    OptionalDouble share = inputs.needed(cloth, MaterialProperty.FIBRE_FRACTION);
    Optional<Fibre> fibre = part(cloth.fibre(), "fibre").flatMap(this::fibre);
    Optional<Matrix> resin = part(cloth.resin(), "resin").flatMap(this::resin);
    if (cloth.weave().isEmpty()) {
      inputs.lacks("cloth " + cloth.id() + " does not state its weave");
    }
    if (weight.isEmpty()
        || share.isEmpty()
        || fibre.isEmpty()
        || resin.isEmpty()
        || cloth.weave().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(cured(weight.getAsDouble(), share.getAsDouble(), fibre.get(), resin.get()));
  }

  private Stuff cured(double weight, double byMass, Fibre fibre, Matrix resin) {
    FibreContent content = new FibreContent(byMass, fibre.density(), resin.density());
    double crimp = crimp();
    Moduli moduli = moduli(fibre, resin, byMass, weight, crimp);
    OptionalDouble stated = inputs.value(cloth, MaterialProperty.E);
    double along = stated.orElse(moduli.ex());
    double across = plate.value(cloth, MaterialProperty.E_ACROSS).orElse(moduli.ey());
    double shear = inputs.value(cloth, MaterialProperty.G).orElse(moduli.gxy());
    Both limits = limits(byMass, fibre);
    inputs.cured(
        () ->
            CuredSteps.of(
                cloth.id(),
                words(cloth.weave().orElseThrow()),
                weight,
                content,
                fibre,
                resin,
                new Cloth(Cloth.Weave.UNIDIRECTIONAL, weight, fibre, crimp).stuff(resin, byMass),
                crimp,
                new double[] {along, across, shear},
                stated));
    return new Stuff(
        cloth.id(),
        cloth.sort(),
        content.density(),
        new Stuff.Elastic(along, shear, OptionalDouble.empty()),
        limits.along(),
        Optional.of(new Stuff.Flat(across, moduli.nuxy(), limits.tension(), limits.compression())),
        rolling(shear, limits.along().shear()),
        Materials.scatter(cloth),
        OptionalDouble.of(content.thickness(weight)),
        OptionalDouble.empty(),
        cloth.weave().orElseThrow() == Weave.DOUBLE_BIAS ? 45 : 0);
  }

  /** Strengths along and across. */
  private record Both(Stuff.Limits along, OptionalDouble tension, OptionalDouble compression) {}

  /** A cloth with as much fibre both ways shears through its thickness alike in both planes. */
  private Stuff.Rolling rolling(double shear, OptionalDouble strength) {
    OptionalDouble modulus = flat.value(cloth, MaterialProperty.G_ACROSS);
    OptionalDouble limit = flat.value(cloth, MaterialProperty.SHEAR_STRENGTH_ACROSS);
    if (isBalanced()) {
      return new Stuff.Rolling(
          modulus.isPresent() ? modulus : OptionalDouble.of(shear),
          limit.isPresent() ? limit : strength);
    }
    if (modulus.isEmpty()) {
      modulus =
          OptionalDouble.of(
              flat.derived(
                  cloth,
                  MaterialProperty.G_ACROSS,
                  shear,
                  Trust.ASSUMED,
                  "taken as the shear modulus along the fibre"));
    }
    return new Stuff.Rolling(modulus, limit);
  }

  private boolean isBalanced() {
    Weave weave = cloth.weave().orElseThrow();
    return weave != Weave.UNIDIRECTIONAL && weave != Weave.TRIAXIAL;
  }

  private Optional<Material> part(Optional<Ref> ref, String what) {
    if (ref.isEmpty()) {
      inputs.lacks("cloth " + cloth.id() + " does not name its " + what);
      return Optional.empty();
    }
    Optional<Material> found = table.apply(ref.get());
    if (found.isEmpty()) {
      inputs.lacks(inputs.noSuch(Kind.MATERIALS, ref.get()));
    }
    return found;
  }

  private Optional<Fibre> fibre(Material material) {
    OptionalDouble density = inputs.needed(material, MaterialProperty.DENSITY);
    OptionalDouble e = inputs.needed(material, MaterialProperty.E);
    OptionalDouble nu = inputs.needed(material, MaterialProperty.POISSON);
    if (density.isEmpty() || e.isEmpty() || nu.isEmpty()) {
      return Optional.empty();
    }
    OptionalDouble across = inputs.value(material, MaterialProperty.E_ACROSS);
    OptionalDouble shear = inputs.value(material, MaterialProperty.G);
    if (!material.isotropic() && (across.isEmpty() || shear.isEmpty())) {
      inputs.lacks(
          "the fibre "
              + material.id()
              + " does not state its E-across and G: write them there with their source, or"
              + " “isotropic: yes” if it is as stiff across as along, as glass is");
      return Optional.empty();
    }
    return Optional.of(
        new Fibre(
            material.id(),
            density.getAsDouble(),
            e.getAsDouble(),
            across.orElse(e.getAsDouble()),
            shear.orElse(across.orElse(e.getAsDouble()) / 2 / (1 + nu.getAsDouble())),
            nu.getAsDouble()));
  }

  private Optional<Matrix> resin(Material material) {
    OptionalDouble density = inputs.needed(material, MaterialProperty.DENSITY);
    OptionalDouble e = inputs.needed(material, MaterialProperty.E);
    if (density.isEmpty() || e.isEmpty()) {
      return Optional.empty();
    }
    OptionalDouble nu = inputs.needed(material, MaterialProperty.POISSON);
    return nu.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Matrix.of(material.id(), density.getAsDouble(), e.getAsDouble(), nu.getAsDouble()));
  }

  /** In the cloth's own axes, the first along a fibre; those of a double bias lie at 45 degrees. */
  private Moduli moduli(Fibre fibre, Matrix resin, double byMass, double weight, double crimp) {
    Weave weave = cloth.weave().orElseThrow();
    if (weave == Weave.MAT) {
      Cloth mat = Cloth.straight(Cloth.Weave.UNIDIRECTIONAL, weight, fibre);
      Lamina random = mat.stuff(resin, byMass).random();
      return new Moduli(random.e1(), random.e2(), random.g12(), random.nu12());
    }
    Cloth.Weave as =
        switch (weave) {
          case UNIDIRECTIONAL, MAT -> Cloth.Weave.UNIDIRECTIONAL;
          case WOVEN -> Cloth.Weave.WOVEN;
          case BIAXIAL, DOUBLE_BIAS -> Cloth.Weave.BIAXIAL;
          case TRIAXIAL -> Cloth.Weave.TRIAXIAL;
          case QUADRIAXIAL -> Cloth.Weave.QUADRIAXIAL;
        };
    Cloth dry = new Cloth(as, weight, fibre, crimp);
    Lamina stuff = dry.stuff(resin, byMass);
    Laminate cured = dry.cured(stuff, resin, byMass, 0);
    return cured.inPlane();
  }

  private static String words(Weave weave) {
    return switch (weave) {
      case UNIDIRECTIONAL -> "all fibres along the roll";
      case WOVEN -> "woven, half the fibres each way";
      case BIAXIAL -> "stitched, half the fibres each way";
      case DOUBLE_BIAS -> "stitched, half the fibres each way, laid at 45° to the roll";
      case TRIAXIAL -> "stitched at 0°, 45° and −45°, a third each";
      case QUADRIAXIAL -> "stitched at 0°, 45°, 90° and −45°, a quarter each";
      case MAT -> "fibres every way";
    };
  }

  /** A cloth that states its own modulus has its waviness in that. */
  private double crimp() {
    boolean woven = cloth.weave().filter(Weave.WOVEN::equals).isPresent();
    if (!woven || cloth.properties().containsKey(MaterialProperty.E)) {
      return 1;
    }
    return inputs
        .value(cloth, MaterialProperty.CRIMP)
        .orElseGet(
            () -> inputs.derived(cloth, MaterialProperty.CRIMP, CRIMP, Trust.ASSUMED, PRACTICE));
  }

  private Both limits(double byMass, Fibre fibre) {
    OptionalDouble pull = inputs.value(cloth, MaterialProperty.TENSILE_STRENGTH);
    OptionalDouble push = inputs.value(cloth, MaterialProperty.COMPRESSIVE_STRENGTH);
    OptionalDouble shear = inputs.value(cloth, MaterialProperty.SHEAR_STRENGTH);
    Weave weave = cloth.weave().orElseThrow();
    boolean byFormula = weave == Weave.MAT || weave == Weave.WOVEN;
    boolean none = pull.isEmpty() && push.isEmpty() && shear.isEmpty();
    if (none && byFormula && isGlass(fibre, byMass)) {
      Stuff.Limits known = byFormula(byMass);
      return new Both(known, known.tension(), known.compression());
    }
    OptionalDouble pullAcross = flat.value(cloth, MaterialProperty.TENSILE_STRENGTH_ACROSS);
    OptionalDouble pushAcross = flat.value(cloth, MaterialProperty.COMPRESSIVE_STRENGTH_ACROSS);
    return new Both(
        new Stuff.Limits(pull, push, OptionalDouble.empty(), shear),
        pullAcross.isEmpty() && isBalanced() ? pull : pullAcross,
        pushAcross.isEmpty() && isBalanced() ? push : pushAcross);
  }

  /** As stiff and as heavy as E-glass: by its values, not by what it is called. */
  private static boolean isGlass(Fibre fibre, double byMass) {
    return byMass > 0.25
        && byMass < 0.6
        && fibre.axial() > 69e9
        && fibre.axial() < 77e9
        && fibre.density() > 2450
        && fibre.density() < 2650;
  }

  /** Formulas from memory: a check that leans on them stays open until values are stated. */
  private Stuff.Limits byFormula(double byMass) {
    GlassByFormula glass = new GlassByFormula(byMass);
    OptionalDouble pull = formula(MaterialProperty.TENSILE_STRENGTH, glass.tension());
    OptionalDouble push = formula(MaterialProperty.COMPRESSIVE_STRENGTH, glass.compression());
    OptionalDouble shear = formula(MaterialProperty.SHEAR_STRENGTH, glass.shear());
    return new Stuff.Limits(pull, push, OptionalDouble.empty(), shear);
  }

  private OptionalDouble formula(MaterialProperty property, double pascal) {
    return OptionalDouble.of(
        inputs.derived(
            cloth,
            property,
            pascal,
            Trust.UNCONFIRMED,
            "formula of ISO 12215-5:2008, Annex C, from memory"));
  }
}

package kitwright.assessment;

import java.util.Optional;
import java.util.OptionalDouble;
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
import kitwright.mechanics.laminate.Micromechanics;
import kitwright.mechanics.laminate.Moduli;
import kitwright.value.Ref;

/**
 * A cloth cured in its resin: thickness and mass from areal weight and fibre content, moduli by
 * micromechanics and laminate theory unless the material states its own, strengths as stated along
 * its fibres.
 */
final class Curing {
  /** Common practice, no source: crimp takes from the modulus of a woven cloth. */
  private static final double CRIMP = 0.93;

  private static final double POISSON_FIBRE = 0.22;
  private static final double POISSON_RESIN = 0.35;

  private final Stuffs stuffs;
  private final Material cloth;

  Curing(Stuffs stuffs, Material cloth) {
    this.stuffs = stuffs;
    this.cloth = cloth;
  }

  Optional<Stuff> stuff() {
    OptionalDouble weight = stuffs.needed(cloth, MaterialProperty.AREAL_WEIGHT);
    OptionalDouble share = stuffs.needed(cloth, MaterialProperty.FIBRE_FRACTION);
    Optional<Fibre> fibre = part(cloth.fibre(), "fibre").flatMap(this::fibre);
    Optional<Matrix> resin = part(cloth.resin(), "resin").flatMap(this::resin);
    if (cloth.weave().isEmpty()) {
      stuffs.lacks("cloth " + cloth.id() + " does not state its weave");
    }
    if (weight.isEmpty()
        || share.isEmpty()
        || fibre.isEmpty()
        || resin.isEmpty()
        || cloth.weave().isEmpty()) {
      return Optional.empty();
    }
    double byMass = share.getAsDouble();
    FibreContent content = new FibreContent(byMass, fibre.get().density(), resin.get().density());
    double thickness = content.thickness(weight.getAsDouble());
    Moduli moduli = moduli(fibre.get(), resin.get(), byMass, weight.getAsDouble());
    Stuff.Elastic elastic =
        new Stuff.Elastic(
            stuffs.value(cloth, MaterialProperty.E).orElse(moduli.ex()),
            stuffs.value(cloth, MaterialProperty.E_ACROSS).orElse(moduli.ey()),
            stuffs.value(cloth, MaterialProperty.G).orElse(moduli.gxy()),
            moduli.nuxy(),
            OptionalDouble.empty());
    double crimp = crimp();
    Fibre fibres = fibre.get();
    Matrix matrix = resin.get();
    OptionalDouble stated = stuffs.value(cloth, MaterialProperty.E);
    stuffs.cured(
        () ->
            CuredSteps.of(
                cloth.id(),
                words(cloth.weave().orElseThrow()),
                weight.getAsDouble(),
                content,
                fibres,
                matrix,
                new Cloth(Cloth.Weave.UNIDIRECTIONAL, weight.getAsDouble(), fibres, crimp)
                    .stuff(matrix, byMass, Micromechanics.HALPIN_TSAI),
                crimp,
                elastic,
                stated));
    return Optional.of(
        new Stuff(
            cloth.id(),
            cloth.sort(),
            content.density(),
            elastic,
            limits(byMass).times(stuffs.strengthFactor(cloth.sort())),
            stuffs.scatter(cloth),
            OptionalDouble.of(thickness),
            cloth.weave().get() == Weave.DOUBLE_BIAS ? 45 : 0));
  }

  private Optional<Material> part(Optional<Ref> ref, String what) {
    if (ref.isEmpty()) {
      stuffs.lacks("cloth " + cloth.id() + " does not name its " + what);
      return Optional.empty();
    }
    Optional<Material> found = stuffs.material(ref.get());
    if (found.isEmpty()) {
      stuffs.lacks("there is no material “" + ref.get() + "”");
    }
    return found;
  }

  private Optional<Fibre> fibre(Material material) {
    OptionalDouble density = stuffs.needed(material, MaterialProperty.DENSITY);
    OptionalDouble e = stuffs.needed(material, MaterialProperty.E);
    if (density.isEmpty() || e.isEmpty()) {
      return Optional.empty();
    }
    boolean even = isAsStiffAcross(material);
    OptionalDouble across = modulus(material, MaterialProperty.E_ACROSS, even);
    OptionalDouble shear = modulus(material, MaterialProperty.G, even);
    if (!even && (across.isEmpty() || shear.isEmpty())) {
      return Optional.empty();
    }
    double nu = stuffs.value(material, MaterialProperty.POISSON).orElse(POISSON_FIBRE);
    return Optional.of(
        new Fibre(
            material.id(),
            density.getAsDouble(),
            e.getAsDouble(),
            across.orElse(e.getAsDouble()),
            shear.orElse(across.orElse(e.getAsDouble()) / 2 / (1 + nu)),
            nu));
  }

  private OptionalDouble modulus(Material material, MaterialProperty property, boolean even) {
    return even ? stuffs.value(material, property) : stuffs.needed(material, property);
  }

  /** Glass and basalt are; carbon and aramid are far softer across, and must say how soft. */
  private static boolean isAsStiffAcross(Material fibre) {
    String named = (fibre.id() + ' ' + fibre.what().orElse("")).toLowerCase(java.util.Locale.ROOT);
    return named.contains("glass") || named.contains("basalt");
  }

  private Optional<Matrix> resin(Material material) {
    OptionalDouble density = stuffs.needed(material, MaterialProperty.DENSITY);
    OptionalDouble e = stuffs.needed(material, MaterialProperty.E);
    if (density.isEmpty() || e.isEmpty()) {
      return Optional.empty();
    }
    double nu = stuffs.value(material, MaterialProperty.POISSON).orElse(POISSON_RESIN);
    return Optional.of(Matrix.of(material.id(), density.getAsDouble(), e.getAsDouble(), nu));
  }

  /** In the cloth's own axes, the first along a fibre; those of a double bias lie at 45 degrees. */
  private Moduli moduli(Fibre fibre, Matrix resin, double byMass, double weight) {
    Weave weave = cloth.weave().orElseThrow();
    if (weave == Weave.MAT) {
      Cloth mat = Cloth.straight(Cloth.Weave.UNIDIRECTIONAL, weight, fibre);
      Lamina random = mat.stuff(resin, byMass, Micromechanics.HALPIN_TSAI).random();
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
    double crimp = crimp();
    if (weave == Weave.WOVEN) {
      stuffs.note(
          cloth.id() + ": crimp leaves 0.93 of the modulus along the fibre (common practice)");
    }
    Cloth dry = new Cloth(as, weight, fibre, crimp);
    Lamina stuff = dry.stuff(resin, byMass, Micromechanics.HALPIN_TSAI);
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

  private double crimp() {
    return cloth.weave().filter(Weave.WOVEN::equals).isPresent() ? CRIMP : 1;
  }

  private Stuff.Limits limits(double byMass) {
    OptionalDouble pull = stuffs.value(cloth, MaterialProperty.TENSILE_STRENGTH);
    OptionalDouble push = stuffs.value(cloth, MaterialProperty.COMPRESSIVE_STRENGTH);
    OptionalDouble shear = stuffs.value(cloth, MaterialProperty.SHEAR_STRENGTH);
    Weave weave = cloth.weave().orElseThrow();
    boolean byFormula = weave == Weave.MAT || weave == Weave.WOVEN;
    if (pull.isEmpty() && push.isEmpty() && shear.isEmpty() && byFormula && isGlass(byMass)) {
      return byFormula(byMass);
    }
    OptionalDouble pullAcross = stuffs.value(cloth, MaterialProperty.TENSILE_STRENGTH_ACROSS);
    OptionalDouble pushAcross = stuffs.value(cloth, MaterialProperty.COMPRESSIVE_STRENGTH_ACROSS);
    boolean balanced = weave != Weave.UNIDIRECTIONAL && weave != Weave.TRIAXIAL;
    return new Stuff.Limits(
        pull,
        push,
        OptionalDouble.empty(),
        shear,
        pullAcross.isEmpty() && balanced ? pull : pullAcross,
        pushAcross.isEmpty() && balanced ? push : pushAcross);
  }

  private boolean isGlass(double byMass) {
    return byMass > 0.25
        && byMass < 0.6
        && cloth.fibre().filter(ref -> ref.id().contains("glass")).isPresent();
  }

  /** Remembered formulas: a check that leans on them stays open until values are stated. */
  private Stuff.Limits byFormula(double byMass) {
    GlassByFormula glass = new GlassByFormula(byMass);
    OptionalDouble pull = formula(MaterialProperty.TENSILE_STRENGTH, glass.tension());
    OptionalDouble push = formula(MaterialProperty.COMPRESSIVE_STRENGTH, glass.compression());
    OptionalDouble shear = formula(MaterialProperty.SHEAR_STRENGTH, glass.shear());
    return new Stuff.Limits(pull, push, OptionalDouble.empty(), shear, pull, push);
  }

  private OptionalDouble formula(MaterialProperty property, double pascal) {
    stuffs.note(
        cloth,
        property,
        Print.number(pascal / 1e6) + " MPa",
        Trust.UNCONFIRMED,
        "formula of ISO 12215-5:2008, Annex C, from memory");
    return OptionalDouble.of(pascal);
  }
}

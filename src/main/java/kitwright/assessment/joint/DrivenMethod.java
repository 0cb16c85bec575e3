package kitwright.assessment.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import kitwright.assessment.material.Factors;
import kitwright.assessment.material.Materials;
import kitwright.assessment.part.Unheeded;
import kitwright.assessment.sheet.Faults;
import kitwright.assessment.sheet.Figure;
import kitwright.assessment.sheet.Figures;
import kitwright.assessment.sheet.Inputs;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Outcome;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Step;
import kitwright.assessment.sheet.Working;
import kitwright.finding.Findings;
import kitwright.ledger.Material;
import kitwright.ledger.MaterialProperty;
import kitwright.ledger.Section;
import kitwright.mechanics.fastener.BoltInWood;
import kitwright.mechanics.fastener.Driven;
import kitwright.value.Quantity;

/**
 * Nails and screws in wood: what pulls them out of the piece that holds the point, what breaks the
 * screw, at what pull the head sinks into the outer piece, and at what load wood and shank give
 * sideways. The layers are the outer piece and the one that holds the point, or the latter alone.
 *
 * @see "Wood Handbook FPL-GTR-282, chapter 8; NDS 12.3.1 for the sideways load, R_d = 1"
 */
public final class DrivenMethod {
  /** As {@link WoodUnderBolts} has it. */
  private static final double GRAVITY = 1120;

  /**
   * Wood Handbook, table 5-3: from the lightest to the heaviest that the formulas were made for.
   */
  private static final double LIGHTEST = 0.29;

  private static final double HEAVIEST = 0.76;

  /** m: thinner than number 4 or thicker than number 24 is no wood screw of table 8-9. */
  private static final double THINNEST = 2.5e-3;

  private static final double THICKEST = 9.6e-3;

  private final Section section;
  private final Driven.Kind kind;
  private final Measures measured;
  private final Materials materials;
  private final Factors.OnSide factors;
  private final Figures figures = new Figures();
  private final List<Step> steps = new ArrayList<>();

  private DrivenMethod(
      Section section,
      Driven.Kind kind,
      Measures measured,
      Materials materials,
      Factors.OnSide factors) {
    this.section = section;
    this.kind = kind;
    this.measured = measured;
    this.materials = materials;
    this.factors = factors;
  }

  /** Whether a section is of nails or screws. */
  public static boolean isDriven(Section section) {
    return kind(section).isPresent();
  }

  private static Optional<Driven.Kind> kind(Section section) {
    return section
        .shape()
        .filter(shape -> shape.isFastening() && shape != Section.Shape.BOLT)
        .map(shape -> Driven.Kind.valueOf(shape.name()));
  }

  /** What they bear. */
  public static Outcome of(
      Section section, Materials materials, Factors.OnSide factors, Findings out) {
    Faults faults = new Faults(section, out);
    Unheeded.tell(section, faults);
    Measures measured =
        Measures.of(
            section,
            List.of("diameter", "penetration"),
            List.of("count", "edge-distance", "end-distance", "head", "root", "spacing"),
            faults);
    between(section, measured, "root", 0.4, 0.9, faults);
    between(section, measured, "head", 1, 6, faults);
    Optional<Material> of = section.material().flatMap(materials::material);
    if (of.isEmpty()) {
      faults.add(
          "material", "The fastening has no material", "Name under “material” the metal it is of.");
    }
    if (section.layers().isEmpty() || section.layers().size() > 2) {
      faults.add(
          "layers",
          "The fastening goes through other than one or two pieces",
          "List the outer piece and the one that holds the point, or the latter alone.");
    }
    if (faults.any()) {
      materials
          .inputs()
          .lacks(section.named() + " cannot be as it is written; “kitwright check” says why");
      return Outcome.nothing();
    }
    return new DrivenMethod(section, kind(section).orElseThrow(), measured, materials, factors)
        .worked(of.orElseThrow());
  }

  /**
   * A measure in diameters: what lies outside is a slip of the pen or of the unit. The root of a
   * thread is 0.6 to 0.9 of it (EN 14592, from memory).
   */
  private static void between(
      Section section, Measures measured, String name, double low, double high, Faults faults) {
    double diameter = measured.at("diameter");
    measured
        .maybe(name)
        .filter(any -> diameter > 0)
        .filter(value -> value < low * diameter || value > high * diameter)
        .ifPresent(
            value ->
                faults.add(
                    section.at().of("dimensions"),
                    "The "
                        + name
                        + " is "
                        + Print.number(value / diameter)
                        + " times the diameter, and lies between "
                        + Print.number(low)
                        + " and "
                        + Print.number(high),
                    "Measure it again, and look at its unit."));
  }

  private Inputs inputs() {
    return materials.inputs();
  }

  private Outcome worked(Material metal) {
    inputs()
        .note(
            "nails and screws stand in the side grain of seasoned wood; screws in lead holes of"
                + " about 70 % of the root of the thread in softwood, 90 % in hardwood");
    Section.Layer holds = section.layers().get(section.layers().size() - 1);
    Optional<Double> gravity = gravity(holds);
    double diameter = measured.at("diameter");
    gravity.ifPresent(g -> withdrawal(new Driven(kind, diameter, measured.at("penetration"), g)));
    if (kind.isThreaded()) {
      screw(metal);
    }
    if (section.layers().size() == 2) {
      head(section.layers().get(0));
      gravity.ifPresent(g -> sideways(metal, g));
    } else {
      figures
          .lacks(
              Measure.HEAD, section.named() + " lists no outer piece, which the head may sink into")
          .lacks(Measure.BOLT_BEARING, section.named() + " lists no outer piece");
    }
    return new Outcome(
        figures,
        () ->
            List.of(new Working(section.what().orElse(section.id()), List.of(), List.of(), steps)));
  }

  private Optional<Double> gravity(Section.Layer layer) {
    Optional<Material> wood = layer.material().flatMap(materials::material);
    if (wood.isEmpty() || wood.get().sort() != Material.Sort.TIMBER) {
      inputs().lacks("a piece of " + section.named() + " is no timber, of which no rule is known");
      return Optional.empty();
    }
    OptionalDouble density = inputs().needed(wood.get(), MaterialProperty.DENSITY);
    if (density.isEmpty()) {
      return Optional.empty();
    }
    double gravity = density.getAsDouble() / GRAVITY;
    outside(wood.get(), gravity).ifPresent(inputs()::lacks);
    return Optional.of(gravity);
  }

  /** Why nothing is told of a wood lighter or heavier than those the formulas are from. */
  static Optional<String> outside(Material wood, double gravity) {
    return gravity >= LIGHTEST && gravity <= HEAVIEST
        ? Optional.empty()
        : Optional.of(
            wood.id()
                + " is outside the woods that the formulas of bolts, nails and screws are from"
                + " (specific gravity "
                + Print.number(LIGHTEST)
                + " to "
                + Print.number(HEAVIEST)
                + ")");
  }

  private void withdrawal(Driven one) {
    double knocked = factors.wood(section.layers().size());
    double pull = measured.count() * knocked * one.withdrawal();
    range(one);
    pulledDistances();
    figures.put(Measure.WITHDRAWAL, Figure.of(pull / 1000, "the wood lets go"));
    steps.add(
        new Step(
            "pull at which it comes out of the wood, a mean of tests",
            "n·" + kind.formula(),
            Print.number(measured.count())
                + ", G "
                + Print.number(one.gravity())
                + " (density/1120), D "
                + Print.mm(one.diameter())
                + ", L "
                + Print.mm(one.penetration())
                + (knocked == 1 ? "" : ", times " + Print.number(knocked)),
            Print.with(pull / 1000, "kN")));
  }

  /** Where the formulas hold. */
  private void range(Driven one) {
    boolean thick = one.diameter() > (kind == Driven.Kind.LAG_SCREW ? 0.026 : THICKEST);
    boolean thin = one.diameter() < (kind == Driven.Kind.LAG_SCREW ? 5e-3 : THINNEST);
    if (thick || thin) {
      figures.lacks(
          Measure.WITHDRAWAL,
          "a diameter of "
              + Print.mm(one.diameter())
              + " is outside what its formula was made for");
    }
    if (one.penetration() < 4 * one.diameter()) {
      figures.lacks(
          Measure.WITHDRAWAL,
          "it stands less than 4 diameters in the wood that holds it ("
              + Print.mm(one.penetration())
              + ")");
    }
    Optional<Double> thickness =
        section.layers().get(section.layers().size() - 1).thickness().map(t -> t.base());
    if (thickness.isEmpty() || thickness.get() < one.penetration()) {
      figures.lacks(
          Measure.WITHDRAWAL,
          "the piece that holds the point is not known to be as thick as the penetration");
    }
  }

  /** A screw may break before the wood lets go. */
  private void screw(Material metal) {
    Optional<Double> root = measured.maybe("root");
    OptionalDouble pull = inputs().needed(metal, MaterialProperty.TENSILE_STRENGTH);
    if (root.isEmpty()) {
      figures.lacks(
          Measure.BOLT_TENSION, section.named() + " does not state the root of its thread");
      return;
    }
    if (pull.isEmpty()) {
      return;
    }
    double strength = pull.getAsDouble() * factors.strength(metal.id(), metal.sort(), 1);
    double area = Math.PI / 4 * root.get() * root.get();
    figures.put(Measure.BOLT_TENSION, measured.count() * strength * area / 1000);
    steps.add(
        new Step(
            Measure.BOLT_TENSION.words(),
            "n·R_m·π/4·d_root²",
            Print.number(measured.count())
                + " · "
                + Print.with(strength / 1e6, "MPa")
                + " · "
                + Print.with(area * 1e6, "mm²"),
            Print.with(measured.count() * strength * area / 1000, "kN")));
  }

  private void head(Section.Layer outer) {
    Optional<Double> head = measured.maybe("head");
    Optional<Material> wood = outer.material().flatMap(materials::material);
    if (head.isEmpty() || wood.isEmpty()) {
      figures.lacks(
          Measure.HEAD, section.named() + " does not state the diameter of its head or washer");
      return;
    }
    OptionalDouble across =
        inputs().value(wood.get(), MaterialProperty.COMPRESSIVE_STRENGTH_ACROSS);
    if (across.isEmpty()) {
      figures.lacks(
          Measure.HEAD, wood.get().id() + " does not state its compressive-strength-across");
      return;
    }
    Washers.thin(section, 1, head.get()).ifPresent(what -> figures.lacks(Measure.HEAD, what));
    double strength =
        across.getAsDouble() * factors.strength(wood.get().id(), wood.get().sort(), 1);
    double pull =
        measured.count() * BoltInWood.washer(strength, head.get(), measured.at("diameter")) / 1000;
    figures.put(Measure.HEAD, pull);
    steps.add(
        new Step(
            Measure.HEAD.words(),
            "n·3·f_c90·π/4·(D² − d²), as of a washer: EN 1995-1-1, 8.5.2",
            Print.number(measured.count())
                + " · 3 · "
                + Print.with(strength / 1e6, "MPa")
                + ", D "
                + Print.mm(head.get())
                + ", d "
                + Print.mm(measured.at("diameter")),
            Print.with(pull, "kN")));
  }

  /**
   * Sideways: yield of wood or shank; 14 diameters of a nail and 7 of a thread in the wood (Wood
   * Handbook, chapter 8).
   */
  private void sideways(Material metal, double main) {
    double diameter =
        kind.isThreaded() ? measured.maybe("root").orElse(0.0) : measured.at("diameter");
    Optional<Double> side = gravity(section.layers().get(0));
    Optional<Double> thick = section.layers().get(0).thickness().map(t -> t.base());
    OptionalDouble pull = inputs().value(metal, MaterialProperty.TENSILE_STRENGTH);
    OptionalDouble proof = proof(metal);
    distances();
    double reach = measured.at("penetration") / measured.at("diameter");
    if (reach < (kind.isThreaded() ? 7 : 14)) {
      figures.lacks(
          Measure.BOLT_BEARING,
          "it stands " + Print.number(reach) + " diameters deep, too little for a load sideways");
    }
    if (side.isEmpty() || thick.isEmpty() || pull.isEmpty() || proof.isEmpty() || !(diameter > 0)) {
      figures.lacks(
          Measure.BOLT_BEARING,
          section.named()
              + " does not state all that a load sideways asks for: thickness of the outer piece,"
              + " root of a thread, tensile-strength and proof-stress of the metal");
      return;
    }
    double yield = (pull.getAsDouble() + proof.getAsDouble()) / 2;
    Map.Entry<String, Double> first =
        new BoltInWood(
                diameter,
                measured.at("penetration"),
                thick.get(),
                Driven.bearing(main) * factors.wood(2),
                Driven.bearing(side.get()) * factors.wood(1),
                yield)
            .first();
    double load = measured.count() * first.getValue() / 1000;
    figures.put(Measure.BOLT_BEARING, Figure.of(load, "yield mode " + first.getKey()));
    steps.add(
        new Step(
            "load at which wood or shank yields, single shear: mode " + first.getKey(),
            "least of six yield modes, NDS 12.3.1 with R_d = 1; F_e = 114.5·G^1.84, Wood Handbook"
                + " 8-3",
            "D "
                + Print.mm(diameter)
                + ", F_yb (R_m + R_p)/2 = "
                + Print.with(yield / 1e6, "MPa")
                + ", "
                + Print.number(measured.count())
                + " of them",
            Print.with(load, "kN")));
  }

  private OptionalDouble proof(Material metal) {
    OptionalDouble proof = inputs().value(metal, MaterialProperty.PROOF_STRESS);
    return proof.isPresent() ? proof : inputs().value(metal, MaterialProperty.YIELD_STRENGTH);
  }

  /**
   * So far from loaded ends and edges, and from one another, that the wood does not split, whatever
   * the angle to the grain. Screws stand in lead holes; nails do not, and the heavier wood of both
   * counts.
   *
   * @see "EN 1995-1-1:2004, table 8.2 and 8.3.1.1 (2), read in one public implementation"
   */
  private void distances() {
    double heaviest = heaviest();
    if (!kind.isThreaded() && heaviest > 500) {
      figures.lacks(
          Measure.BOLT_BEARING,
          "a nail in wood of "
              + Print.with(heaviest, "kg/m³")
              + " needs a lead hole (above 500 kg/m³), and is not worked out sideways: take a"
              + " screw in a lead hole");
    }
    boolean heavy = !kind.isThreaded() && heaviest > 420;
    least(Measure.BOLT_BEARING, heavy ? 20 : 15, edge(heavy), heavy ? 15 : 12);
  }

  /**
   * Pulled, nails stand as far from ends and edges as sideways, and screws so far that they do not
   * split the wood.
   *
   * @see "EN 1995-1-1:2004, 8.3.2 (9); table 8.6, from memory: 10, 4 and 7 diameters"
   */
  private void pulledDistances() {
    boolean heavy = heaviest() > 420;
    if (kind.isThreaded()) {
      least(Measure.WITHDRAWAL, 10, 4, 7);
    } else {
      least(Measure.WITHDRAWAL, heavy ? 20 : 15, edge(heavy), heavy ? 15 : 12);
    }
  }

  private double heaviest() {
    return section.layers().stream()
        .flatMap(layer -> layer.material().flatMap(materials::material).stream())
        .flatMap(wood -> Stream.ofNullable(wood.properties().get(MaterialProperty.DENSITY)))
        .mapToDouble(Quantity::base)
        .max()
        .orElse(0);
  }

  private int edge(boolean heavy) {
    boolean thick = measured.at("diameter") >= 5e-3;
    return heavy ? thick ? 12 : 9 : thick ? 10 : 7;
  }

  /** In diameters. */
  private void least(Measure measure, int end, int edge, int spacing) {
    distance(measure, "end-distance", end);
    distance(measure, "edge-distance", edge);
    if (measured.count() > 1) {
      distance(measure, "spacing", spacing);
    }
  }

  private void distance(Measure measure, String name, int diameters) {
    Distance.fault(section, name, measured.maybe(name), diameters * measured.at("diameter"))
        .ifPresent(what -> figures.lacks(measure, what));
  }
}

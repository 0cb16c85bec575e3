package kitwright.assessment.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import kitwright.assessment.material.Factors;
import kitwright.assessment.material.Materials;
import kitwright.assessment.part.LayeredPart;
import kitwright.assessment.sheet.Figure;
import kitwright.assessment.sheet.Figures;
import kitwright.assessment.sheet.Inputs;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Step;
import kitwright.ledger.Material;
import kitwright.ledger.MaterialProperty;
import kitwright.ledger.Section;
import kitwright.mechanics.fastener.BoltInWood;
import kitwright.value.Quantity;

/**
 * Bolts through two pieces of wood, the side member listed first: what wood and bolt bear in shear,
 * and what the washer does. The distances to ends and edges are held to those of the standard;
 * nearer the wood splits, which is not worked out.
 *
 * @see "NDS 12.3 (yield limits); EN 1995-1-1:2004, table 8.4 (distances), 8.34 (rows), 8.5.2
 *     (washers), read in public implementations"
 */
public final class WoodUnderBolts {
  /** Specific gravity on the volume at 12 % moisture: density over 1120 kg/m³. */
  private static final double GRAVITY = 1120;

  /** Degrees after which grain runs the same way again. */
  private static final double HALF_TURN = 180;

  private static final double END = 0.080;
  private static final double THINNEST = 0.0064;

  private final Section section;
  private final Inputs inputs;
  private final Factors.OnSide factors;
  private final double diameter;
  private final List<String> lacking = new ArrayList<>();

  private WoodUnderBolts(Section section, Inputs inputs, Factors.OnSide factors, double diameter) {
    this.section = section;
    this.inputs = inputs;
    this.factors = factors;
    this.diameter = diameter;
  }

  /** Puts what the wood bears beside what the bolts bear; nothing where no wood is named. */
  public static List<Step> put(
      Section section,
      Materials materials,
      Factors.OnSide factors,
      Material bolt,
      double diameter,
      double count,
      Figures figures) {
    if (section.layers().isEmpty()) {
      return List.of();
    }
    if (CoreUnderFittings.isSandwich(section, materials)) {
      return CoreUnderFittings.put(section, materials, factors, diameter, count, figures);
    }
    WoodUnderBolts wood = new WoodUnderBolts(section, materials.inputs(), factors, diameter);
    List<Step> steps = new ArrayList<>();
    wood.bearing(materials, bolt, count, figures, steps);
    wood.washer(materials, count, figures, steps);
    wood.lacking.forEach(what -> figures.lacks(Measure.BOLT_BEARING, what));
    return steps;
  }

  private Optional<Double> dimension(String name) {
    return section.dimension(name).map(Quantity::base);
  }

  private void bearing(
      Materials materials, Material bolt, double count, Figures figures, List<Step> steps) {
    if (section.layers().size() != 2) {
      lacking.add(
          section.named() + " lists other than two pieces of wood that its bolts go through");
      return;
    }
    OptionalDouble side = strength(1, materials);
    OptionalDouble main = strength(2, materials);
    OptionalDouble pull = inputs.needed(bolt, MaterialProperty.TENSILE_STRENGTH);
    OptionalDouble proof = inputs.needed(bolt, MaterialProperty.PROOF_STRESS);
    Optional<Double> thin = section.layers().get(0).thickness().map(Quantity::base);
    Optional<Double> thick = section.layers().get(1).thickness().map(Quantity::base);
    distances(count);
    if (diameter < THINNEST) {
      lacking.add("bolts thinner than 6.4 mm bear on wood by another rule");
    }
    if (side.isEmpty()
        || main.isEmpty()
        || pull.isEmpty()
        || proof.isEmpty()
        || thin.isEmpty()
        || thick.isEmpty()) {
      if (lacking.isEmpty()) {
        lacking.add(section.named() + " does not state what its bolts go through");
      }
      return;
    }
    double yield = (pull.getAsDouble() + proof.getAsDouble()) / 2;
    BoltInWood one =
        new BoltInWood(
            diameter, thick.get(), thin.get(), main.getAsDouble(), side.getAsDouble(), yield);
    Map.Entry<String, Double> first = one.first();
    double counting = count > 1 ? inARow(count) : count;
    figures.put(
        Measure.BOLT_BEARING,
        Figure.of(counting * first.getValue() / 1000, "yield mode " + first.getKey()));
    steps.add(
        new Step(
            "load at which wood or bolt yields, single shear: mode " + first.getKey(),
            "least of six yield modes, NDS 12.3.1 with R_d = 1",
            "F_e side "
                + Print.with(side.getAsDouble() / 1e6, "MPa")
                + ", main "
                + Print.with(main.getAsDouble() / 1e6, "MPa")
                + ", F_yb (R_m + R_p)/2 = "
                + Print.with(yield / 1e6, "MPa")
                + ", "
                + Print.number(counting)
                + " of "
                + Print.number(count)
                + " bolts count",
            Print.with(counting * first.getValue() / 1000, "kN")));
  }

  /** EN 1995-1-1, 8.5.1.1: a piece loaded along its grain splits along the row. */
  private double inARow(double count) {
    double least =
        section.layers().stream().mapToDouble(WoodUnderBolts::turned).min().orElse(0) / 90;
    double along = BoltInWood.inARow(count, dimension("spacing").orElse(5 * diameter), diameter);
    return along + least * (count - along);
  }

  /** From the load to the grain, 0 to 90 degrees. */
  private static double turned(Section.Layer layer) {
    double angle = Math.abs(LayeredPart.angle(layer.angle(), layer.grain())) % HALF_TURN;
    return Math.min(angle, HALF_TURN - angle);
  }

  private OptionalDouble strength(int index, Materials materials) {
    Section.Layer layer = section.layers().get(index - 1);
    Optional<Material> wood = layer.material().flatMap(materials::material);
    if (wood.isPresent() && wood.get().sort() != Material.Sort.TIMBER) {
      lacking.add(
          "layer "
              + index
              + " of "
              + section.named()
              + " is of "
              + wood.get().id()
              + ", and bolts are worked out between two pieces of solid timber only");
    }
    if (wood.isEmpty() || wood.get().sort() != Material.Sort.TIMBER) {
      return OptionalDouble.empty();
    }
    if (layer.angle().isEmpty() && layer.grain().isEmpty()) {
      lacking.add(
          "layer "
              + index
              + " of "
              + section.named()
              + " does not say how its grain runs against the load on its bolts: grain: along,"
              + " grain: across, or angle: 30 deg");
    }
    OptionalDouble density = inputs.needed(wood.get(), MaterialProperty.DENSITY);
    if (density.isEmpty()) {
      return density;
    }
    double gravity = density.getAsDouble() / GRAVITY;
    DrivenMethod.outside(wood.get(), gravity).ifPresent(lacking::add);
    double whole = BoltInWood.bearing(gravity, diameter, Math.toRadians(turned(layer)));
    return OptionalDouble.of(factors.wood(index) * whole);
  }

  /** Loaded end 7d and 80 mm, edges 3d, 4d where loaded across; in a row 5d apart. */
  private void distances(double count) {
    boolean along = section.layers().stream().allMatch(layer -> turned(layer) < 1e-6);
    distance("end-distance", Math.max(7 * diameter, END));
    distance("edge-distance", along ? 3 * diameter : 4 * diameter);
    if (count > 1) {
      distance("spacing", 5 * diameter);
    }
  }

  private void distance(String name, double least) {
    Distance.fault(section, name, dimension(name), least).ifPresent(lacking::add);
  }

  /** Under the head and under the nut: a washer on each, of which the weaker wood gives first. */
  private void washer(Materials materials, double count, Figures figures, List<Step> steps) {
    Optional<Double> washer = dimension("washer");
    if (washer.isEmpty()) {
      figures.lacks(
          Measure.BOLT_WASHER,
          "state the washer of "
              + section.named()
              + " (washer, its diameter, among the dimensions)");
      return;
    }
    if (washer.get() <= BoltInWood.hole(diameter)) {
      figures.lacks(
          Measure.BOLT_WASHER,
          "the washer of "
              + section.named()
              + " is no wider than the hole of its bolt, "
              + Print.mm(BoltInWood.hole(diameter)));
      return;
    }
    OptionalDouble across = underWashers(materials, washer.get(), figures);
    if (across.isEmpty()) {
      return;
    }
    Washers.lacking(section, washer.get(), diameter, count)
        .forEach(what -> figures.lacks(Measure.BOLT_WASHER, what));
    double strength = across.getAsDouble();
    double pull =
        count * BoltInWood.washer(strength, washer.get(), BoltInWood.hole(diameter)) / 1000;
    figures.put(Measure.BOLT_WASHER, pull);
    steps.add(
        new Step(
            "pull at which the washer sinks in",
            "n·3·f_c90·π/4·(D² − (d + 1 mm)²), EN 1995-1-1, 8.5.2",
            Print.number(count)
                + " · 3 · "
                + Print.with(strength / 1e6, "MPa")
                + ", D "
                + Print.mm(washer.get())
                + ", d "
                + Print.mm(diameter),
            Print.with(pull, "kN")));
  }

  /** The least strength across of the outer pieces, Pa; none where one of them is not known. */
  private OptionalDouble underWashers(Materials materials, double washer, Figures figures) {
    double least = Double.POSITIVE_INFINITY;
    int last = section.layers().size();
    for (int layer : last > 1 ? new int[] {1, last} : new int[] {1}) {
      Optional<Material> piece =
          section.layers().get(layer - 1).material().flatMap(materials::material);
      if (piece.filter(one -> one.sort() == Material.Sort.METAL).isPresent()) {
        continue;
      }
      OptionalDouble across =
          piece.isEmpty()
              ? OptionalDouble.empty()
              : inputs.value(piece.get(), MaterialProperty.COMPRESSIVE_STRENGTH_ACROSS);
      if (across.isEmpty()) {
        figures.lacks(
            Measure.BOLT_WASHER,
            piece.map(Material::id).orElse(section.named())
                + " does not state its compressive-strength-across");
        return OptionalDouble.empty();
      }
      Washers.thin(section, layer, washer)
          .ifPresent(what -> figures.lacks(Measure.BOLT_WASHER, what));
      least = Math.min(least, factors.wood(layer) * across.getAsDouble());
    }
    if (Double.isInfinite(least)) {
      figures.lacks(Measure.BOLT_WASHER, section.named() + " lists no wood under its washers");
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(least);
  }
}

package kitwright.assessment.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitwright.assessment.material.Factors;
import kitwright.assessment.material.Materials;
import kitwright.assessment.part.Unheeded;
import kitwright.assessment.sheet.Faults;
import kitwright.assessment.sheet.Figures;
import kitwright.assessment.sheet.Inputs;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Outcome;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Step;
import kitwright.assessment.sheet.Working;
import kitwright.finding.Findings;
import kitwright.ledger.Kind;
import kitwright.ledger.Material;
import kitwright.ledger.MaterialProperty;
import kitwright.ledger.Section;
import kitwright.mechanics.fastener.BoltClass;
import kitwright.value.Dimension;
import kitwright.value.Nearest;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/** Bolts: stress area, breaking and proof load, shear through the thread; least values. */
public final class BoltMethod {
  /** The built-in rows of one property class: its mark behind {@code bolt-}, stops as hyphens. */
  private static final Pattern CLASS = Pattern.compile("bolt-(\\d+-\\d+|a\\d-\\d+)(?:-.*)?");

  private static final List<String> DIMENSIONS =
      List.of(
          "count",
          "diameter",
          "edge-distance",
          "end-distance",
          "spacing",
          "stress-area",
          "washer",
          "washer-thickness");

  private static final Set<String> OF_WOOD =
      Set.of("edge-distance", "end-distance", "washer", "washer-thickness");

  private final Section section;
  private final BoltThread thread;
  private final Material material;
  private final double count;
  private final double factor;
  private final Factors.OnSide factors;

  private BoltMethod(
      Section section, BoltThread thread, Material material, double count, Factors.OnSide factors) {
    this.section = section;
    this.thread = thread;
    this.material = material;
    this.count = count;
    this.factors = factors;
    this.factor = factors.strength(material.id(), Material.Sort.BOLT, 1);
  }

  public static Outcome of(
      Section section, Materials materials, Factors.OnSide factors, Findings out) {
    Inputs inputs = materials.inputs();
    Faults faults = new Faults(section, out);
    Unheeded.tell(section, faults);
    section.dimensions().forEach((name, value) -> known(name, value, faults));
    ofNoWood(section).ifPresent(inputs::lacks);
    Optional<Double> diameter = dimension(section, "diameter", Dimension.LENGTH, faults);
    Optional<Double> count = dimension(section, "count", Dimension.RATIO, faults);
    if (section.dimensions().keySet().stream().noneMatch(key -> key.id().equals("diameter"))) {
      faults.add("dimensions", "A bolt has no diameter", "Add it: dimensions: {diameter: 10 mm}.");
    }
    Optional<BoltThread> thread = diameter.flatMap(some -> BoltThread.of(section, some, faults));
    if (faults.any() || diameter.isEmpty()) {
      inputs.lacks(section.named() + " cannot be as it is written; “kitwright check” says why");
      return Outcome.nothing();
    }
    Optional<Material> material = section.material().flatMap(materials::material);
    if (thread.isEmpty()) {
      inputs.lacks(BoltThread.unknown(section, diameter.get()));
    }
    if (material.isEmpty()) {
      inputs.lacks(
          section
              .material()
              .map(
                  ref ->
                      inputs.noSuch(Kind.MATERIALS, ref) + ", of which " + section.named() + " is")
              .orElse(section.named() + " does not name the material of its bolts"));
    }
    if (material.isEmpty()) {
      return Outcome.nothing();
    }
    if (thread.isEmpty()) {
      return wood(section, materials, factors, material.get(), diameter.get(), count.orElse(1.0));
    }
    Optional<BoltClass> strength = marked(material.get());
    strength
        .flatMap(one -> beyond(one, material.get(), thread.get().diameter()))
        .ifPresent(inputs::lacks);
    return new BoltMethod(section, thread.get(), material.get(), count.orElse(1.0), factors)
        .worked(strength, materials);
  }

  /** What the wood bears under a bolt of another thread, such as one in inches. */
  private static Outcome wood(
      Section section,
      Materials materials,
      Factors.OnSide factors,
      Material material,
      double diameter,
      double count) {
    Figures figures = new Figures();
    List<Step> steps =
        WoodUnderBolts.put(section, materials, factors, material, diameter, count, figures);
    return new Outcome(
        figures,
        () ->
            List.of(new Working(section.what().orElse(section.id()), List.of(), List.of(), steps)));
  }

  private static void known(Ref name, Quantity value, Faults faults) {
    if (value.unit().dimension() == Dimension.LENGTH && value.base() > Measures.GREATEST) {
      faults.add(name.at(), "The " + name + " of a bolt is " + value, "Look at its unit.");
    }
    if (!DIMENSIONS.contains(name.id())) {
      faults.add(
          name.at(),
          "A bolt has no dimension “" + name + "”",
          Nearest.ofWords(name.id(), DIMENSIONS)
              .map(near -> "Did you mean “" + near + "”?")
              .orElse("It has: " + String.join(", ", DIMENSIONS) + "."));
    }
  }

  /** What is stated of the wood round a bolt says nothing where no wood is listed. */
  private static Optional<String> ofNoWood(Section section) {
    List<String> idle =
        section.dimensions().keySet().stream()
            .map(Ref::id)
            .filter(OF_WOOD::contains)
            .sorted()
            .toList();
    return idle.isEmpty() || !section.layers().isEmpty()
        ? Optional.empty()
        : Optional.of(
            section.named()
                + " states its "
                + String.join(", ", idle)
                + " and not what its bolts go through: list the pieces under “layers”, the one"
                + " under the head first");
  }

  private static Optional<Double> dimension(
      Section section, String name, Dimension wanted, Faults faults) {
    for (Map.Entry<Ref, Quantity> one : section.dimensions().entrySet()) {
      if (one.getKey().id().equals(name)) {
        boolean fits =
            one.getValue().unit().dimension() == wanted
                || (wanted == Dimension.RATIO
                    && one.getValue().unit().dimension() == Dimension.COUNT);
        boolean whole = wanted != Dimension.RATIO || Measures.isWhole(one.getValue().base());
        if (!fits || one.getValue().isNone() || !whole) {
          faults.add(
              one.getKey().at(),
              "The " + name + " of a bolt is " + one.getValue(),
              "Write diameter: 10 mm, and count: 8 where there are several.");
          return Optional.empty();
        }
        return Optional.of(one.getValue().base());
      }
    }
    return Optional.empty();
  }

  private Outcome worked(Optional<BoltClass> strength, Materials materials) {
    Inputs inputs = materials.inputs();
    Figures figures = new Figures();
    List<Step> wood =
        WoodUnderBolts.put(
            section, materials, factors, material, thread.diameter(), count, figures);
    OptionalDouble pull = inputs.needed(material, MaterialProperty.TENSILE_STRENGTH);
    OptionalDouble proof = inputs.value(material, MaterialProperty.PROOF_STRESS);
    OptionalDouble shear = inputs.value(material, MaterialProperty.SHEAR_STRENGTH);
    List<Borne> all = new ArrayList<>();
    pull.ifPresent(rm -> all.add(borne(Measure.BOLT_TENSION, "n·R_m·A_s", rm)));
    if (shear.isPresent()) {
      all.add(borne(Measure.BOLT_SHEAR, "n·τ·A_s", shear.getAsDouble()));
    } else if (pull.isPresent() && strength.isPresent()) {
      double share = strength.get().shearFactor();
      all.add(
          borne(
              Measure.BOLT_SHEAR,
              "n·" + Print.number(share) + "·R_m·A_s",
              share * pull.getAsDouble()));
    } else {
      figures.lacks(Measure.BOLT_SHEAR, material.id() + " does not state its shear-strength");
    }
    proof.ifPresent(rp -> all.add(borne(Measure.BOLT_PROOF, "n·R_p·A_s", rp)));
    if (proof.isEmpty()) {
      figures.lacks(Measure.BOLT_PROOF, material.id() + " does not state its proof-stress");
    }
    all.forEach(borne -> figures.put(borne.measure(), borne.load()));
    inputs.note(
        "bolts by the values of their class; shear through the thread; no prying, no preload"
            + (section.layers().isEmpty()
                ? "; what they go through is not listed and not looked at"
                : ""));
    return new Outcome(figures, () -> List.of(working(section, thread, all, wood)));
  }

  private Borne borne(Measure measure, String formula, double stress) {
    return new Borne(measure, formula, count, factor * stress, thread.area());
  }

  /**
   * Why a class does not hold for a diameter: what the row states must be what its standard has for
   * that diameter, and stainless classes 70 and 80 are of M24 at the most without an agreement.
   */
  private static Optional<String> beyond(BoltClass strength, Material material, double diameter) {
    String what = material.id() + " on M" + Print.number(diameter * 1000) + ": ";
    if (strength.isBeyond(diameter)) {
      return Optional.of(
          what + "class " + strength.mark() + " has no strength of its standard above M24");
    }
    Quantity stated = material.properties().get(MaterialProperty.TENSILE_STRENGTH);
    double least = strength.tensileStrength(diameter);
    return stated == null || Math.abs(stated.base() / least - 1) < 0.01
        ? Optional.empty()
        : Optional.of(
            what
                + "it states "
                + stated
                + ", and its standard has "
                + Print.with(least / 1e6, "MPa")
                + " for that diameter: take the row that is meant for it");
  }

  private static Working working(
      Section section, BoltThread thread, List<Borne> all, List<Step> wood) {
    List<Step> steps = new ArrayList<>();
    steps.add(thread.step());
    all.forEach(borne -> steps.add(borne.step()));
    steps.addAll(wood);
    return new Working(section.what().orElse(section.id()), List.of(), List.of(), steps);
  }

  /**
   * What so many bolts bear in one way.
   *
   * @param stress Pa
   * @param area m²
   */
  private record Borne(Measure measure, String formula, double count, double stress, double area) {
    /** kN. */
    double load() {
      return count * stress * area / 1000;
    }

    Step step() {
      return new Step(
          measure.words(),
          formula,
          Print.number(count)
              + " · "
              + Print.with(stress / 1e6, "MPa")
              + " · "
              + Print.with(area * 1e6, "mm²"),
          Print.with(load(), "kN"));
    }
  }

  /** The class of a built-in row, or of a ledger's row by that name; nothing for others. */
  private static Optional<BoltClass> marked(Material material) {
    Matcher marked = CLASS.matcher(material.id());
    return marked.matches()
        ? BoltClass.marked(marked.group(1).toUpperCase(Locale.ROOT).replaceFirst("^(\\d+)-", "$1."))
        : Optional.empty();
  }
}

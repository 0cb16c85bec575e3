package kitwright.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitwright.finding.Findings;
import kitwright.ledger.Material;
import kitwright.ledger.MaterialProperty;
import kitwright.ledger.Section;
import kitwright.mechanics.fastener.BoltClass;
import kitwright.mechanics.fastener.MetricThread;
import kitwright.value.Dimension;
import kitwright.value.Quantity;

/** Bolts: stress area, breaking and proof load, shear through the thread; least values. */
final class BoltMethod {
  /** The built-in rows of one property class: its mark behind {@code bolt-}, stops as hyphens. */
  private static final Pattern CLASS = Pattern.compile("bolt-(\\d+-\\d+|a\\d-\\d+)(?:-.*)?");

  private BoltMethod() {}

  static Outcome of(Section section, Stuffs stuffs, Findings out) {
    Faults faults = new Faults(section, out);
    Optional<Double> diameter = dimension(section, "diameter", Dimension.LENGTH, faults);
    Optional<Double> count = dimension(section, "count", Dimension.RATIO, faults);
    if (section.dimensions().keySet().stream().noneMatch(key -> key.id().equals("diameter"))) {
      faults.add("dimensions", "A bolt has no diameter", "Add it: dimensions: {diameter: 10 mm}.");
    }
    if (faults.any() || diameter.isEmpty()) {
      stuffs.lacks(section.named() + " cannot be as it is written");
      return Outcome.nothing();
    }
    double millimetres = Math.round(diameter.get() * 1e6) / 1e3;
    Optional<MetricThread> thread = MetricThread.coarse(millimetres);
    Optional<Material> material = section.material().flatMap(stuffs::material);
    if (thread.isEmpty()) {
      stuffs.lacks("M" + Print.number(millimetres) + " has no coarse thread in ISO 261");
    }
    if (material.isEmpty()) {
      stuffs.lacks(section.named() + " does not name the material of its bolts");
    }
    if (thread.isEmpty() || material.isEmpty()) {
      return Outcome.nothing();
    }
    return worked(section, thread.get(), material.get(), count.orElse(1.0), stuffs);
  }

  private static Optional<Double> dimension(
      Section section, String name, Dimension wanted, Faults faults) {
    for (Map.Entry<kitwright.value.Ref, Quantity> one : section.dimensions().entrySet()) {
      if (one.getKey().id().equals(name)) {
        boolean fits =
            one.getValue().unit().dimension() == wanted
                || (wanted == Dimension.RATIO
                    && one.getValue().unit().dimension() == Dimension.COUNT);
        if (!fits || one.getValue().isNone()) {
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

  private static Outcome worked(
      Section section, MetricThread thread, Material material, double count, Stuffs stuffs) {
    Figures figures = new Figures();
    double area = thread.stressArea();
    OptionalDouble pull = stuffs.needed(material, MaterialProperty.TENSILE_STRENGTH);
    OptionalDouble proof = stuffs.value(material, MaterialProperty.PROOF_STRESS);
    OptionalDouble shear = stuffs.value(material, MaterialProperty.SHEAR_STRENGTH);
    List<Borne> all = new ArrayList<>();
    pull.ifPresent(
        rm -> {
          all.add(
              new Borne(
                  Measure.BOLT_TENSION, "n·R_m·A_s", OptionalDouble.empty(), count, rm, area));
          if (shear.isPresent()) {
            all.add(
                new Borne(
                    Measure.BOLT_SHEAR,
                    "n·τ·A_s",
                    OptionalDouble.empty(),
                    count,
                    shear.getAsDouble(),
                    area));
            return;
          }
          shearFactor(material)
              .ifPresentOrElse(
                  factor ->
                      all.add(
                          new Borne(
                              Measure.BOLT_SHEAR,
                              "·R_m·A_s",
                              OptionalDouble.of(factor),
                              count,
                              factor * rm,
                              area)),
                  () ->
                      figures.lacks(
                          Measure.BOLT_SHEAR,
                          material.id() + " does not state its shear-strength"));
        });
    proof.ifPresent(
        rp ->
            all.add(
                new Borne(
                    Measure.BOLT_PROOF, "n·R_p·A_s", OptionalDouble.empty(), count, rp, area)));
    if (proof.isEmpty()) {
      figures.lacks(Measure.BOLT_PROOF, material.id() + " does not state its proof-stress");
    }
    all.forEach(borne -> figures.put(borne.measure(), borne.load()));
    stuffs.note(
        "bolts by the least values of their class; shear through the thread; no bearing, no prying,"
            + " no preload");
    return new Outcome(figures, () -> List.of(working(section, thread, all)));
  }

  private static Working working(Section section, MetricThread thread, List<Borne> all) {
    List<Step> steps = new ArrayList<>();
    steps.add(
        new Step(
            "stress area",
            "A_s = π/4·((d₂ + d₃)/2)², ISO 898-1:2013, 9.1.6.1",
            "M"
                + Print.number(thread.diameter() * 1000)
                + ", pitch "
                + Print.with(thread.pitch() * 1000, "mm"),
            Print.with(thread.stressArea() * 1e6, "mm²")));
    all.forEach(borne -> steps.add(borne.step()));
    return new Working(section.what().orElse(section.id()), List.of(), List.of(), steps);
  }

  /**
   * What so many bolts bear in one way.
   *
   * @param formula what stands behind the factor, where there is one
   * @param factor of shear strength on tensile strength
   * @param stress Pa
   * @param area m²
   */
  private record Borne(
      Measure measure,
      String formula,
      OptionalDouble factor,
      double count,
      double stress,
      double area) {
    /** kN. */
    double load() {
      return count * stress * area / 1000;
    }

    Step step() {
      return new Step(
          measure.words(),
          factor.isPresent() ? "n·" + Print.number(factor.getAsDouble()) + formula : formula,
          Print.number(count)
              + " · "
              + Print.with(stress / 1e6, "MPa")
              + " · "
              + Print.with(area * 1e6, "mm²"),
          Print.with(load(), "kN"));
    }
  }

  /**
   * Shear strength over tensile strength by class: taken too low for the bolt as drawn, it would
   * flatter the one as built. Nothing for a bolt whose class is not known.
   */
  private static Optional<Double> shearFactor(Material material) {
    Matcher marked = CLASS.matcher(material.id());
    return marked.matches()
        ? BoltClass.marked(marked.group(1).toUpperCase(Locale.ROOT).replaceFirst("^(\\d+)-", "$1."))
            .map(BoltClass::shearFactor)
        : Optional.empty();
  }
}

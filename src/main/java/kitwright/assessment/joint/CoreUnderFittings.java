package kitwright.assessment.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import kitwright.assessment.material.Factors;
import kitwright.assessment.material.Materials;
import kitwright.assessment.sheet.Figures;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Step;
import kitwright.ledger.Material;
import kitwright.ledger.MaterialProperty;
import kitwright.ledger.Section;
import kitwright.mechanics.fastener.BoltInWood;

/**
 * A fitting or washer that is pulled or pushed onto a sandwich: the core is crushed where the
 * pressure under the washer reaches its compressive strength through the thickness. What the face
 * spreads is left out, so that faces are held to be no thinner than as drawn.
 *
 * @see "pressure over bearing area: ISO 12215-5:2008, Annex D, for strengths of cores; the spread
 *     by a face (Steeves and Fleck) was not read and is not counted"
 * @see "Ashby and others, Metal Foams: A Design Guide, 2000, chapter 10 (read in part): a foam is
 *     indented at a pressure slightly above its compressive strength, so that this is the lower"
 */
public final class CoreUnderFittings {
  private CoreUnderFittings() {}

  /** Whether a fastening goes through a core. */
  static boolean isSandwich(Section section, Materials materials) {
    return core(section, materials).isPresent();
  }

  private static Optional<Material> core(Section section, Materials materials) {
    return section.layers().stream()
        .flatMap(layer -> layer.material().stream())
        .flatMap(ref -> materials.material(ref).stream())
        .filter(one -> one.sort() == Material.Sort.CORE)
        .findFirst();
  }

  static List<Step> put(
      Section section,
      Materials materials,
      Factors.OnSide factors,
      double diameter,
      double count,
      Figures figures) {
    figures.lacks(Measure.BOLT_BEARING, section.named() + " goes through a core");
    Material core = core(section, materials).orElseThrow();
    OptionalDouble strength = materials.inputs().value(core, MaterialProperty.COMPRESSIVE_STRENGTH);
    Optional<Double> washer =
        section.dimensions().entrySet().stream()
            .filter(one -> one.getKey().id().equals("washer"))
            .map(one -> one.getValue().base())
            .findFirst();
    if (strength.isEmpty()) {
      figures.lacks(Measure.CRUSHING, core.id() + " does not state its compressive-strength");
    }
    if (washer.isEmpty() || washer.get() <= BoltInWood.hole(diameter)) {
      figures.lacks(
          Measure.CRUSHING,
          "state the washer of "
              + section.named()
              + ", wider than the hole of its bolt (washer, among the dimensions)");
    }
    washer.ifPresent(
        wide ->
            Washers.lacking(section, wide, diameter, count)
                .forEach(what -> figures.lacks(Measure.CRUSHING, what)));
    if (section.layers().size() < 2) {
      figures.lacks(Measure.CRUSHING, section.named() + " lists no face on its core");
    }
    if (strength.isEmpty() || washer.isEmpty() || washer.get() <= BoltInWood.hole(diameter)) {
      return List.of();
    }
    double less = strength.getAsDouble() * factors.strength(core.id(), core.sort(), index(section));
    double area = BoltInWood.ring(washer.get(), BoltInWood.hole(diameter));
    double load = count * less * area / 1000;
    figures.put(Measure.CRUSHING, load);
    return List.of(
        new Step(
            Measure.CRUSHING.words(),
            "n·σ_c·π/4·(D² − (d + 1 mm)²), the face spreads nothing",
            Print.number(count)
                + " · "
                + Print.with(less / 1e6, "MPa")
                + " · "
                + Print.with(area * 1e6, "mm²"),
            Print.with(load, "kN")));
  }

  private static int index(Section section) {
    return Math.max(1, Math.min(2, section.layers().size()));
  }

  /** Faces that are thinner as built than as drawn, each a clause: what they spread is less. */
  public static List<String> thinner(Optional<Section> drawn, Optional<Section> built) {
    List<String> lacking = new ArrayList<>();
    boolean bolts =
        drawn.flatMap(Section::shape).filter(Section.Shape::isFastening).isPresent()
            && built.flatMap(Section::shape).filter(Section.Shape::isFastening).isPresent();
    if (!bolts || drawn.get().layers().size() < 3 || built.get().layers().isEmpty()) {
      return lacking;
    }
    double was = face(drawn.get());
    double is = face(built.get());
    if (is < was * (1 - 1e-9)) {
      lacking.add(
          "the face under the washer is "
              + Print.mm(is)
              + " as built and "
              + Print.mm(was)
              + " as drawn: what it spreads over the core is not worked out here");
    }
    return lacking;
  }

  private static double face(Section section) {
    return section.layers().get(0).thickness().map(one -> one.base()).orElse(0.0);
  }
}

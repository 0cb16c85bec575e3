package kitwright.assessment.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import kitwright.assessment.sheet.Print;
import kitwright.ledger.Material;
import kitwright.ledger.Section;
import kitwright.ledger.Section.Shape;
import kitwright.mechanics.beam.BeamMaterial;
import kitwright.mechanics.beam.Leg;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * Webs so slender that they may buckle in shear or bending before anything fails: that is not
 * worked out, so they are held to the proportions of the scantling standard.
 *
 * @see "ISO 12215-5:2008, table 20, webs of T stiffeners: steel 50, aluminium and plywood 40, FRP
 *     30; read by way of one public implementation"
 */
public final class Webs {
  private Webs() {}

  /** What cannot be told of a section for its webs, each a clause. */
  public static List<String> lacking(Section section, Function<Ref, Optional<Material>> materials) {
    List<String> lacking = new ArrayList<>();
    if (section.shape().filter(Shape.I::equals).isPresent()) {
      double high = dimension(section, "height") - 2 * dimension(section, "flange");
      section
          .material()
          .flatMap(materials)
          .flatMap(one -> slender(one, high, dimension(section, "web"), "web"))
          .ifPresent(lacking::add);
    }
    for (int i = 0; i < section.layers().size(); i++) {
      Section.Layer layer = section.layers().get(i);
      if (layer.strips().stream().noneMatch(Section.Strip::hollow)) {
        continue;
      }
      String where = "layer " + (i + 1);
      double high = layer.thickness().map(Quantity::base).orElse(0.0);
      for (Section.Strip strip : layer.strips()) {
        strip
            .material()
            .flatMap(materials)
            .flatMap(one -> slender(one, high, strip.width().base(), where))
            .ifPresent(lacking::add);
      }
    }
    return lacking;
  }

  /** A polygon with a leg or wall so thin that it may buckle before it yields. */
  static Optional<String> legs(Part part) {
    BeamMaterial material = part.beam().regions().get(0).material();
    OptionalDouble bears = Leg.bears(part.beam(), material);
    return Leg.slimmest(part.beam())
        .filter(leg -> !(leg.buckling(material).orElse(0) > bears.orElse(0)))
        .map(
            leg ->
                part.id()
                    + " has a leg or wall of "
                    + Print.mm(leg.length())
                    + " that is "
                    + Print.mm(leg.thickness())
                    + " thick and may buckle first, which is not worked out for a polygon: write it"
                    + " as layers with voids beside its webs, as an i or a tube, or state its"
                    + " wall");
  }

  private static double dimension(Section section, String name) {
    return section.dimensions().entrySet().stream()
        .filter(one -> one.getKey().id().equals(name))
        .mapToDouble(one -> one.getValue().base())
        .findFirst()
        .orElse(0);
  }

  private static Optional<String> slender(
      Material material, double high, double thick, String where) {
    double most =
        switch (material.sort()) {
          case METAL, TIMBER, PLYWOOD -> 40;
          default -> 30;
        };
    return thick > 0 && high / thick > most
        ? Optional.of(
            "a web of "
                + material.id()
                + " ("
                + where
                + ") is "
                + Print.number(high / thick)
                + " times as high as thick; above "
                + Print.number(most)
                + " it may buckle first, which is not worked out here")
        : Optional.empty();
  }
}

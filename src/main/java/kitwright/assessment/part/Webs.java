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
import kitwright.mechanics.beam.Skin;
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

  /** How many times as high as thick a web is that buckles of no material here before it fails. */
  static final double STOUT = 10;

  /** Webs of a part that may buckle in shear before what they are of fails, each a clause. */
  static List<String> sheared(Part part) {
    Section section = part.source();
    List<String> lacking = new ArrayList<>();
    if (section.shape().filter(Shape.I::equals).isPresent()) {
      double high = dimension(section, "height") - 2 * dimension(section, "flange");
      sheared(part, "web", high).ifPresent(lacking::add);
    }
    double run = 0;
    List<String> within = new ArrayList<>();
    for (int i = 0; i <= section.layers().size(); i++) {
      boolean hollow = i < section.layers().size() && isHollow(section.layers().get(i));
      if (!hollow) {
        for (String where : within) {
          sheared(part, where, run).ifPresent(lacking::add);
        }
        within.clear();
        run = 0;
        continue;
      }
      Section.Layer layer = section.layers().get(i);
      run += layer.thickness().map(Quantity::base).orElse(0.0);
      for (int s = 0; s < layer.strips().size(); s++) {
        within.add("layer " + (i + 1) + " strip " + (s + 1));
      }
    }
    return lacking;
  }

  private static boolean isHollow(Section.Layer layer) {
    return layer.strips().stream().anyMatch(Section.Strip::hollow);
  }

  private static Optional<String> sheared(Part part, String where, double high) {
    return part.beam().regions().stream()
        .filter(region -> region.where().equals(where))
        .filter(region -> high > STOUT * region.bounds().width())
        .filter(region -> region.material().kind() != BeamMaterial.Kind.CORE)
        .filter(
            region ->
                Skin.overGap(region.material(), region.bounds().width(), high).sheared().orElse(0)
                    < region.material().strength().shear().orElse(0))
        .findFirst()
        .map(
            region ->
                "a web of "
                    + region.material().name()
                    + " ("
                    + where
                    + ") is "
                    + Print.number(high / region.bounds().width())
                    + " times as high as thick and may buckle in shear before it fails, which is"
                    + " not worked out here: make it thicker, or lower");
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
    return section.dimension(name).map(Quantity::base).orElse(0.0);
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

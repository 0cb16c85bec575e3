package kitwright.substitution;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.ledger.Section;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * The pieces of one material in a section, by how thick each is the thinner way.
 *
 * @param thinnest m; below 0 where one of them does not tell, or there is none
 * @param thickest m; beyond measure there
 */
record Pieces(double thinnest, double thickest) {
  private static final Pieces UNTOLD = new Pieces(-1, Double.POSITIVE_INFINITY);

  static Pieces of(Section section, String material) {
    List<Optional<Double>> all = new ArrayList<>();
    section.layers().forEach(layer -> layer(layer, section, material, all));
    boolean aside =
        Stream.concat(
                section.skins().stream().flatMap(layer -> layer.material().stream()),
                section.members().stream().map(Section.Member::material))
            .anyMatch(ref -> ref.id().equals(material));
    if (section.material().filter(ref -> ref.id().equals(material)).isPresent()) {
      all.add(shaped(section));
    }
    if (all.isEmpty() || aside || all.stream().anyMatch(Optional::isEmpty)) {
      return UNTOLD;
    }
    List<Double> told = all.stream().flatMap(Optional::stream).sorted().toList();
    return new Pieces(told.get(0), told.get(told.size() - 1));
  }

  private static void layer(
      Section.Layer layer, Section section, String material, List<Optional<Double>> all) {
    Optional<Double> thick = layer.thickness().map(Quantity::base);
    if (layer.material().filter(ref -> ref.id().equals(material)).isPresent()) {
      double wide = section.width().map(Quantity::base).orElse(Double.POSITIVE_INFINITY);
      all.add(thick.map(t -> Math.min(t, wide)));
    }
    for (Section.Strip strip : layer.strips()) {
      if (strip.material().filter(ref -> ref.id().equals(material)).isPresent()) {
        all.add(thick.map(t -> Math.min(t, strip.width().base())));
      }
    }
  }

  /** Of what is no plain bar the stuff may be bent, turned or glued up: it is not told. */
  private static Optional<Double> shaped(Section section) {
    return switch (section.shape().orElse(Section.Shape.POLYGON)) {
      case RECTANGLE ->
          dimension(section, "width")
              .flatMap(wide -> dimension(section, "height").map(high -> Math.min(wide, high)));
      case ROUND -> dimension(section, "diameter");
      case TUBE, I, FOIL, POLYGON, BOLT, NAIL, RINGED_NAIL, SCREW, LAG_SCREW -> Optional.empty();
    };
  }

  private static Optional<Double> dimension(Section section, String name) {
    return section.dimension(name).map(Quantity::base);
  }

  /** Whatever a section is of, its glue aside. */
  static Stream<Ref> materials(Section section) {
    return Stream.of(
            section.material().stream(),
            Stream.concat(section.layers().stream(), section.skins().stream())
                .flatMap(Section.Layer::materials),
            section.members().stream().map(Section.Member::material))
        .flatMap(each -> each);
  }
}

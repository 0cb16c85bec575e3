package kitwright.assessment;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import kitwright.assessment.material.Factors;
import kitwright.assessment.material.Factors.Side;
import kitwright.assessment.material.Materials;
import kitwright.ledger.Assessment;
import kitwright.ledger.Material;
import kitwright.ledger.Section;
import kitwright.ledger.WeakLink;
import kitwright.value.Ref;

/** The materials that the sections of an assessment are of, and where they lie. */
record Used(Assessment assessment, Function<Ref, Optional<Section>> sections, Materials materials) {
  /** The materials that the sections of the assessment are of, as far as they bear anything. */
  List<Material> all() {
    Stream<Ref> named =
        Stream.concat(
            Stream.of(assessment.designed(), assessment.built()).flatMap(Optional::stream),
            assessment.weakLink().stream().flatMap(WeakLink::parts));
    Map<String, Material> used = new LinkedHashMap<>();
    named
        .flatMap(ref -> sections.apply(ref).stream())
        .flatMap(Used::materials)
        .flatMap(ref -> materials.material(ref).stream())
        .flatMap(one -> Stream.concat(Stream.of(one), wood(one)))
        .forEach(one -> used.putIfAbsent(one.id(), one));
    return List.copyOf(used.values());
  }

  /** What lies where in the parts, as factors find it; those of a weak link count as built. */
  List<Factors.Laid> laid() {
    List<Factors.Laid> laid = new ArrayList<>();
    assessment.designed().ifPresent(ref -> laid(ref, Side.DESIGNED, laid));
    assessment.built().ifPresent(ref -> laid(ref, Side.BUILT, laid));
    assessment
        .weakLink()
        .ifPresent(link -> link.parts().forEach(ref -> laid(ref, Side.BUILT, laid)));
    return laid;
  }

  private void laid(Ref ref, Side side, List<Factors.Laid> laid) {
    Optional<Section> section = sections.apply(ref);
    if (section.isEmpty()) {
      return;
    }
    List<Section.Layer> layers = section.get().layers();
    for (int i = 0; i < layers.size(); i++) {
      laid(layers.get(i).materials(), side, i + 1, laid);
    }
    if (section.get().shape().isPresent()) {
      laid(materials(section.get()), side, 1, laid);
    }
  }

  private void laid(Stream<Ref> refs, Side side, int layer, List<Factors.Laid> laid) {
    refs.flatMap(ref -> materials.material(ref).stream())
        .forEach(one -> laid.add(new Factors.Laid(side, layer, one.sort())));
  }

  private Stream<Material> wood(Material plywood) {
    return plywood.wood().flatMap(materials::material).stream();
  }

  static Stream<Ref> materials(Section section) {
    Stream<Section.Layer> layers =
        Stream.concat(section.layers().stream(), section.skins().stream());
    return Stream.of(
            section.material().stream(),
            section.glue().stream(),
            section.members().stream().map(Section.Member::material),
            layers.flatMap(Section.Layer::materials))
        .flatMap(refs -> refs);
  }
}

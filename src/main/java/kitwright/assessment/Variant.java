package kitwright.assessment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import kitwright.ledger.Assessment.Addition;
import kitwright.ledger.Material.Sort;
import kitwright.ledger.Section;
import kitwright.ledger.Section.Layer;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/** A section of the ledger with so much of something added. */
final class Variant {
  private final Function<Ref, Optional<Sort>> sorts;

  /**
   * @param sorts what sort a material is, to find the core
   */
  Variant(Function<Ref, Optional<Sort>> sorts) {
    this.sorts = sorts;
  }

  /** The section with an addition so many times; the same where it has nothing to add it to. */
  Section with(Section section, Addition addition, int count) {
    if (count == 0) {
      return section;
    }
    if (addition.material().isPresent()) {
      return plied(section, addition.material().get(), addition.faces().orElse(2), count);
    }
    if (addition.step().isEmpty() || addition.dimension().isEmpty()) {
      return section;
    }
    Quantity more = addition.step().get().times(BigDecimal.valueOf(count));
    return grown(section, addition.dimension().get(), more);
  }

  /** Why a line of the menu cannot be added to the section, where it measures something else. */
  Optional<String> misfit(Section section, Addition addition) {
    return section.dimensions().entrySet().stream()
        .filter(one -> addition.material().isEmpty())
        .filter(one -> addition.dimension().filter(one.getKey().id()::equals).isPresent())
        .filter(one -> addition.step().filter(one.getValue()::convertsTo).isEmpty())
        .map(
            one ->
                "The menu adds "
                    + addition.step().map(Quantity::toString).orElse("no step")
                    + " to the "
                    + one.getKey()
                    + " of "
                    + section.named()
                    + ", which is "
                    + one.getValue()
                    + ": name a dimension that is a length, and a step.")
        .findFirst();
  }

  /** Plies on the upper face, or on both; on a foil, outermost of the skin. */
  private static Section plied(Section section, Ref cloth, int faces, int count) {
    if (section.layers().isEmpty()) {
      return copy(section, section.layers(), onTop(section.skins(), cloth, count, section));
    }
    List<Layer> layers = onTop(section.layers(), cloth, count, section);
    if (faces > 1) {
      layers = new ArrayList<>(layers);
      layers.add(0, ply(cloth, count, section));
    }
    return copy(section, layers, section.skins());
  }

  private static List<Layer> onTop(List<Layer> layers, Ref cloth, int count, Section section) {
    List<Layer> more = new ArrayList<>(layers);
    more.add(ply(cloth, count, section));
    return more;
  }

  private static Layer ply(Ref cloth, int count, Section section) {
    return new Layer(
        Optional.of(cloth),
        Optional.empty(),
        Optional.of(BigDecimal.valueOf(count)),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        section.at());
  }

  private Section grown(Section section, String dimension, Quantity more) {
    List<Layer> layers = new ArrayList<>();
    for (Layer layer : section.layers()) {
      layers.add(dimension.equals("core") && isCore(layer) ? thicker(layer, more) : layer);
    }
    List<Section.Member> members = new ArrayList<>();
    for (Section.Member member : section.members()) {
      members.add(member.what().equals(dimension) ? wider(member, more) : member);
    }
    Map<Ref, Quantity> dimensions = new LinkedHashMap<>();
    section
        .dimensions()
        .forEach(
            (name, value) ->
                dimensions.put(name, name.id().equals(dimension) ? value.plus(more) : value));
    return new Section(
        section.id(),
        section.what(),
        section.width(),
        layers,
        section.shape(),
        section.material(),
        dimensions,
        section.skins(),
        members,
        section.outline(),
        section.glue(),
        section.grade(),
        section.tapersTo(),
        section.notch(),
        section.at());
  }

  private boolean isCore(Layer layer) {
    return layer.material().flatMap(sorts).filter(Sort.CORE::equals).isPresent();
  }

  private static Layer thicker(Layer layer, Quantity more) {
    return new Layer(
        layer.material(),
        layer.thickness().map(thickness -> thickness.plus(more)),
        layer.plies(),
        layer.grain(),
        layer.angle(),
        layer.strips(),
        layer.at());
  }

  private static Section.Member wider(Section.Member member, Quantity more) {
    return new Section.Member(
        member.what(),
        member.material(),
        member.width().plus(more),
        member.at(),
        member.height(),
        member.place());
  }

  private static Section copy(Section section, List<Layer> layers, List<Layer> skins) {
    return new Section(
        section.id(),
        section.what(),
        section.width(),
        layers,
        section.shape(),
        section.material(),
        section.dimensions(),
        skins,
        section.members(),
        section.outline(),
        section.glue(),
        section.grade(),
        section.tapersTo(),
        section.notch(),
        section.at());
  }
}

package kitwright.assessment;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import kitwright.ledger.Section;
import kitwright.value.Quantity;
import kitwright.value.Unit;

/** A measure that a section states: a dimension by its name, or one that its layers add up to. */
final class SectionMeasure {
  private SectionMeasure() {}

  /**
   * The measure of that name.
   *
   * @param name a key of the section's dimensions, {@code width}, {@code thickness} or {@code
   *     height} (all layers together), {@code wall} (of a hollow box) or {@code plies}
   */
  static Optional<Quantity> of(Section section, String name) {
    Optional<Quantity> stated =
        section.dimensions().entrySet().stream()
            .filter(entry -> entry.getKey().id().equals(name))
            .map(java.util.Map.Entry::getValue)
            .findFirst();
    return stated
        .or(() -> ofMember(section, name))
        .or(() -> ofLayers(section, section.layers(), name))
        .or(() -> name.equals("plies") ? plies(section.skins()) : Optional.empty());
  }

  private static Optional<Quantity> ofMember(Section section, String name) {
    return section.members().stream()
        .filter(member -> member.what().equals(name))
        .map(Section.Member::width)
        .reduce(Quantity::min);
  }

  private static Optional<Quantity> ofLayers(
      Section section, List<Section.Layer> layers, String name) {
    if (layers.isEmpty()) {
      return Optional.empty();
    }
    return switch (name) {
      case "width" -> section.width();
      case "thickness", "height" -> sum(layers, Section.Layer::thickness);
      case "wall" -> wall(layers);
      case "plies" -> plies(layers);
      default -> Optional.empty();
    };
  }

  private static Optional<Quantity> plies(List<Section.Layer> layers) {
    return sum(
        layers.stream().filter(layer -> layer.plies().isPresent()).toList(),
        layer -> layer.plies().map(plies -> new Quantity(plies, Unit.ONE)));
  }

  /** Of a box the side walls count as well: the outermost strips of the layers between. */
  private static Optional<Quantity> wall(List<Section.Layer> layers) {
    Optional<Quantity> bottom = layers.get(0).thickness();
    Optional<Quantity> top = layers.get(layers.size() - 1).thickness();
    if (bottom.isEmpty() || top.isEmpty()) {
      return Optional.empty();
    }
    return Stream.concat(
            Stream.of(bottom.get(), top.get()),
            layers.stream()
                .filter(layer -> layer.strips().stream().anyMatch(Section.Strip::hollow))
                .flatMap(layer -> ends(layer.strips()))
                .filter(strip -> !strip.hollow())
                .map(Section.Strip::width))
        .reduce(Quantity::min);
  }

  private static Stream<Section.Strip> ends(List<Section.Strip> strips) {
    return Stream.of(strips.get(0), strips.get(strips.size() - 1));
  }

  private static Optional<Quantity> sum(
      List<Section.Layer> layers, Function<Section.Layer, Optional<Quantity>> measure) {
    if (layers.isEmpty() || layers.stream().anyMatch(layer -> measure.apply(layer).isEmpty())) {
      return Optional.empty();
    }
    return layers.stream().map(layer -> measure.apply(layer).orElseThrow()).reduce(Quantity::plus);
  }
}

package kitwright.assessment;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
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
   *     height} (all layers together), {@code wall} (the thinnest outer layer) or {@code plies}
   */
  static Optional<Quantity> of(Section section, String name) {
    Optional<Quantity> stated =
        section.dimensions().entrySet().stream()
            .filter(entry -> entry.getKey().id().equals(name))
            .map(java.util.Map.Entry::getValue)
            .findFirst();
    return stated.or(() -> ofLayers(section, name));
  }

  private static Optional<Quantity> ofLayers(Section section, String name) {
    List<Section.Layer> layers = section.layers();
    if (layers.isEmpty()) {
      return Optional.empty();
    }
    return switch (name) {
      case "width" -> section.width();
      case "thickness", "height" -> sum(layers, Section.Layer::thickness);
      case "wall" -> thinner(layers.get(0), layers.get(layers.size() - 1));
      case "plies" ->
          sum(
              layers.stream().filter(layer -> layer.plies().isPresent()).toList(),
              layer -> layer.plies().map(plies -> new Quantity(plies, Unit.ONE)));
      default -> Optional.empty();
    };
  }

  private static Optional<Quantity> thinner(Section.Layer bottom, Section.Layer top) {
    return bottom.thickness().flatMap(a -> top.thickness().map(a::min));
  }

  private static Optional<Quantity> sum(
      List<Section.Layer> layers, Function<Section.Layer, Optional<Quantity>> measure) {
    if (layers.isEmpty() || layers.stream().anyMatch(layer -> measure.apply(layer).isEmpty())) {
      return Optional.empty();
    }
    return layers.stream().map(layer -> measure.apply(layer).orElseThrow()).reduce(Quantity::plus);
  }
}

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
      case "wall" -> wall(layers);
      case "plies" ->
          sum(
              layers.stream().filter(layer -> layer.plies().isPresent()).toList(),
              layer -> layer.plies().map(plies -> new Quantity(plies, Unit.ONE)));
      default -> Optional.empty();
    };
  }

  /** The thinnest wall of a hollow box: its bottom and top layers, and its outermost strips. */
  private static Optional<Quantity> wall(List<Section.Layer> layers) {
    Stream<Optional<Quantity>> faces =
        Stream.of(layers.get(0), layers.get(layers.size() - 1)).map(Section.Layer::thickness);
    Stream<Optional<Quantity>> sides =
        layers.stream()
            .map(Section.Layer::strips)
            .filter(strips -> !strips.isEmpty())
            .flatMap(strips -> Stream.of(strips.get(0), strips.get(strips.size() - 1)))
            .map(strip -> strip.hollow() ? Optional.empty() : Optional.of(strip.width()));
    List<Optional<Quantity>> walls = Stream.concat(faces, sides).toList();
    return walls.stream().anyMatch(Optional::isEmpty)
        ? Optional.empty()
        : walls.stream().flatMap(Optional::stream).reduce(Quantity::min);
  }

  private static Optional<Quantity> sum(
      List<Section.Layer> layers, Function<Section.Layer, Optional<Quantity>> measure) {
    if (layers.isEmpty() || layers.stream().anyMatch(layer -> measure.apply(layer).isEmpty())) {
      return Optional.empty();
    }
    return layers.stream().map(layer -> measure.apply(layer).orElseThrow()).reduce(Quantity::plus);
  }
}

package kitwright.mechanics.beam;

import java.util.List;
import java.util.Optional;
import kitwright.mechanics.beam.BeamMaterial.Kind;

/** Recognises a plain sandwich: faces of full-width layers below and above one core. */
final class GridSandwich {
  private GridSandwich() {}

  static Optional<ThinFaces> of(List<Layer> layers, double width) {
    if (layers.stream().anyMatch(l -> l.strips().size() != 1)) {
      return Optional.empty();
    }
    var cores = layers.stream().filter(GridSandwich::core).toList();
    if (cores.size() != 1 || core(layers.get(0)) || core(layers.get(layers.size() - 1))) {
      return Optional.empty();
    }
    int at = layers.indexOf(cores.get(0));
    var lower = layers.subList(0, at);
    var upper = layers.subList(at + 1, layers.size());
    return Optional.of(
        new ThinFaces(
            width,
            stretch(lower),
            stretch(upper),
            thickness(lower),
            thickness(upper),
            cores.get(0).thickness(),
            material(cores.get(0)).shearModulus()));
  }

  private static BeamMaterial material(Layer layer) {
    return layer.strips().get(0).material().orElseThrow();
  }

  private static boolean core(Layer layer) {
    return material(layer).kind() == Kind.CORE;
  }

  private static double stretch(List<Layer> layers) {
    return layers.stream().mapToDouble(l -> l.thickness() * material(l).axial()).sum();
  }

  private static double thickness(List<Layer> layers) {
    return layers.stream().mapToDouble(Layer::thickness).sum();
  }
}

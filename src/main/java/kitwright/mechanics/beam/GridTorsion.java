package kitwright.mechanics.beam;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import kitwright.mechanics.beam.BeamMaterial.Kind;

/**
 * Torsion of a stack: Saint-Venant for a solid rectangle of one material, Bredt for walls that
 * close round a hollow or a core; otherwise not known.
 */
final class GridTorsion {
  private GridTorsion() {}

  /** GJ in N·m² and the greatest stresses. */
  record Known(OptionalDouble stiffness, List<Twisted> twisted) {
    static Known nothing() {
      return new Known(OptionalDouble.empty(), List.of());
    }
  }

  static Known of(List<Layer> layers) {
    var first = layers.get(0).strips().get(0);
    boolean one = layers.stream().flatMap(l -> l.strips().stream()).allMatch(s -> same(s, first));
    double width = layers.get(0).width();
    if (one && first.material().isPresent()) {
      double height = layers.stream().mapToDouble(Layer::thickness).sum();
      var material = first.material().orElseThrow();
      return new Known(
          OptionalDouble.of(material.shearModulus() * Torsion.rectangle(width, height)),
          List.of(
              new Twisted(
                  layers.get(0).where(), material, Torsion.rectangleStress(width, height))));
    }
    int low = walls(layers, 1);
    int high = walls(layers, -1);
    if (low == 0 || high == 0 || low + high >= layers.size()) {
      return Known.nothing();
    }
    var middle = layers.subList(low, layers.size() - high);
    if (!middle.stream().allMatch(GridTorsion::sided)) {
      return Known.nothing();
    }
    return closed(
        layers.subList(0, low), middle, layers.subList(layers.size() - high, layers.size()));
  }

  private static boolean same(Strip a, Strip b) {
    return a.material().equals(b.material());
  }

  /** How many full-width layers that are no core lie at the bottom (1) or the top (−1). */
  private static int walls(List<Layer> layers, int step) {
    int n = 0;
    int at = step > 0 ? 0 : layers.size() - 1;
    while (n < layers.size() && full(layers.get(at))) {
      n++;
      at += step;
    }
    return n;
  }

  private static boolean full(Layer layer) {
    return layer.strips().size() == 1 && wall(layer.strips().get(0));
  }

  private static boolean wall(Strip strip) {
    return strip.material().map(m -> m.kind() != Kind.CORE).orElse(false);
  }

  private static boolean sided(Layer layer) {
    var strips = layer.strips();
    return strips.size() > 2 && wall(strips.get(0)) && wall(strips.get(strips.size() - 1));
  }

  private static Known closed(List<Layer> bottom, List<Layer> middle, List<Layer> top) {
    double side = 0;
    double height = 0;
    double left = 0;
    double right = 0;
    for (var layer : middle) {
      var first = layer.strips().get(0);
      var last = layer.strips().get(layer.strips().size() - 1);
      height += layer.thickness();
      left += layer.thickness() * first.width();
      right += layer.thickness() * last.width();
      side += layer.thickness() * (flexible(first) + flexible(last));
    }
    double across = bottom.get(0).width() - (left + right) / height / 2;
    double up = height + (thickness(bottom) + thickness(top)) / 2;
    double round = side * up / height + across * (1 / stiff(bottom) + 1 / stiff(top));
    double cell = across * up;
    List<Twisted> twisted = new ArrayList<>();
    flat(bottom, cell, twisted);
    flat(top, cell, twisted);
    for (var layer : middle) {
      upright(layer, layer.strips().get(0), cell, twisted);
      upright(layer, layer.strips().get(layer.strips().size() - 1), cell, twisted);
    }
    return new Known(OptionalDouble.of(4 * cell * cell / round), twisted);
  }

  /** The flow T/(2·A) is shared by the plies of a wall as their G·t. */
  private static void flat(List<Layer> wall, double cell, List<Twisted> twisted) {
    double stiff = stiff(wall);
    for (var layer : wall) {
      var material = layer.strips().get(0).material().orElseThrow();
      double stress = material.shearModulus() / (2 * cell * stiff);
      twisted.add(new Twisted(layer.where(), material, stress, cell));
    }
  }

  private static void upright(Layer layer, Strip wall, double cell, List<Twisted> twisted) {
    var material = wall.material().orElseThrow();
    twisted.add(new Twisted(layer.where(), material, 1 / (2 * cell * wall.width()), cell));
  }

  private static double flexible(Strip strip) {
    return 1 / (strip.width() * strip.material().orElseThrow().shearModulus());
  }

  private static double thickness(List<Layer> layers) {
    return layers.stream().mapToDouble(Layer::thickness).sum();
  }

  private static double stiff(List<Layer> layers) {
    double sum = 0;
    for (var layer : layers) {
      sum += layer.thickness() * layer.strips().get(0).material().orElseThrow().shearModulus();
    }
    return sum;
  }
}

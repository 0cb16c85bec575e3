package kitwright.mechanics.beam;

import java.util.List;
import kitwright.mechanics.Refuse;

/**
 * A layer of a stack, made of strips from left to right.
 *
 * @param where what a person calls it: "layer 2"
 * @param thickness m
 * @param strips whose widths sum to the width of the section
 */
public record Layer(String where, double thickness, List<Strip> strips) {
  public Layer {
    Refuse.unlessPositive("thickness", thickness);
    strips = List.copyOf(strips);
    Refuse.unless(!strips.isEmpty(), "a layer has a strip");
  }

  /** m. */
  double width() {
    return strips.stream().mapToDouble(Strip::width).sum();
  }
}

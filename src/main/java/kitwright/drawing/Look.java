package kitwright.drawing;

import java.util.List;

/**
 * How a shape is drawn.
 *
 * @param fill of its area
 * @param stroke of its outline
 * @param width of the outline, in the drawing's units; 0 for none
 * @param dashes lengths of dash and gap in turn; empty for an unbroken line
 */
public record Look(Shade fill, Shade stroke, double width, List<Double> dashes) {
  public Look {
    if (!(width >= 0)) {
      throw new IllegalArgumentException("a line is never thinner than nothing: " + width);
    }
    dashes = List.copyOf(dashes);
  }

  /** A filled area without outline. */
  public static Look filled(Shade shade) {
    return new Look(shade, Shade.NONE, 0, List.of());
  }

  /** A black line, or the outline of an area without filling. */
  public static Look line(double width) {
    return new Look(Shade.NONE, Shade.BLACK, width, List.of());
  }

  /** The same with another filling. */
  public Look over(Shade shade) {
    return new Look(shade, stroke, width, dashes);
  }

  /** The same with an outline of that shade and width. */
  public Look edged(Shade shade, double thick) {
    return new Look(fill, shade, thick, dashes);
  }

  /** The same with a broken line. */
  public Look dashed(Double... lengths) {
    return new Look(fill, stroke, width, List.of(lengths));
  }
}

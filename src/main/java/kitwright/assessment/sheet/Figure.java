package kitwright.assessment.sheet;

import java.util.Optional;

/**
 * A measure of one part.
 *
 * @param value in the unit of its measure
 * @param governing what sets it: the mode of failure and where
 */
public record Figure(double value, Optional<String> governing) {
  public Figure {
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      throw new IllegalArgumentException("a figure is a number: " + value);
    }
  }

  /** A plain number. */
  public static Figure of(double value) {
    return new Figure(value, Optional.empty());
  }

  /** A number with what sets it. */
  public static Figure of(double value, String governing) {
    return new Figure(value, Optional.of(governing));
  }
}

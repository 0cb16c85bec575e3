package kitwright.mechanics.fastener;

import java.util.Optional;
import kitwright.mechanics.Refuse;

/**
 * A metric thread.
 *
 * @param diameter nominal, m
 * @param pitch m
 * @see "ISO 898-1:2013, 9.1.6.1: As = π/4·((d2 + d3)/2)², basic profile of ISO 68-1"
 */
public record MetricThread(double diameter, double pitch) {
  /** Coarse pitches of ISO 261, mm. */
  private static final double[][] COARSE = {
    {1.6, 0.35},
    {2, 0.4},
    {2.5, 0.45},
    {3, 0.5},
    {4, 0.7},
    {5, 0.8},
    {6, 1},
    {8, 1.25},
    {10, 1.5},
    {12, 1.75},
    {14, 2},
    {16, 2},
    {18, 2.5},
    {20, 2.5},
    {22, 2.5},
    {24, 3},
    {27, 3},
    {30, 3.5},
    {33, 3.5},
    {36, 4},
    {39, 4}
  };

  public MetricThread {
    Refuse.unlessPositive("diameter", diameter);
    Refuse.unlessPositive("pitch", pitch);
    Refuse.unless(pitch < diameter / 2, "a pitch is well below the diameter");
  }

  /** The coarse thread of a nominal diameter in mm, such as 8 for M8, if there is one. */
  public static Optional<MetricThread> coarse(double millimetres) {
    for (double[] row : COARSE) {
      if (row[0] == millimetres) {
        return Optional.of(new MetricThread(row[0] / 1000, row[1] / 1000));
      }
    }
    return Optional.empty();
  }

  /** Stress area, m². */
  public double stressArea() {
    double height = Math.sqrt(3) / 2 * pitch;
    double pitchDiameter = diameter - 3 * height / 4;
    double rootDiameter = diameter - 5 * height / 4 - height / 6;
    double mean = (pitchDiameter + rootDiameter) / 2;
    return Math.PI / 4 * mean * mean;
  }
}

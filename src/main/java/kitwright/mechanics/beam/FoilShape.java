package kitwright.mechanics.beam;

import java.util.ArrayList;
import java.util.List;
import kitwright.mechanics.Refuse;

/**
 * A symmetrical four-digit foil.
 *
 * @param chord m
 * @param thicknessRatio greatest thickness over chord, such as 0.12
 * @see "E. N. Jacobs, K. E. Ward, R. M. Pinkerton, NACA Report 460, 1933; I. H. Abbott, A. E. von
 *     Doenhoff, Theory of Wing Sections, 1959, section 6.4"
 */
public record FoilShape(double chord, double thicknessRatio) {
  private static final int STATIONS = 64;

  public FoilShape {
    Refuse.unlessPositive("chord", chord);
    Refuse.outside("thickness ratio", 0, 0.5, thicknessRatio);
  }

  /** Half the thickness in m at a distance from the leading edge in m. */
  public double halfThickness(double fromLeadingEdge) {
    double x = fromLeadingEdge / chord;
    Refuse.unless(x >= 0 && x <= 1, () -> "on the chord: " + fromLeadingEdge);
    double p = 0.2969 * Math.sqrt(x) + x * (-0.1260 + x * (-0.3516 + x * (0.2843 - x * 0.1015)));
    return 5 * thicknessRatio * chord * p;
  }

  /** The outline, leading edge at y = 0 and chord on z = 0; closer points towards the nose. */
  public Loop outline() {
    var points = new ArrayList<Point>();
    for (int i = STATIONS; i >= 0; i--) {
      points.add(new Point(station(i), halfThickness(station(i))));
    }
    for (int i = 1; i <= STATIONS; i++) {
      points.add(new Point(station(i), -halfThickness(station(i))));
    }
    return new Loop(List.copyOf(points));
  }

  private double station(int i) {
    return chord * (1 - Math.cos(Math.PI * i / STATIONS)) / 2;
  }
}

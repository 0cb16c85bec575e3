package kitwright.mechanics.beam;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The points with {@code ny·y + nz·z >= offset}; cuts convex outlines (Sutherland and Hodgman,
 * Communications of the ACM 17, 1974, 32–42).
 */
record HalfPlane(double ny, double nz, double offset) {

  private double inside(Point p) {
    return ny * p.y() + nz * p.z() - offset;
  }

  /** What is left of a convex loop, if anything. */
  Optional<Loop> clip(Loop loop) {
    return clip(loop.points()).filter(kept -> !degenerate(kept)).map(Loop::new);
  }

  private Optional<List<Point>> clip(List<Point> points) {
    var kept = new ArrayList<Point>(points.size() + 1);
    for (int i = 0; i < points.size(); i++) {
      var a = points.get(i);
      var b = points.get((i + 1) % points.size());
      double da = inside(a);
      double db = inside(b);
      if (da >= 0) {
        kept.add(a);
      }
      if (da * db < 0) {
        double s = da / (da - db);
        kept.add(new Point(a.y() + s * (b.y() - a.y()), a.z() + s * (b.z() - a.z())));
      }
    }
    return kept.size() < 3 ? Optional.empty() : Optional.of(kept);
  }

  /** Whether what is left encloses nothing. */
  static boolean degenerate(List<Point> points) {
    return Math.abs(2 * Loop.signedArea(points)) < 1e-14;
  }
}

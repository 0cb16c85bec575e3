package kitwright.mechanics.beam;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A convex outline that is cut down side by side, in plain rows of numbers: scratch space, local to
 * one calculation. A foil has more than a hundred sides, and each cut looks at every corner.
 */
final class Clipped {
  private double[] y;
  private double[] z;
  private double[] keptY;
  private double[] keptZ;
  private int size;

  private Clipped(List<Point> points) {
    size = points.size();
    y = points.stream().mapToDouble(Point::y).toArray();
    z = points.stream().mapToDouble(Point::z).toArray();
    keptY = new double[2 * size];
    keptZ = new double[2 * size];
  }

  /** The loop with every side moved inwards by the depth, if anything is left; exact if convex. */
  static Optional<Loop> inset(Loop loop, double depth) {
    var points = loop.points();
    var left = new Clipped(points);
    for (int i = 0; i < points.size(); i++) {
      var a = points.get(i);
      var b = points.get(i + 1 == points.size() ? 0 : i + 1);
      double length = Math.hypot(b.y() - a.y(), b.z() - a.z());
      if (length == 0) {
        continue;
      }
      double ny = -(b.z() - a.z()) / length;
      double nz = (b.y() - a.y()) / length;
      if (!left.cut(ny, nz, ny * a.y() + nz * a.z() + depth)) {
        return Optional.empty();
      }
    }
    return Optional.of(left.loop());
  }

  /** Keeps what {@link HalfPlane} keeps; false where nothing is left. */
  private boolean cut(double ny, double nz, double offset) {
    if (keptY.length < 2 * size) {
      keptY = new double[4 * size];
      keptZ = new double[4 * size];
    }
    int n = 0;
    double first = ny * y[0] + nz * z[0] - offset;
    double at = first;
    for (int i = 0; i < size; i++) {
      int next = i + 1 == size ? 0 : i + 1;
      double then = next == 0 ? first : ny * y[next] + nz * z[next] - offset;
      if (at >= 0) {
        keptY[n] = y[i];
        keptZ[n++] = z[i];
      }
      if (at * then < 0) {
        double s = at / (at - then);
        keptY[n] = y[i] + s * (y[next] - y[i]);
        keptZ[n++] = z[i] + s * (z[next] - z[i]);
      }
      at = then;
    }
    return n >= 3 && keep(n);
  }

  private boolean keep(int n) {
    double[] wasY = y;
    double[] wasZ = z;
    y = keptY;
    z = keptZ;
    keptY = wasY;
    keptZ = wasZ;
    boolean same = n == size;
    size = n;
    return same || !(Math.abs(twiceArea()) < 1e-14);
  }

  private double twiceArea() {
    double sum = 0;
    int last = size - 1;
    for (int i = 0; i < size; i++) {
      sum += y[last] * z[i] - y[i] * z[last];
      last = i;
    }
    return sum;
  }

  private Loop loop() {
    var points = new ArrayList<Point>(size);
    for (int i = 0; i < size; i++) {
      points.add(new Point(y[i], z[i]));
    }
    return new Loop(points);
  }
}

package kitwright.mechanics.beam;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A convex outline that is cut down side by side, in plain rows of numbers: scratch space, local to
 * one calculation. A foil has more than a hundred sides, and each cut looks at every corner.
 */
final class Clipped {
  private double[] y;
  private double[] z;
  private double[] inside;
  private int size;

  private Clipped(List<Point> points) {
    size = points.size();
    y = points.stream().mapToDouble(Point::y).toArray();
    z = points.stream().mapToDouble(Point::z).toArray();
    inside = new double[2 * size];
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
    return Math.abs(left.twiceArea()) < 1e-14 ? Optional.empty() : Optional.of(left.loop());
  }

  /** Keeps what {@link HalfPlane} keeps; false where nothing is left. */
  private boolean cut(double ny, double nz, double offset) {
    if (inside.length < size) {
      inside = new double[2 * size];
    }
    for (int i = 0; i < size; i++) {
      inside[i] = ny * y[i] + nz * z[i] - offset;
    }
    int from = 0;
    while (from < size && inside[from] >= 0) {
      from++;
    }
    int to = from;
    while (to < size && inside[to] < 0) {
      to++;
    }
    int rest = to;
    while (rest < size && inside[rest] >= 0) {
      rest++;
    }
    if (from == size) {
      return true;
    }
    int before = from == 0 ? size - 1 : from - 1;
    boolean row = rest == size && inside[before] > 0 && inside[to == size ? 0 : to] > 0;
    return row ? corner(from, to) : pick();
  }

  /** One corner cut off, its points in a row: two new ones take their place. */
  private boolean corner(int from, int to) {
    int before = from == 0 ? size - 1 : from - 1;
    int after = to == size ? 0 : to;
    room(size + 1);
    double one = inside[before] / (inside[before] - inside[from]);
    double oneY = y[before] + one * (y[from] - y[before]);
    double oneZ = z[before] + one * (z[from] - z[before]);
    double other = inside[to - 1] / (inside[to - 1] - inside[after]);
    double otherY = y[to - 1] + other * (y[after] - y[to - 1]);
    double otherZ = z[to - 1] + other * (z[after] - z[to - 1]);
    int shift = from == 0 ? 1 : from + 2;
    System.arraycopy(y, to, y, shift, size - to);
    System.arraycopy(z, to, z, shift, size - to);
    size += from + 2 - to;
    // Cut off at the front of the row, the side before it now ends the row.
    int last = from == 0 ? size - 1 : from;
    y[last] = oneY;
    z[last] = oneZ;
    y[shift - 1] = otherY;
    z[shift - 1] = otherZ;
    return true;
  }

  private void room(int points) {
    if (y.length < points) {
      y = Arrays.copyOf(y, 2 * points);
      z = Arrays.copyOf(z, 2 * points);
    }
  }

  private boolean pick() {
    double[] keptY = new double[2 * size];
    double[] keptZ = new double[2 * size];
    int n = 0;
    for (int i = 0; i < size; i++) {
      int next = i + 1 == size ? 0 : i + 1;
      if (inside[i] >= 0) {
        keptY[n] = y[i];
        keptZ[n++] = z[i];
      }
      if (inside[i] * inside[next] < 0) {
        double s = inside[i] / (inside[i] - inside[next]);
        keptY[n] = y[i] + s * (y[next] - y[i]);
        keptZ[n++] = z[i] + s * (z[next] - z[i]);
      }
    }
    y = keptY;
    z = keptZ;
    size = n;
    return n >= 3;
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

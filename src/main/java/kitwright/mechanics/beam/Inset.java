package kitwright.mechanics.beam;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A convex outline with every side moved inwards. Its sides turn one way all round, so one walk
 * finds what is left: each side takes the corners off both ends of the row that lie outside it.
 * Scratch space, local to one calculation.
 */
final class Inset {
  private static final double TOUCHING = 1e-12;

  private final List<Point> corners;
  private final double depth;
  private final double touching;

  /** Inward normals of the sides, and their offsets: a point is inside where n·p is not below. */
  private final double[] ny;

  private final double[] nz;
  private final double[] offset;

  /** The sides kept, from {@link #head} to before {@link #tail}, and each one's far corner. */
  private final int[] row;

  private final double[] farY;
  private final double[] farZ;
  private int head;
  private int tail;

  private Inset(List<Point> corners, double depth, double touching) {
    this.corners = corners;
    this.depth = depth;
    this.touching = touching;
    int sides = corners.size();
    ny = new double[sides];
    nz = new double[sides];
    offset = new double[sides];
    row = new int[sides];
    farY = new double[sides];
    farZ = new double[sides];
  }

  /** The loop with every side moved inwards by the depth, if anything is left; exact if convex. */
  static Optional<Loop> of(Loop loop, double depth) {
    Bounds box = loop.bounds();
    double size = Math.max(box.maxY() - box.minY(), box.maxZ() - box.minZ());
    List<Point> corners = new ArrayList<>();
    for (Point point : loop.points()) {
      if (corners.isEmpty() || !point.equals(corners.get(corners.size() - 1))) {
        corners.add(point);
      }
    }
    if (corners.get(0).equals(corners.get(corners.size() - 1))) {
      corners.remove(corners.size() - 1);
    }
    return new Inset(corners, depth, TOUCHING * size).walk();
  }

  private Optional<Loop> walk() {
    for (int side = 0; side < corners.size(); side++) {
      place(side);
      cutBack(side, 1);
      while (tail - head >= 2 && outside(side, head)) {
        head++;
      }
      if (tail > head && !meet(tail - 1, side)) {
        return Optional.empty();
      }
      row[tail++] = side;
    }
    cutBack(row[head], 2);
    while (tail - head > 2 && outside(row[tail - 1], head)) {
      head++;
    }
    if (tail - head < 3 || !meet(tail - 1, row[head])) {
      return Optional.empty();
    }
    return closed();
  }

  private void place(int side) {
    Point a = corners.get(side);
    Point b = corners.get(after(side));
    double length = Math.hypot(b.y() - a.y(), b.z() - a.z());
    ny[side] = -(b.z() - a.z()) / length;
    nz[side] = (b.y() - a.y()) / length;
    offset[side] = ny[side] * a.y() + nz[side] * a.z() + depth;
  }

  private int after(int side) {
    return side + 1 == corners.size() ? 0 : side + 1;
  }

  private void cutBack(int side, int least) {
    while (tail - head > least && outside(side, tail - 2)) {
      tail--;
    }
  }

  private boolean outside(int side, int corner) {
    return ny[side] * farY[corner] + nz[side] * farZ[corner] < offset[side] - touching;
  }

  /** Puts the corner between a side of the row and another; false where they do not close. */
  private boolean meet(int place, int other) {
    int side = row[place];
    if (other == after(side)) {
      // Neighbours meet on the line that halves their corner, however little it turns.
      Point corner = corners.get(other);
      double reach = depth / (1 + ny[side] * ny[other] + nz[side] * nz[other]);
      farY[place] = corner.y() + reach * (ny[side] + ny[other]);
      farZ[place] = corner.z() + reach * (nz[side] + nz[other]);
      return true;
    }
    double turn = ny[side] * nz[other] - nz[side] * ny[other];
    farY[place] = (offset[side] * nz[other] - offset[other] * nz[side]) / turn;
    farZ[place] = (ny[side] * offset[other] - ny[other] * offset[side]) / turn;
    return turn > 0;
  }

  /** What is left, unless a side runs backwards: then nothing is. */
  private Optional<Loop> closed() {
    List<Point> points = new ArrayList<>(tail - head);
    int before = tail - 1;
    for (int i = head; i < tail; i++) {
      double along = (farY[i] - farY[before]) * nz[row[i]] - (farZ[i] - farZ[before]) * ny[row[i]];
      if (along < -touching) {
        return Optional.empty();
      }
      points.add(new Point(farY[i], farZ[i]));
      before = i;
    }
    return HalfPlane.degenerate(points) ? Optional.empty() : Optional.of(new Loop(points));
  }
}

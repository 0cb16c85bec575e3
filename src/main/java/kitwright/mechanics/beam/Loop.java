package kitwright.mechanics.beam;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import kitwright.mechanics.Refuse;

/** A closed polygon, its points anticlockwise, the last joined to the first. */
public record Loop(List<Point> points) {
  public Loop {
    Refuse.unless(points.size() >= 3, "an outline has three points or more");
    double area = signedArea(points);
    Refuse.unless(area != 0, "an outline encloses something");
    points = area > 0 ? List.copyOf(points) : reversed(points);
  }

  /** m². */
  public double area() {
    return signedArea(points);
  }

  /** m. */
  public double perimeter() {
    double sum = 0;
    var a = points.get(points.size() - 1);
    for (var b : points) {
      sum += Math.hypot(b.y() - a.y(), b.z() - a.z());
      a = b;
    }
    return sum;
  }

  /** Whether every corner turns the same way. */
  public boolean convex() {
    double straight = -1e-9 * area();
    var a = points.get(points.size() - 2);
    var b = points.get(points.size() - 1);
    for (var c : points) {
      double turn = (b.y() - a.y()) * (c.z() - b.z()) - (b.z() - a.z()) * (c.y() - b.y());
      if (turn < straight) {
        return false;
      }
      a = b;
      b = c;
    }
    return true;
  }

  /**
   * Whether it goes round what it encloses once: no side crosses another, and nothing is gone round
   * twice or the wrong way. A slit that leads to a hollow and back is no fault.
   */
  public boolean simple() {
    var box = bounds();
    double near = 1e-7 * (box.width() + box.height());
    for (int i = 0; i < points.size(); i++) {
      var a = points.get(i);
      var b = at(i + 1);
      for (int j = i + 1; j < points.size(); j++) {
        if (crosses(a, b, points.get(j), at(j + 1))) {
          return false;
        }
      }
      double length = Math.hypot(b.y() - a.y(), b.z() - a.z());
      double y = (a.y() + b.y()) / 2;
      double z = (a.z() + b.z()) / 2;
      double ny = -(b.z() - a.z()) / length * near;
      double nz = (b.y() - a.y()) / length * near;
      if (length > 0 && !(once(y + ny, z + nz) && once(y - ny, z - nz))) {
        return false;
      }
    }
    return true;
  }

  private Point at(int i) {
    return points.get(i % points.size());
  }

  private static boolean crosses(Point a, Point b, Point c, Point d) {
    return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
  }

  private static double side(Point a, Point b, Point c) {
    return Math.signum((b.y() - a.y()) * (c.z() - a.z()) - (b.z() - a.z()) * (c.y() - a.y()));
  }

  /** Whether a point lies outside, or is gone round once. */
  private boolean once(double y, double z) {
    int turns = 0;
    for (int i = 0; i < points.size(); i++) {
      var a = points.get(i);
      var b = at(i + 1);
      double left = (b.y() - a.y()) * (z - a.z()) - (b.z() - a.z()) * (y - a.y());
      if (a.z() <= z && b.z() > z && left > 0) {
        turns++;
      } else if (a.z() > z && b.z() <= z && left < 0) {
        turns--;
      }
    }
    return turns == 0 || turns == 1;
  }

  Bounds bounds() {
    double minY = Double.POSITIVE_INFINITY;
    double maxY = Double.NEGATIVE_INFINITY;
    double minZ = Double.POSITIVE_INFINITY;
    double maxZ = Double.NEGATIVE_INFINITY;
    for (var p : points) {
      minY = Math.min(minY, p.y());
      maxY = Math.max(maxY, p.y());
      minZ = Math.min(minZ, p.z());
      maxZ = Math.max(maxZ, p.z());
    }
    return new Bounds(minY, maxY, minZ, maxZ);
  }

  Moments moments() {
    double a = 0;
    double y = 0;
    double z = 0;
    double yy = 0;
    double zz = 0;
    double yz = 0;
    var p = points.get(points.size() - 1);
    for (var q : points) {
      double cross = p.y() * q.z() - q.y() * p.z();
      a += cross / 2;
      y += cross * (p.y() + q.y()) / 6;
      z += cross * (p.z() + q.z()) / 6;
      yy += cross * (p.y() * p.y() + p.y() * q.y() + q.y() * q.y()) / 12;
      zz += cross * (p.z() * p.z() + p.z() * q.z() + q.z() * q.z()) / 12;
      yz += cross * (p.y() * (2 * p.z() + q.z()) + q.y() * (p.z() + 2 * q.z())) / 24;
      p = q;
    }
    return new Moments(a, y, z, yy, zz, yz);
  }

  Loop turned() {
    return new Loop(points.stream().map(Point::turned).toList());
  }

  static double signedArea(List<Point> points) {
    double sum = 0;
    var p = points.get(points.size() - 1);
    for (var q : points) {
      sum += p.y() * q.z() - q.y() * p.z();
      p = q;
    }
    return sum / 2;
  }

  private static List<Point> reversed(List<Point> points) {
    var list = new ArrayList<>(points);
    Collections.reverse(list);
    return List.copyOf(list);
  }
}

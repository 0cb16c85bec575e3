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
    for (int i = 0; i < points.size(); i++) {
      var a = points.get(i);
      var b = points.get((i + 1) % points.size());
      sum += Math.hypot(b.y() - a.y(), b.z() - a.z());
    }
    return sum;
  }

  /** Whether every corner turns the same way. */
  public boolean convex() {
    int n = points.size();
    for (int i = 0; i < n; i++) {
      var a = points.get(i);
      var b = points.get((i + 1) % n);
      var c = points.get((i + 2) % n);
      double turn = (b.y() - a.y()) * (c.z() - b.z()) - (b.z() - a.z()) * (c.y() - b.y());
      if (turn < -1e-9 * area()) {
        return false;
      }
    }
    return true;
  }

  Bounds bounds() {
    var first = points.get(0);
    var box = new Bounds(first.y(), first.y(), first.z(), first.z());
    for (var p : points) {
      box = box.with(new Bounds(p.y(), p.y(), p.z(), p.z()));
    }
    return box;
  }

  Moments moments() {
    double a = 0;
    double y = 0;
    double z = 0;
    double yy = 0;
    double zz = 0;
    double yz = 0;
    for (int i = 0; i < points.size(); i++) {
      var p = points.get(i);
      var q = points.get((i + 1) % points.size());
      double cross = p.y() * q.z() - q.y() * p.z();
      a += cross / 2;
      y += cross * (p.y() + q.y()) / 6;
      z += cross * (p.z() + q.z()) / 6;
      yy += cross * (p.y() * p.y() + p.y() * q.y() + q.y() * q.y()) / 12;
      zz += cross * (p.z() * p.z() + p.z() * q.z() + q.z() * q.z()) / 12;
      yz += cross * (p.y() * (2 * p.z() + q.z()) + q.y() * (p.z() + 2 * q.z())) / 24;
    }
    return new Moments(a, y, z, yy, zz, yz);
  }

  Loop turned() {
    return new Loop(points.stream().map(Point::turned).toList());
  }

  Loop moved(double byY, double byZ) {
    return new Loop(points.stream().map(p -> p.moved(byY, byZ)).toList());
  }

  private static double signedArea(List<Point> points) {
    double sum = 0;
    for (int i = 0; i < points.size(); i++) {
      var p = points.get(i);
      var q = points.get((i + 1) % points.size());
      sum += p.y() * q.z() - q.y() * p.z();
    }
    return sum / 2;
  }

  private static List<Point> reversed(List<Point> points) {
    var list = new ArrayList<>(points);
    Collections.reverse(list);
    return List.copyOf(list);
  }
}

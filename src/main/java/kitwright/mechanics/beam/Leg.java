package kitwright.mechanics.beam;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kitwright.mechanics.beam.BeamMaterial.Kind;

/**
 * A leg or wall of a polygon that is drawn by its corners: a run of its outline, and how far the
 * other side is.
 *
 * @param length of a straight side, or of sides that turn less than 30° one to the next, m
 * @param thickness to the other side, a mean over the run, m
 * @param closed whether it goes round a hollow, and is held at both its edges
 */
public record Leg(double length, double thickness, boolean closed) {
  private static final double STRAIGHT = Math.cos(Math.toRadians(30));

  /** What is half as thick as the whole is low is the body itself, no leg of it. */
  private static final double BODY = 0.5;

  private static final double NEAR = 1e-9;

  /** The one that is longest for its thickness; nothing of a convex solid, which has none. */
  public static Optional<Leg> slimmest(Section section) {
    return section.regions().stream()
        .filter(Outline.class::isInstance)
        .map(Outline.class::cast)
        .filter(one -> one.holes().isEmpty() && !one.outer().convex())
        .flatMap(one -> of(one).stream())
        .max(Comparator.comparingDouble(leg -> leg.length / leg.thickness));
  }

  /** The stress at which it buckles, if all of it is pressed evenly, Pa; empty if not known. */
  public java.util.OptionalDouble buckling(BeamMaterial material) {
    Support held = closed ? new Support.OverGap(length) : new Support.Outstanding(length);
    return Skin.of(List.of(0), List.of(new Skin.Leaf(material, thickness)), held).buckling();
  }

  /** What the material bears in compression, by its modulus of rupture if it is judged by that. */
  public static java.util.OptionalDouble bears(Section section, BeamMaterial material) {
    return material.kind() == Kind.TIMBER && section.solidTimber()
        ? material.strength().bending()
        : material.strength().compression();
  }

  private static List<Leg> of(Outline outline) {
    Loop loop = outline.outer();
    Bounds box = loop.bounds();
    double body = BODY * Math.min(box.width(), box.height());
    List<Leg> legs = new ArrayList<>();
    List<Point> points = loop.points();
    int first = corner(points);
    double length = 0;
    double area = 0;
    for (int i = 0; i < points.size(); i++) {
      int side = first + i;
      double long_ = distance(points, side);
      length += long_;
      area += long_ * across(points, side);
      if (turns(points, side)) {
        legs.add(new Leg(length, area / length, outline.hollow()));
        length = 0;
        area = 0;
      }
    }
    if (length > 0) {
      legs.add(new Leg(length, area / length, outline.hollow()));
    }
    legs.removeIf(leg -> !(leg.thickness < body));
    return legs;
  }

  /** A side that begins at a corner. */
  private static int corner(List<Point> points) {
    for (int i = 0; i < points.size(); i++) {
      if (turns(points, i)) {
        return i + 1;
      }
    }
    return 0;
  }

  private static Point at(List<Point> points, int i) {
    return points.get(i % points.size());
  }

  private static double distance(List<Point> points, int side) {
    Point a = at(points, side);
    Point b = at(points, side + 1);
    return Math.hypot(b.y() - a.y(), b.z() - a.z());
  }

  /** Whether the next side goes another way. */
  private static boolean turns(List<Point> points, int side) {
    Point a = at(points, side);
    Point b = at(points, side + 1);
    Point c = at(points, side + 2);
    double along = (b.y() - a.y()) * (c.y() - b.y()) + (b.z() - a.z()) * (c.z() - b.z());
    return along < STRAIGHT * distance(points, side) * distance(points, side + 1);
  }

  /** From the middle of a side straight inwards to the next side. */
  private static double across(List<Point> points, int side) {
    Point a = at(points, side);
    Point b = at(points, side + 1);
    double length = distance(points, side);
    double ny = -(b.z() - a.z()) / length;
    double nz = (b.y() - a.y()) / length;
    double y = (a.y() + b.y()) / 2;
    double z = (a.z() + b.z()) / 2;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < points.size(); i++) {
      Point p = at(points, i);
      Point q = at(points, i + 1);
      double dy = q.y() - p.y();
      double dz = q.z() - p.z();
      double square = ny * dz - nz * dy;
      double far = ((p.y() - y) * dz - (p.z() - z) * dy) / square;
      double share = ((p.y() - y) * nz - (p.z() - z) * ny) / square;
      if (far > NEAR * length && share >= -NEAR && share <= 1 + NEAR) {
        least = Math.min(least, far);
      }
    }
    return least;
  }
}

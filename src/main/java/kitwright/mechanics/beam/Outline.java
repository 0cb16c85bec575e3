package kitwright.mechanics.beam;

import java.util.List;

/** A polygon with holes; its properties by Green's theorem, exact for straight sides. */
public record Outline(String where, BeamMaterial material, Loop outer, List<Loop> holes)
    implements Region {
  public Outline {
    holes = List.copyOf(holes);
  }

  @Override
  public Moments moments() {
    var sum = outer.moments();
    for (var hole : holes) {
      sum = sum.plus(hole.moments(), -1);
    }
    return sum;
  }

  @Override
  public Bounds bounds() {
    return outer.bounds();
  }

  @Override
  public List<Point> corners() {
    return outer.points();
  }

  @Override
  public void cut(Cut cut) {
    double[] areaBelow = new double[cut.levels.length + 1];
    double[] firstBelow = new double[cut.levels.length + 1];
    sides(cut, outer, 1, areaBelow, firstBelow);
    for (var hole : holes) {
      sides(cut, hole, -1, areaBelow, firstBelow);
    }
    double area = 0;
    double first = 0;
    for (int i = cut.levels.length - 1; i >= 0; i--) {
      area += areaBelow[i + 1];
      first += firstBelow[i + 1];
      cut.area[i] += area;
      cut.first[i] += first;
    }
  }

  private static void sides(Cut cut, Loop loop, int sign, double[] areas, double[] firsts) {
    var points = loop.points();
    var a = points.get(points.size() - 1);
    int from = cut.from(a.z());
    for (var b : points) {
      int to = cut.from(b.z());
      if (a.z() < b.z()) {
        side(cut, a, from, b, to, sign, areas, firsts);
      } else if (a.z() > b.z()) {
        side(cut, b, to, a, from, -sign, areas, firsts);
      }
      a = b;
      from = to;
    }
  }

  /** One side from low to high: the strip between it and the z axis, counted with its sign. */
  private static void side(
      Cut cut, Point low, int from, Point high, int to, int sign, double[] areas, double[] firsts) {
    double slope = (high.y() - low.y()) / (high.z() - low.z());
    for (int i = from; i < to; i++) {
      double z = cut.levels[i];
      double y = low.y() + slope * (z - low.z());
      cut.width[i] += sign * y;
      cut.area[i] += sign * area(y, z, high);
      cut.first[i] += sign * first(y, z, high);
    }
    areas[from] += sign * area(low.y(), low.z(), high);
    firsts[from] += sign * first(low.y(), low.z(), high);
  }

  private static double area(double y, double z, Point high) {
    return (high.z() - z) * (high.y() + y) / 2;
  }

  private static double first(double y, double z, Point high) {
    double middle = (y + high.y()) / 2 * (z + high.z()) / 2;
    return (high.z() - z) / 6 * (y * z + 4 * middle + high.y() * high.z());
  }

  @Override
  public Region turned() {
    return new Outline(where, material, outer.turned(), holes.stream().map(Loop::turned).toList());
  }

  @Override
  public boolean hollow() {
    return !holes.isEmpty() || isKeyhole();
  }

  /** Drawn round a hole by way of a slit: it comes twice by the same corner. */
  private boolean isKeyhole() {
    return outer.points().stream().distinct().count() < outer.points().size();
  }
}

package kitwright.mechanics.beam;

import java.util.List;
import java.util.stream.IntStream;
import kitwright.mechanics.Refuse;

/**
 * A round bar, or a tube.
 *
 * @param y of the centre, m
 * @param z of the centre, m
 * @param outer radius, m
 * @param inner radius, m; nought for a bar
 */
public record Ring(
    String where, BeamMaterial material, double y, double z, double outer, double inner)
    implements Region {
  private static final int CORNERS = 720;

  public Ring {
    Refuse.unlessFinite("y", y);
    Refuse.unlessFinite("z", z);
    Refuse.unlessPositive("outer radius", outer);
    Refuse.ifNegative("inner radius", inner);
    Refuse.unless(inner < outer, () -> "a tube has a wall: inner " + inner + ", outer " + outer);
  }

  @Override
  public Moments moments() {
    double area = Math.PI * (outer * outer - inner * inner);
    double own = Math.PI * (Math.pow(outer, 4) - Math.pow(inner, 4)) / 4;
    return Moments.symmetric(area, own, own, y, z);
  }

  @Override
  public Bounds bounds() {
    return new Bounds(y - outer, y + outer, z - outer, z + outer);
  }

  /** Of a polygon round it, to 1e-5 of the radius. */
  @Override
  public List<Point> corners() {
    return IntStream.range(0, CORNERS)
        .mapToObj(i -> 2 * Math.PI * i / CORNERS)
        .map(a -> new Point(y + outer * Math.cos(a), z + outer * Math.sin(a)))
        .toList();
  }

  @Override
  public void cut(Cut cut) {
    disc(cut, outer, 1);
    if (inner > 0) {
      disc(cut, inner, -1);
    }
  }

  private void disc(Cut cut, double radius, int sign) {
    for (int i = 0; i < cut.levels.length; i++) {
      double h = Math.max(-radius, Math.min(radius, cut.levels[i] - z));
      double half = Math.sqrt(radius * radius - h * h);
      double area = radius * radius * Math.acos(h / radius) - h * half;
      cut.area[i] += sign * area;
      cut.first[i] += sign * (2 * half * half * half / 3 + area * z);
      cut.width[i] += sign * 2 * half;
    }
  }

  @Override
  public Region turned() {
    return new Ring(where, material, z, y, outer, inner);
  }

  @Override
  public boolean hollow() {
    return inner > 0;
  }
}

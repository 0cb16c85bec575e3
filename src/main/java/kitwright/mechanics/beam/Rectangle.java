package kitwright.mechanics.beam;

import java.util.List;
import kitwright.mechanics.Refuse;

/**
 * A rectangle with its sides along the axes.
 *
 * @param y its left edge, m
 * @param z its lower edge, m
 * @param width along y, m
 * @param height along z, m
 */
public record Rectangle(
    String where, BeamMaterial material, double y, double z, double width, double height)
    implements Region {
  public Rectangle {
    Refuse.unlessFinite("y", y);
    Refuse.unlessFinite("z", z);
    Refuse.unlessPositive("width", width);
    Refuse.unlessPositive("thickness", height);
  }

  @Override
  public Moments moments() {
    double area = width * height;
    return Moments.symmetric(
        area,
        area * width * width / 12,
        area * height * height / 12,
        y + width / 2,
        z + height / 2);
  }

  @Override
  public Bounds bounds() {
    return new Bounds(y, y + width, z, z + height);
  }

  @Override
  public List<Point> corners() {
    double right = y + width;
    double top = z + height;
    return List.of(new Point(y, z), new Point(right, z), new Point(right, top), new Point(y, top));
  }

  @Override
  public void cut(Cut cut) {
    double top = z + height;
    for (int i = 0; i < cut.levels.length && cut.levels[i] < top; i++) {
      double bottom = Math.max(cut.levels[i], z);
      cut.area[i] += width * (top - bottom);
      cut.first[i] += width * (top - bottom) * (top + bottom) / 2;
      if (cut.levels[i] > z) {
        cut.width[i] += width;
      }
    }
  }

  @Override
  public Region turned() {
    return new Rectangle(where, material, z, y, height, width);
  }

  @Override
  public boolean hollow() {
    return false;
  }
}

package kitwright.mechanics.beam;

import kitwright.mechanics.Refuse;

/** A point of the section, metres. */
public record Point(double y, double z) {
  public Point {
    Refuse.unlessFinite("y", y);
    Refuse.unlessFinite("z", z);
  }

  Point turned() {
    return new Point(z, y);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Point that
        && Double.compare(y, that.y) == 0
        && Double.compare(z, that.z) == 0;
  }

  @Override
  public int hashCode() {
    int hash = Double.hashCode(y);
    hash = 31 * hash + Double.hashCode(z);
    return hash;
  }
}

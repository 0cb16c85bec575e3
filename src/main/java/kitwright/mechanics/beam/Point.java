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
}

package kitwright.mechanics.beam;

/** A box in the plane of the section, metres. */
public record Bounds(double minY, double maxY, double minZ, double maxZ) {
  public double width() {
    return maxY - minY;
  }

  public double height() {
    return maxZ - minZ;
  }

  Bounds with(Bounds other) {
    return new Bounds(
        Math.min(minY, other.minY),
        Math.max(maxY, other.maxY),
        Math.min(minZ, other.minZ),
        Math.max(maxZ, other.maxZ));
  }
}

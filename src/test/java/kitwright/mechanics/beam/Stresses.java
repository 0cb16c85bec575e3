package kitwright.mechanics.beam;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import kitwright.mechanics.beam.BeamMaterial.Kind;

/**
 * Stresses as a check takes them: what a limit has per unit of the action, of sections whose
 * strengths are all 1 Pa.
 */
final class Stresses {
  private Stresses() {}

  /**
   * Bending stress at the edges of one region, tension positive.
   *
   * @param lower height of its lower edge, m
   * @param upper height of its upper edge, m
   * @param atLower Pa
   * @param atUpper Pa
   */
  record Edges(double lower, double upper, double atLower, double atUpper) {}

  /** At the edges of every region under a moment in N·m, sagging positive. */
  static List<Edges> of(Section section, double moment) {
    return section.regions().stream().map(region -> edges(section, region, moment)).toList();
  }

  private static Edges edges(Section section, Region region, double moment) {
    Bounds box = region.bounds();
    double y = (box.minY() + box.maxY()) / 2;
    return new Edges(
        box.minZ(),
        box.maxZ(),
        at(section, region.material(), new Point(y, box.minZ()), moment),
        at(section, region.material(), new Point(y, box.maxZ()), moment));
  }

  /** At a point, by the limit of a speck of the material there. */
  static double at(Section section, BeamMaterial material, Point point, double moment) {
    double small = 1e-14 * section.bounds().height();
    BeamMaterial weak =
        new BeamMaterial("speck", Kind.METAL, 1, material.elastic(), Made.strength(1, 1, 1));
    List<Region> regions = new ArrayList<>(section.regions());
    regions.add(new Rectangle("speck", weak, point.y(), point.z(), small, small));
    List<Limit> limits = Bending.of(Section.of(regions)).moment(Sense.SAGGING).limits();
    return limits.stream()
        .filter(limit -> limit.where().equals("speck"))
        .mapToDouble(
            limit -> limit.mode() == FailureMode.TENSION ? limit.perUnit() : -limit.perUnit())
        .map(stress -> stress * moment)
        .findFirst()
        .orElse(0);
  }

  /** The greatest shear stress under a force in N. */
  static double shear(Section section, double force) {
    return weak(section).shear().limits().get(0).perUnit() * force;
  }

  /** The greatest in a region or on a glue line. */
  static double shear(Section section, String where, double force) {
    return weak(section).shear().limits().stream()
            .filter(limit -> limit.where().equals(where))
            .mapToDouble(Limit::perUnit)
            .max()
            .orElseThrow()
        * force;
  }

  private static Bending weak(Section section) {
    return Bending.of(
        new Section(
            section.regions().stream().map(Stresses::weak).toList(),
            section.bonds().stream().map(Stresses::weak).toList(),
            List.of(),
            OptionalDouble.empty(),
            Optional.empty()));
  }

  private static Region weak(Region region) {
    if (region instanceof Rectangle one) {
      return new Rectangle(
          one.where(), weak(one.material()), one.y(), one.z(), one.width(), one.height());
    }
    Ring ring = (Ring) region;
    return new Ring(
        ring.where(), weak(ring.material()), ring.y(), ring.z(), ring.outer(), ring.inner());
  }

  private static Bond weak(Bond bond) {
    return new Bond(
        bond.where(), bond.from(), bond.to(), weak(bond.one()), weak(bond.other()), bond.glue());
  }

  private static BeamMaterial weak(BeamMaterial material) {
    return new BeamMaterial(
        material.name(),
        material.kind(),
        material.lay(),
        material.density(),
        material.elastic(),
        Made.strength(1, 1, 1));
  }
}

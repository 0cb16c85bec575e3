package kitwright.mechanics.beam;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import kitwright.mechanics.Refuse;

/**
 * A hollow polygon of one material whose sides each have a wall of their own, such as a box with
 * sloping sides.
 *
 * @see "Bredt: J = 4·A²/Σ(s/t) along the middle of the walls; S. P. Timoshenko, J. N. Goodier,
 *     Theory of Elasticity, 3rd ed., 1970, section 116"
 */
final class Walled {
  /** As thick against the cell as {@link Shapes#staves} takes. */
  private static final double BREDT = 0.03;

  private final BeamMaterial material;
  private final Loop outer;
  private final double[] walls;

  /**
   * @param corners in order round it, either way
   * @param walls of the side from each corner to the next, m
   */
  private Walled(BeamMaterial material, List<Point> corners, List<Double> walls) {
    this.material = material;
    outer = new Loop(corners);
    int sides = corners.size();
    boolean turned = !outer.points().get(0).equals(corners.get(0));
    this.walls = new double[sides];
    for (int i = 0; i < sides; i++) {
      int side = turned ? (2 * sides - 2 - i) % sides : i;
      this.walls[i] = Refuse.unlessPositive("wall", walls.get(side));
    }
  }

  static Section of(BeamMaterial material, List<Point> corners, List<Double> walls) {
    return new Walled(material, corners, walls).section();
  }

  private Section section() {
    Refuse.unless(outer.convex(), "a hollow polygon turns one way all round");
    Loop hole = inward(1);
    Loop middle = inward(0.5);
    double round = 0;
    double thickest = 0;
    double thinnest = Double.POSITIVE_INFINITY;
    List<Skin> flats = new ArrayList<>();
    for (int i = 0; i < walls.length; i++) {
      round += side(middle, i) / walls[i];
      thickest = Math.max(thickest, walls[i]);
      thinnest = Math.min(thinnest, walls[i]);
      flats.add(Skin.overGap(material, walls[i], side(hole, i)));
    }
    var region = new Outline("wall", material, outer, List.of(hole));
    double slender = thickest * middle.perimeter() / (4 * middle.area());
    if (slender * slender > BREDT) {
      return new Section(
          List.of(region), List.of(), flats, OptionalDouble.empty(), Optional.empty());
    }
    double cell = middle.area();
    return new Section(
        List.of(region),
        List.of(),
        flats,
        OptionalDouble.of(material.shearModulus() * 4 * cell * cell / round),
        List.of(new Twisted("wall", material, 1 / (2 * cell * thinnest), cell)),
        Optional.empty());
  }

  private static double side(Loop loop, int i) {
    var a = loop.points().get(i);
    var b = loop.points().get((i + 1) % loop.points().size());
    return Math.hypot(b.y() - a.y(), b.z() - a.z());
  }

  /** Each side moved inwards by a share of its wall; every side must be left. */
  private Loop inward(double share) {
    var points = outer.points();
    int sides = walls.length;
    List<Point> met = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      met.add(meet((i + sides - 1) % sides, i, share));
    }
    for (int i = 0; i < sides; i++) {
      var a = points.get(i);
      var b = points.get((i + 1) % sides);
      var c = met.get(i);
      var d = met.get((i + 1) % sides);
      double along = (b.y() - a.y()) * (d.y() - c.y()) + (b.z() - a.z()) * (d.z() - c.z());
      Refuse.unless(along > 0, "the walls leave no hollow");
    }
    return new Loop(met);
  }

  /** Where two neighbouring sides meet, both moved inwards. */
  private Point meet(int one, int other, double share) {
    double[] first = line(one, share);
    double[] second = line(other, share);
    double turn = first[0] * second[1] - first[1] * second[0];
    Refuse.unless(turn > 0, "two sides of a hollow polygon lie in one line");
    return new Point(
        (first[2] * second[1] - second[2] * first[1]) / turn,
        (first[0] * second[2] - second[0] * first[2]) / turn);
  }

  /** Inward normal and offset of a side. */
  private double[] line(int side, double share) {
    var points = outer.points();
    var a = points.get(side);
    var b = points.get((side + 1) % points.size());
    double length = Math.hypot(b.y() - a.y(), b.z() - a.z());
    double ny = -(b.z() - a.z()) / length;
    double nz = (b.y() - a.y()) / length;
    return new double[] {ny, nz, ny * a.y() + nz * a.z() + share * walls[side]};
  }
}

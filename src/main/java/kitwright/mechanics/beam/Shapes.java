package kitwright.mechanics.beam;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import kitwright.mechanics.Refuse;

/** Sections of one material by their dimensions in m, the origin at the bottom left corner. */
public final class Shapes {
  /** What Bredt's formula may miss of the stiffness of a thick wall. */
  private static final double BREDT = 0.03;

  private Shapes() {}

  public static Section rectangle(BeamMaterial material, double width, double height) {
    return LayeredSection.ofWidth(width).layer(material, height).section();
  }

  /** A round bar of a diameter. */
  public static Section round(BeamMaterial material, double diameter) {
    return ring("bar", material, diameter, 0);
  }

  /** A round tube of an outer diameter and a wall. */
  public static Section tube(BeamMaterial material, double diameter, double wall) {
    Refuse.unlessPositive("wall", wall);
    Refuse.unless(
        2 * wall < diameter, () -> "a tube has a bore: wall " + wall + ", over " + diameter);
    return ring("tube", material, diameter, diameter / 2 - wall);
  }

  private static Section ring(String where, BeamMaterial material, double diameter, double bore) {
    double r = Refuse.unlessPositive("diameter", diameter) / 2;
    var ring = new Ring(where, material, r, r, r, bore);
    double polar = Math.PI / 2 * (Math.pow(r, 4) - Math.pow(bore, 4));
    var torsion = OptionalDouble.of(material.shearModulus() * polar);
    double wall = r - bore;
    List<Skin> walls =
        bore > 0
            ? List.of(
                Skin.of(
                    List.of(0),
                    List.of(new Skin.Leaf(material, wall)),
                    new Support.Round(r - wall / 2)))
            : List.of();
    return new Section(
        List.of(ring),
        List.of(),
        walls,
        torsion,
        List.of(new Twisted(where, material, r / polar)),
        Optional.empty());
  }

  /** An I of equal flanges; torsion as thin open walls, ΣG·b·t³/3. */
  public static Section iBeam(
      BeamMaterial material, double width, double height, double web, double flange) {
    Refuse.unless(web < width && 2 * flange < height, "the web is inside the I");
    var side = Strip.gap((width - web) / 2);
    var middle = List.of(side, Strip.of(web, material), side);
    var plain =
        LayeredSection.ofWidth(width)
            .add(new Layer("lower flange", flange, List.of(Strip.of(width, material))))
            .add(new Layer("web", height - 2 * flange, middle))
            .add(new Layer("upper flange", flange, List.of(Strip.of(width, material))))
            .section();
    double j = (2 * width * Math.pow(flange, 3) + (height - 2 * flange) * Math.pow(web, 3)) / 3;
    return new Section(
        plain.regions(),
        plain.bonds(),
        plain.skins(),
        OptionalDouble.of(material.shearModulus() * j),
        List.of(new Twisted("flange", material, flange / j), new Twisted("web", material, web / j)),
        Optional.empty());
  }

  /** Any polygon of one material. */
  public static Section polygon(BeamMaterial material, Loop outline) {
    return Section.of(List.of(new Outline("polygon", material, outline, List.of())));
  }

  /**
   * A hollow polygon of staves of one thickness, such as a mast. Its torsion is Bredt's along the
   * middle of the wall, as long as that is within 3 %: (t/2ρ)² of a round tube, ρ the middle
   * radius.
   *
   * @throws IllegalArgumentException if the outline is not convex or no hollow is left
   */
  public static Section staves(BeamMaterial material, Loop outline, double wall) {
    Refuse.unlessPositive("wall", wall);
    Refuse.unless(outline.convex(), "a hollow polygon turns one way all round");
    var hole =
        Inset.of(outline, wall)
            .orElseThrow(() -> new IllegalArgumentException("the walls leave no hollow"));
    var middle = Inset.of(outline, wall / 2).orElseThrow();
    var region = new Outline("wall", material, outline, List.of(hole));
    double slender = wall * middle.perimeter() / (4 * middle.area());
    if (slender * slender > BREDT) {
      return new Section(
          List.of(region),
          List.of(),
          flats(material, hole, wall),
          OptionalDouble.empty(),
          Optional.empty());
    }
    double stiff = Torsion.closed(middle.area(), middle.perimeter(), wall, material.shearModulus());
    return new Section(
        List.of(region),
        List.of(),
        flats(material, hole, wall),
        OptionalDouble.of(stiff),
        List.of(new Twisted("wall", material, 1 / (2 * middle.area() * wall), middle.area())),
        Optional.empty());
  }

  /**
   * A hollow polygon whose sides have each a wall of their own, such as a box with sloping sides.
   *
   * @param walls of the side from each corner to the next, m
   * @throws IllegalArgumentException if the outline is not convex or no hollow is left
   */
  public static Section walled(BeamMaterial material, List<Point> corners, List<Double> walls) {
    return Walled.of(material, corners, walls);
  }

  /** Each flat side may buckle between its neighbours; the widest goes first. */
  private static List<Skin> flats(BeamMaterial material, Loop hole, double wall) {
    double widest = 0;
    var a = hole.points().get(hole.points().size() - 1);
    for (var b : hole.points()) {
      widest = Math.max(widest, Math.hypot(b.y() - a.y(), b.z() - a.z()));
      a = b;
    }
    return List.of(
        Skin.of(List.of(0), List.of(new Skin.Leaf(material, wall)), new Support.OverGap(widest)));
  }
}

package kitwright.mechanics.beam;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import kitwright.mechanics.Refuse;
import kitwright.mechanics.beam.BeamMaterial.Kind;

/**
 * A foil or another convex outline with skins, a core or a hollow, and internal members.
 *
 * @param outline the finished shape, convex
 * @param skins from the outside inwards
 * @param filling what lies between skins and members; empty for a hollow
 * @param members spine and webs, which reach from skin to skin
 */
public record FoilSection(
    Loop outline, List<Ply> skins, Optional<BeamMaterial> filling, List<Member> members) {

  /** A skin of even thickness, m. */
  public record Ply(BeamMaterial material, double thickness) {
    public Ply {
      Refuse.unlessPositive("skin thickness", thickness);
    }
  }

  /** An upright member from one y to another, m. */
  public record Member(String where, BeamMaterial material, double fromY, double toY) {
    public Member {
      Refuse.unless(fromY < toY, () -> where + " has a width");
    }
  }

  public FoilSection {
    skins = List.copyOf(skins);
    members = members.stream().sorted(Comparator.comparingDouble(Member::fromY)).toList();
    Refuse.unless(outline.convex(), "an outline with skins is convex");
    var box = outline.bounds();
    double end = box.minY();
    for (var member : members) {
      Refuse.unless(member.fromY() >= end, () -> member.where() + " overlaps, or starts outside");
      Refuse.unless(member.toY() <= box.maxY(), () -> member.where() + " is wider than the chord");
      end = member.toY();
    }
  }

  /** The section in the outline's own axes; bend it {@link Section#turned()} for edgewise loads. */
  public Section section() {
    var regions = new ArrayList<Region>();
    var left = outline;
    double depth = 0;
    for (int i = 0; i < skins.size(); i++) {
      depth += skins.get(i).thickness();
      int at = i;
      var inner =
          Inset.of(outline, depth)
              .orElseThrow(
                  () -> new IllegalArgumentException("skin " + (at + 1) + " does not fit"));
      var where = skins.size() == 1 ? "skin" : "skin " + (i + 1);
      regions.add(new Outline(where, skins.get(i).material(), left, List.of(inner)));
      left = inner;
    }
    fill(left, regions);
    Refuse.unless(!regions.isEmpty(), "a foil is made of something");
    return new Section(regions, List.of(), faces(), torsion(), twisted(), Optional.empty());
  }

  private void fill(Loop inside, List<Region> regions) {
    double from = inside.bounds().minY();
    for (var member : members) {
      core(inside, from, member.fromY(), regions);
      between(inside, member.fromY(), member.toY())
          .ifPresent(
              loop -> regions.add(new Outline(member.where(), member.material(), loop, List.of())));
      from = member.toY();
    }
    core(inside, from, inside.bounds().maxY(), regions);
  }

  private void core(Loop inside, double from, double to, List<Region> regions) {
    if (filling.isPresent() && to > from) {
      between(inside, from, to)
          .ifPresent(
              loop -> regions.add(new Outline("core", filling.orElseThrow(), loop, List.of())));
    }
  }

  private static Optional<Loop> between(Loop loop, double from, double to) {
    return new HalfPlane(1, 0, from).clip(loop).flatMap(new HalfPlane(-1, 0, -to)::clip);
  }

  private List<Skin> faces() {
    if (skins.isEmpty()) {
      return List.of();
    }
    var plies = IntStream.range(0, skins.size()).boxed().toList();
    var leaves = skins.stream().map(p -> new Skin.Leaf(p.material(), p.thickness())).toList();
    return support().map(s -> Skin.of(plies, leaves, s)).stream().toList();
  }

  private Optional<Support> support() {
    if (filling.isPresent()) {
      return filling.filter(f -> f.kind() == Kind.CORE).map(Support.OnCore::new);
    }
    double widest = 0;
    double from = outline.bounds().minY();
    for (var member : members) {
      widest = Math.max(widest, member.fromY() - from);
      from = member.toY();
    }
    return Optional.of(new Support.OverGap(Math.max(widest, outline.bounds().maxY() - from)));
  }

  private List<Twisted> twisted() {
    double thickness = skins.stream().mapToDouble(Ply::thickness).sum();
    double stiff =
        skins.stream().mapToDouble(p -> p.thickness() * p.material().shearModulus()).sum();
    return skins.isEmpty()
        ? List.of()
        : Inset.of(outline, thickness / 2).stream()
            .flatMap(
                middle ->
                    skins.stream()
                        .map(
                            ply ->
                                new Twisted(
                                    "skin",
                                    ply.material(),
                                    ply.material().shearModulus() / (2 * middle.area() * stiff),
                                    middle.area())))
            .toList();
  }

  /** Bredt for the skins round one cell; what webs and a core add is left out. */
  private OptionalDouble torsion() {
    if (skins.isEmpty()) {
      return OptionalDouble.empty();
    }
    double thickness = skins.stream().mapToDouble(Ply::thickness).sum();
    var middle = Inset.of(outline, thickness / 2);
    if (middle.isEmpty()) {
      return OptionalDouble.empty();
    }
    double shear =
        skins.stream().mapToDouble(p -> p.thickness() * p.material().shearModulus()).sum();
    var loop = middle.orElseThrow();
    return OptionalDouble.of(
        Torsion.closed(loop.area(), loop.perimeter(), thickness, shear / thickness));
  }
}

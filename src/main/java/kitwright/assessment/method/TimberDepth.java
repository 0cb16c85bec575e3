package kitwright.assessment.method;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import kitwright.assessment.part.Part;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Step;
import kitwright.assessment.sheet.Working;
import kitwright.mechanics.beam.BeamMaterial;
import kitwright.mechanics.beam.Bending;
import kitwright.mechanics.beam.Bounds;
import kitwright.mechanics.beam.Limit;
import kitwright.mechanics.beam.Sense;
import kitwright.mechanics.timber.Replacement;

/**
 * How deep or how broad a timber must be in place of another: stiffness goes with E·b·h³, strength
 * in bending with f·b·h². A hollow one keeps the proportions of its walls.
 */
public final class TimberDepth {
  private final Part designed;
  private final Part built;
  private final double depth;
  private final double breadth;
  private final double wide;
  private final List<Step> steps = new ArrayList<>();

  private TimberDepth(Part designed, Part built) {
    this.designed = designed;
    this.built = built;
    Bounds drawn = designed.beam().bounds();
    Bounds made = built.beam().bounds();
    depth = drawn.maxZ() - drawn.minZ();
    breadth = drawn.maxY() - drawn.minY();
    wide = made.maxY() - made.minY();
  }

  /** The working; empty unless each part is of one timber, and they differ. */
  public static Optional<Working> of(Part designed, Part built) {
    boolean swapped =
        Stream.of(designed, built).allMatch(TimberDepth::isOneTimber)
            && !material(designed).equals(material(built));
    return swapped ? Optional.of(new TimberDepth(designed, built).working()) : Optional.empty();
  }

  private static boolean isOneTimber(Part part) {
    BeamMaterial first = material(part);
    return first.kind() == BeamMaterial.Kind.TIMBER
        && part.beam().regions().stream().allMatch(region -> region.material().equals(first));
  }

  private static BeamMaterial material(Part part) {
    return part.beam().regions().get(0).material();
  }

  private Working working() {
    String walls = isSolid() ? "" : ", walls in proportion";
    double e1 = material(designed).axial();
    double e2 = material(built).axial();
    OptionalDouble f1 = strength(designed);
    OptionalDouble f2 = strength(built);
    Replacement swap = new Replacement(e1, f1.orElse(1), e2, f2.orElse(1));
    deep("equal stiffness", walls, "E", e1, e2, "⅓", swap.depthForStiffness());
    broad("equal stiffness", walls, "E", e1, e2);
    if (f1.isPresent() && f2.isPresent()) {
      double one = f1.getAsDouble();
      double other = f2.getAsDouble();
      deep("equal strength in bending", walls, "f", one, other, "½", swap.depthForStrength());
      broad("equal strength in bending", walls, "f", one, other);
    }
    Bounds made = built.beam().bounds();
    steps.add(
        new Step(
            "as built",
            "",
            "",
            Print.mm((made.maxZ() - made.minZ())) + " deep, " + Print.mm(wide) + " broad"));
    return new Working(
        "how deep " + material(built).name() + " must be in place of " + material(designed).name(),
        List.of(),
        List.of(),
        steps);
  }

  private boolean isSolid() {
    return designed.beam().solidTimber() && built.beam().solidTimber();
  }

  /** What sets the weaker way to bend it: the modulus of rupture, or tension or compression. */
  private static OptionalDouble strength(Part part) {
    Bending bending = Bending.of(part.beam());
    return Stream.of(Sense.values())
        .flatMap(sense -> bending.moment(sense).governing().stream())
        .min(Comparator.comparingDouble(Limit::capacity))
        .map(limit -> OptionalDouble.of(limit.allowable()))
        .orElseGet(OptionalDouble::empty);
  }

  private void deep(
      String aim,
      String walls,
      String letter,
      double one,
      double other,
      String root,
      double share) {
    String over = "(" + letter + "₁/" + letter + "₂)^" + root;
    steps.add(
        new Step(
            "depth for " + aim + ", as broad as drawn" + walls,
            "h = h₁·" + over,
            Print.mm(depth) + " · (" + mpa(one) + " / " + mpa(other) + ")^" + root,
            Print.mm(depth * share)));
    boolean otherBreadth = Math.abs(wide - breadth) > 1e-6 && isSolid();
    if (otherBreadth) {
      double power = root.equals("½") ? 1 / 2.0 : 1 / 3.0;
      steps.add(
          new Step(
              "depth for " + aim + ", as broad as built",
              "h = h₁·(" + letter + "₁·b₁/(" + letter + "₂·b₂))^" + root,
              Print.mm(depth)
                  + " · ("
                  + mpa(one)
                  + " · "
                  + Print.mm(breadth)
                  + " / ("
                  + mpa(other)
                  + " · "
                  + Print.mm(wide)
                  + "))^"
                  + root,
              Print.mm(depth * share * Math.pow(breadth / wide, power))));
    }
  }

  private void broad(String aim, String walls, String letter, double one, double other) {
    steps.add(
        new Step(
            "breadth for " + aim + ", as deep as drawn" + walls,
            "b = b₁·" + letter + "₁/" + letter + "₂",
            Print.mm(breadth) + " · " + mpa(one) + " / " + mpa(other),
            Print.mm(breadth * one / other)));
  }

  private static String mpa(double pascal) {
    return Print.with(pascal / 1e6, "MPa");
  }
}

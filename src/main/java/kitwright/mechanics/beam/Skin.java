package kitwright.mechanics.beam;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import kitwright.mechanics.Refuse;
import kitwright.mechanics.beam.BeamMaterial.Flat;
import kitwright.mechanics.beam.BeamMaterial.Kind;

/**
 * A thin face or wall that can buckle by itself.
 *
 * @param plies indices of its regions in the section
 * @param thickness of all plies together, m
 * @param modulus mean Young's modulus along the beam, Pa
 * @param flat what it is in its plane, a mean of its plies; empty where one of them is not known
 * @param wood whether all of it is wood
 * @param support what holds it
 */
public record Skin(
    List<Integer> plies,
    double thickness,
    double modulus,
    Optional<Flat> flat,
    boolean wood,
    Support support) {
  public Skin {
    plies = List.copyOf(plies);
    Refuse.unless(!plies.isEmpty(), "a skin has a ply");
    Refuse.unlessPositive("skin thickness", thickness);
    Refuse.unlessPositive("skin modulus", modulus);
  }

  /** A ply of a face: so thick, m. */
  record Leaf(BeamMaterial material, double thickness) {}

  /** Of plies by their index. */
  static Skin of(List<Integer> plies, List<Leaf> leaves, Support support) {
    double thickness = leaves.stream().mapToDouble(Leaf::thickness).sum();
    double stiff = leaves.stream().mapToDouble(l -> l.thickness() * l.material().axial()).sum();
    boolean wood = leaves.stream().allMatch(l -> l.material().kind() == Kind.TIMBER);
    return new Skin(plies, thickness, stiff / thickness, mean(leaves, thickness), wood, support);
  }

  /** A flat wall of one material, held at both sides of a gap; m. */
  public static Skin overGap(BeamMaterial material, double thickness, double gap) {
    return of(List.of(0), List.of(new Leaf(material, thickness)), new Support.OverGap(gap));
  }

  private static Optional<Flat> mean(List<Leaf> leaves, double thickness) {
    double across = 0;
    double coupled = 0;
    double shear = 0;
    for (Leaf leaf : leaves) {
      Optional<Flat> flat = leaf.material().elastic().flat();
      if (flat.isEmpty()) {
        return Optional.empty();
      }
      double share = leaf.thickness() / thickness;
      across += share * flat.get().across();
      coupled += share * flat.get().poisson() * flat.get().across();
      shear += share * flat.get().shear();
    }
    return Optional.of(new Flat(across, coupled / across, shear));
  }

  /** D of the face as a plate, N·m. */
  record Plate(double d11, double d12, double d22, double d66) {}

  Optional<Plate> plate() {
    return flat.map(
        one -> {
          double cube = thickness * thickness * thickness / 12;
          double both = 1 - one.poisson() * one.poisson() * one.across() / modulus;
          return new Plate(
              modulus * cube / both,
              one.poisson() * one.across() * cube / both,
              one.across() * cube / both,
              one.shear() * cube);
        });
  }

  /** What the skin does when it goes. */
  public FailureMode mode() {
    return support.mode();
  }

  /** The same where the whole section is pushed evenly. */
  public OptionalDouble axialBuckling() {
    return support.evenly(this);
  }

  /** The shear stress that it bears at least before it buckles, Pa; empty if not known. */
  public OptionalDouble sheared() {
    return support.sheared(this);
  }

  /** The compressive stress at which it buckles, Pa; empty where a value is not known. */
  public OptionalDouble buckling() {
    return support.stress(this);
  }
}

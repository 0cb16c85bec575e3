package kitwright.mechanics.beam;

import java.util.List;
import java.util.OptionalDouble;
import kitwright.mechanics.Refuse;

/**
 * A thin face that can buckle by itself.
 *
 * @param plies indices of its regions in the section
 * @param thickness of all plies together, m
 * @param modulus mean Young's modulus along the beam, Pa
 * @param support what holds it
 */
public record Skin(List<Integer> plies, double thickness, double modulus, Support support) {
  public Skin {
    plies = List.copyOf(plies);
    Refuse.unless(!plies.isEmpty(), "a skin has a ply");
    Refuse.unlessPositive("skin thickness", thickness);
    Refuse.unlessPositive("skin modulus", modulus);
  }

  /** What the skin does when it goes. */
  public FailureMode mode() {
    return support.match(core -> FailureMode.WRINKLING, gap -> FailureMode.DIMPLING);
  }

  /**
   * The compressive stress at which it buckles, Pa; empty where the core's stiffness through its
   * thickness is unknown.
   *
   * <p>On a core 0.5·(Ef·Ec·Gc)^⅓: Lloyd's Register, Rules for Special Service Craft, July 2022,
   * Part 8, Chapter 7, 3.2.2. Over a gap 2·Ef·(t/s)²: MIL-HDBK-23A (from memory, not verified),
   * with Poisson's effect left out, which is on the safe side; a long plate strip held at both
   * sides has 3.29 in place of 2 (Timoshenko and Gere, Theory of Elastic Stability, 2nd ed., 1961,
   * section 9.2).
   */
  public OptionalDouble buckling() {
    return support.match(
        core -> wrinkling(core), gap -> OptionalDouble.of(2 * modulus * square(thickness / gap)));
  }

  private OptionalDouble wrinkling(BeamMaterial core) {
    var through = core.elastic().through();
    return through.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(0.5 * Math.cbrt(modulus * through.getAsDouble() * core.shearModulus()));
  }

  private static double square(double x) {
    return x * x;
  }
}

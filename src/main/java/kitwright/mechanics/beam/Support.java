package kitwright.mechanics.beam;

import java.util.OptionalDouble;
import kitwright.mechanics.Refuse;
import kitwright.mechanics.beam.Missing.Property;

/** What keeps a thin face or wall from buckling. */
public sealed interface Support {
  /** What the face does when it goes. */
  FailureMode mode();

  /** The compressive stress at which it goes, Pa; empty where a value is not known. */
  OptionalDouble stress(Skin face);

  /** The same where the whole section is pushed evenly, not bent. */
  default OptionalDouble evenly(Skin face) {
    return stress(face);
  }

  /**
   * The shear stress that it bears at least before it buckles, Pa; endless where shear alone does
   * not make it buckle, empty where a value is not known.
   */
  OptionalDouble sheared(Skin face);

  /** The value that is not known where there is no stress. */
  default Property needs() {
    return Property.ACROSS_MODULUS;
  }

  /**
   * Held by a core all along: 0.5·(Ef·Ec·Gc)^⅓.
   *
   * @see "Lloyd's Register, Rules for Special Service Craft, July 2022, Part 8, Chapter 7, 3.2.2"
   */
  record OnCore(BeamMaterial core) implements Support {
    @Override
    public FailureMode mode() {
      return FailureMode.WRINKLING;
    }

    @Override
    public OptionalDouble stress(Skin face) {
      var through = core.elastic().through();
      return through.isEmpty()
          ? OptionalDouble.empty()
          : OptionalDouble.of(
              0.5 * Math.cbrt(face.modulus() * through.getAsDouble() * core.shearModulus()));
    }

    /** Shear pushes at 45° as hard as it shears. */
    @Override
    public OptionalDouble sheared(Skin face) {
      return stress(face);
    }

    @Override
    public Property needs() {
      return Property.THROUGH_THICKNESS_MODULUS;
    }
  }

  /**
   * Held at both sides of a gap, whose width is in m, free to turn there: a long plate, N =
   * 2·(π/b)²·(√(D₁₁·D₂₂) + D₁₂ + 2·D₆₆), which for a plate that is the same every way is 4·π²·D/b².
   *
   * @see "A. Johnson, Structural Component Design Techniques, 6.2, read by way of public code that
   *     quotes it; held to the least of the plate’s equation over all waves by a test"
   */
  record OverGap(double width) implements Support {
    public OverGap {
      Refuse.unlessPositive("gap", width);
    }

    @Override
    public FailureMode mode() {
      return FailureMode.DIMPLING;
    }

    @Override
    public OptionalDouble stress(Skin face) {
      return face.plate()
          .map(
              plate ->
                  OptionalDouble.of(
                      2
                          * square(Math.PI / width)
                          * (Math.sqrt(plate.d11() * plate.d22()) + plate.d12() + 2 * plate.d66())
                          / face.thickness()))
          .orElseGet(OptionalDouble::empty);
    }

    /**
     * N = 4·k·∜(D₁₁·D₂₂³)/b², k from 13.17 where D₁₂ + 2·D₆₆ is √(D₁₁·D₂₂) or more down to 8.125
     * where it is nothing: the line between both lies below Seydel’s values. For a plate that is
     * the same every way 5.34·π²·D/b².
     *
     * @see "E. Seydel, 1933, by way of S. P. Timoshenko, J. M. Gere, Theory of Elastic Stability,
     *     2nd ed., 1961, section 9.9 (from memory); 5.34: AISC 360 and EN 1993-1-5, A.3; held to
     *     the plate’s equation by a test"
     */
    @Override
    public OptionalDouble sheared(Skin face) {
      return face.plate()
          .map(
              plate -> {
                double alike = Math.sqrt(plate.d11() * plate.d22());
                double twist = Math.min(1, (plate.d12() + 2 * plate.d66()) / alike);
                double k = 8.125 + (13.17 - 8.125) * twist;
                double least = Math.sqrt(alike) * Math.sqrt(plate.d22());
                return OptionalDouble.of(4 * k * least / square(width) / face.thickness());
              })
          .orElseGet(OptionalDouble::empty);
    }
  }

  /**
   * A flange held along one side and free at the other, its width in m: of wood 0.044·E·(t/b)², of
   * what else G·(t/b)², what a free strip bears before it twists.
   *
   * @see "Wood Handbook FPL-GTR-282, eq. 9-31 (Trayer and March, 1931); S. P. Timoshenko, J. M.
   *     Gere, Theory of Elastic Stability, 2nd ed., 1961, section 5.4"
   */
  record Outstanding(double width) implements Support {
    private static final double WOOD = 0.044;

    public Outstanding {
      Refuse.unlessPositive("flange", width);
    }

    @Override
    public FailureMode mode() {
      return FailureMode.FLANGE_BUCKLING;
    }

    @Override
    public OptionalDouble stress(Skin face) {
      double slender = square(face.thickness() / width);
      if (face.wood()) {
        return OptionalDouble.of(WOOD * face.modulus() * slender);
      }
      return face.flat()
          .map(flat -> OptionalDouble.of(flat.shear() * slender))
          .orElseGet(OptionalDouble::empty);
    }

    /** Its free edge bears none. */
    @Override
    public OptionalDouble sheared(Skin face) {
      return OptionalDouble.of(Double.POSITIVE_INFINITY);
    }
  }

  /**
   * The wall of a tube in bending, its middle radius in m: γ times what {@link RoundWall} bears, γ
   * = 1 − 0.731·(1 − e^−φ), φ = √(r/t)/16, for walls thicker than 1/1500 of the radius.
   *
   * @see "NASA SP-8007, Buckling of Thin-Walled Circular Cylinders, 1965, rev. 1968, eq. 3 and 8,
   *     read by way of public code that quotes it"
   */
  record Round(double radius) implements Support {
    private static final double THINNEST = 1500;

    public Round {
      Refuse.unlessPositive("radius", radius);
    }

    @Override
    public FailureMode mode() {
      return FailureMode.WALL_BUCKLING;
    }

    @Override
    public OptionalDouble stress(Skin face) {
      return stress(face, 0.731);
    }

    /** γ = 1 − 0.901·(1 − e^−φ) where it is pushed evenly. */
    @Override
    public OptionalDouble evenly(Skin face) {
      return stress(face, 0.901);
    }

    private OptionalDouble stress(Skin face, double share) {
      double slender = radius / face.thickness();
      if (slender > THINNEST) {
        return OptionalDouble.empty();
      }
      double knock = 1 - share * (1 - Math.exp(-Math.sqrt(slender) / 16));
      return face.flat()
          .map(flat -> knock * new RoundWall(face, flat, radius).stress())
          .filter(stress -> stress > 0) // no number of moduli that contradict one another
          .map(OptionalDouble::of)
          .orElseGet(OptionalDouble::empty);
    }

    /**
     * That of a long tube, which is the least: α·E/4·(t/r)^1.5, α = 0.96/(1 + √(r/t)/32) for dents;
     * E as ∜(E·E₂³) where it is another across.
     *
     * @see "EN 1993-1-6, D.40, D.46 to D.49, class C, read 2026-11-30 in public code that names
     *     them; the modulus of what is unlike both ways by the bending of a ring, no source"
     */
    @Override
    public OptionalDouble sheared(Skin face) {
      double slender = radius / face.thickness();
      if (slender > THINNEST || face.flat().isEmpty()) {
        return OptionalDouble.empty();
      }
      double dents = 0.96 / (1 + Math.sqrt(slender) / 32);
      double ring = Math.min(face.modulus(), face.flat().get().across());
      double modulus = Math.pow(face.modulus(), 0.25) * Math.pow(ring, 0.75);
      return OptionalDouble.of(dents * modulus / 4 / Math.pow(slender, 1.5));
    }

    @Override
    public Property needs() {
      return Property.WALL;
    }
  }

  private static double square(double x) {
    return x * x;
  }
}

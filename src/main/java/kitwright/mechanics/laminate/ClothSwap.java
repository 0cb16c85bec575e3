package kitwright.mechanics.laminate;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import kitwright.mechanics.Refuse;

/**
 * One cloth in place of another: how many of the new one bear as much as the old stack, measure by
 * measure, since stiffness and strength rank differently.
 *
 * @param wanted the stack that is to be replaced
 * @param one a single cured cloth to replace it with
 * @param criterion of first-ply failure for strengths
 */
public record ClothSwap(Laminate wanted, Laminate one, Criterion criterion) {
  /** What is compared, along the x axis of both. */
  public enum Measure {
    /** A11, N/m. */
    STRETCH,
    /** A66, N/m. */
    SHEAR_STIFFNESS,
    /** D11, N·m. */
    BENDING,
    /** Pull at first-ply failure, N/m. */
    TENSION,
    /** Push at first-ply failure, N/m. */
    COMPRESSION,
    /** Shear at first-ply failure, N/m. */
    SHEAR
  }

  /** The measure of a laminate; empty where a strength is unknown. */
  public OptionalDouble of(Laminate laminate, Measure measure) {
    var stiffness = laminate.stiffness();
    double t = laminate.thickness();
    return switch (measure) {
      case STRETCH -> OptionalDouble.of(stiffness.a(1, 1));
      case SHEAR_STIFFNESS -> OptionalDouble.of(stiffness.a(3, 3));
      case BENDING -> OptionalDouble.of(stiffness.d(1, 1));
      case TENSION -> perWidth(laminate.tension(criterion), t);
      case COMPRESSION -> perWidth(laminate.compression(criterion), t);
      case SHEAR -> perWidth(laminate.shear(criterion), t);
    };
  }

  private static OptionalDouble perWidth(OptionalDouble stress, double thickness) {
    return stress.isPresent()
        ? OptionalDouble.of(stress.getAsDouble() * thickness)
        : OptionalDouble.empty();
  }

  /** The fewest plies that match the old stack; empty where unknown or more than the most. */
  public OptionalInt plies(Measure measure, int most) {
    Refuse.unless(most >= 1, "at least one ply");
    var target = of(wanted, measure);
    for (int n = 1; target.isPresent() && n <= most; n++) {
      var have = of(one.times(n), measure);
      if (have.isPresent() && have.getAsDouble() >= target.getAsDouble() * (1 - 1e-9)) {
        return OptionalInt.of(n);
      }
    }
    return OptionalInt.empty();
  }
}

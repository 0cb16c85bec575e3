package kitwright.assessment.method;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import kitwright.assessment.material.Stuff;
import kitwright.assessment.part.Part;
import kitwright.mechanics.beam.FailureMode;
import kitwright.mechanics.beam.Limit;
import kitwright.mechanics.laminate.Criterion;
import kitwright.mechanics.laminate.FirstPly;
import kitwright.mechanics.laminate.Laminate;
import kitwright.mechanics.laminate.Resultants;
import kitwright.mechanics.laminate.Stiffness;

/**
 * What a stack bears of the twisting moment at the corners of a simply supported panel: each layer
 * along or across in shear in its plane, τ = G₁₂·(γ₀ + z·κ_xy); with a layer at an angle the first
 * ply of all by maximum strain.
 *
 * @see "S. Timoshenko, S. Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., 1959, section
 *     30"
 */
public final class Twist {
  private final Part part;
  private final List<String> lacking = new ArrayList<>();
  private Optional<Limit> least = Optional.empty();

  private Twist(Part part) {
    this.part = part;
  }

  /** The twisting moment per width at which it first fails, N, and what is lacking to tell it. */
  public record Borne(Optional<Limit> limit, List<String> lacking) {}

  static Borne of(Part part, Laminate laminate, Stiffness give) {
    Twist twist = new Twist(part);
    if (part.stack().stream().allMatch(layer -> isSquare(layer.angle()))) {
      twist.square(laminate, give);
    } else {
      twist.slanted(laminate);
    }
    return new Borne(twist.least, List.copyOf(twist.lacking));
  }

  private static boolean isSquare(double angle) {
    double off = Stuff.off(angle);
    return off < 1e-6 || Math.abs(off - 90) < 1e-6;
  }

  private void square(Laminate laminate, Stiffness give) {
    double low = -laminate.thickness() / 2;
    for (Part.StackLayer layer : part.stack()) {
      double high = low + layer.thickness();
      double shear = layer.stuff().elastic().shear();
      // What does not shear lies between the faces: each layer shears most at its outer one.
      double below = -(give.b(3, 3) + low * give.d(3, 3));
      double above = give.b(3, 3) + high * give.d(3, 3);
      limit(layer.where(), layer.stuff(), shear * Math.max(below, above));
      low = high;
    }
  }

  private void limit(String where, Stuff stuff, double perUnit) {
    OptionalDouble strength = stuff.limits().shear();
    if (strength.isEmpty()) {
      lacking.add(stuff.id() + " (" + where + ") does not state its shear-strength");
    } else if (perUnit > 0) {
      take(new Limit(FailureMode.TWIST, where, strength.getAsDouble(), perUnit));
    }
  }

  private void slanted(Laminate laminate) {
    for (int sense : new int[] {1, -1}) {
      Optional<FirstPly> first =
          laminate.firstPly(new Resultants(0, 0, 0, 0, 0, sense), Criterion.MAXIMUM_STRAIN);
      if (first.isEmpty()) {
        lacking.add(
            "a layer at an angle does not state all its strengths, and twist leans on them");
        return;
      }
      String where = part.stack().get(first.get().ply() - 1).where();
      take(new Limit(FailureMode.TWIST, where, first.get().factor(), 1));
    }
  }

  private void take(Limit limit) {
    if (least.isEmpty() || limit.capacity() < least.get().capacity()) {
      least = Optional.of(limit);
    }
  }
}

package kitwright.assessment;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import kitwright.ledger.Material.Basis;
import kitwright.ledger.MaterialProperty;

/**
 * What sort of values the strengths of an assessment are: means, or values that few pieces fall
 * below.
 *
 * @param means materials whose strengths are means, or do not say
 * @param low materials whose strengths are characteristic or least
 */
public record Bases(Set<String> means, Set<String> low) {
  /** Of the strengths leaned on. */
  public static Bases of(List<Input> inputs) {
    Set<String> means = new LinkedHashSet<>();
    Set<String> low = new LinkedHashSet<>();
    for (Input input : inputs) {
      if (isStrength(input.property())) {
        boolean mean = input.basis().filter(basis -> basis != Basis.MEAN).isEmpty();
        (mean ? means : low).add(input.material());
      }
    }
    return new Bases(means, low);
  }

  private static boolean isStrength(MaterialProperty property) {
    return switch (property) {
      case TENSILE_STRENGTH,
          TENSILE_STRENGTH_ACROSS,
          COMPRESSIVE_STRENGTH,
          COMPRESSIVE_STRENGTH_ACROSS,
          BENDING_STRENGTH,
          SHEAR_STRENGTH,
          BOND_STRENGTH,
          YIELD_STRENGTH,
          PROOF_STRESS ->
          true;
      default -> false;
    };
  }

  /** Whether strengths of both sorts stand side by side. */
  public boolean mixed() {
    return !means.isEmpty() && !low.isEmpty();
  }

  /** What they are and what they are not, a clause. */
  public String words() {
    if (mixed()) {
      return "strengths of "
          + String.join(", ", means)
          + " are means, those of "
          + String.join(", ", low)
          + " characteristic or least values: a ratio between them is not of like with like";
    }
    return low.isEmpty()
        ? "mean values are compared with mean values; they are no design values"
        : "characteristic or least values are compared with their like; no safety factor is in"
              + " them";
  }
}

package kitwright.choice;

import java.util.Optional;
import java.util.OptionalDouble;
import kitwright.assessment.sheet.Verdict;

/**
 * How a substitution stands up to what was drawn.
 *
 * @param verdict of its assessment; empty where it has none
 * @param governing the measure nearest to its limit, or furthest beyond it
 * @param margin how far on the right side of the limit that is, as a share; below zero if not
 * @param mass built over designed; empty where the assessment does not tell
 */
public record Strength(
    Optional<Verdict> verdict,
    Optional<String> governing,
    OptionalDouble margin,
    OptionalDouble mass) {
  /** Of something that nobody has assessed. */
  static Strength unknown() {
    return new Strength(
        Optional.empty(), Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty());
  }
}

package kitwright.assessment;

import java.util.List;
import java.util.function.Function;
import kitwright.ledger.Assessment;
import kitwright.ledger.Ledger;
import kitwright.ledger.Substitution;

/**
 * How assessments and the conditions of sign-offs are judged. Handed to whoever needs a verdict, so
 * that signatures can be judged without mechanics.
 */
public record Judging(
    Function<Assessment, Verdict> assessments,
    Function<Substitution.Condition, Verdict> conditions) {

  /** Judges by what the ledger says. */
  public static Judging of(Ledger ledger) {
    return new Judging(
        assessment -> verdict(assessment, ledger),
        condition -> Conditions.verdict(condition, ledger));
  }

  private static Verdict verdict(Assessment assessment, Ledger ledger) {
    if (assessment.method() == Assessment.Method.EXTERNAL) {
      return External.verdict(assessment, ledger);
    }
    return Verdict.cannotTell(List.of("it has not been worked out"));
  }
}

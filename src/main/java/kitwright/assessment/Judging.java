package kitwright.assessment;

import java.util.function.Function;
import kitwright.assessment.sheet.Verdict;
import kitwright.ledger.Assessment;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Substitution;

/**
 * How assessments and the conditions of sign-offs are judged. Handed to whoever needs a verdict, so
 * that signatures can be judged without mechanics.
 */
public record Judging(
    Function<Assessment, Verdict> assessments,
    Function<Substitution.Condition, Verdict> conditions) {

  private static final Facts.Fact<Judging> FACT = day -> of(day.ledger(), Assessments.on(day));

  /** Judges by what the ledger says; works every assessment out once. */
  public static Judging on(Facts day) {
    return FACT.on(day);
  }

  /** Judges by assessments that were worked out already. */
  public static Judging of(Ledger ledger, Assessments worked) {
    return new Judging(
        assessment ->
            worked
                .of(assessment.id())
                .map(Result::verdict)
                .orElseGet(() -> Assessments.result(assessment, ledger).verdict()),
        condition -> Conditions.verdict(condition, ledger));
  }
}

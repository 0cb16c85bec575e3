package kitwright.substitution;

import java.math.BigDecimal;
import java.util.List;
import kitwright.assessment.sheet.Verdict;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Assessment;
import kitwright.value.Decimal;
import kitwright.value.Ref;

/** Fires where a structural assessment accepts less than was drawn and does not say why. */
public final class LimitUnexplained implements AssessedRule {
  @Override
  public void examine(
      SubstitutionStanding standing, Assessment assessment, Verdict verdict, Findings out) {
    if (standing.lacks(Lack.LIMIT_UNEXPLAINED)) {
      Asked.unexplained(assessment)
          .forEach((measure, limit) -> out.add(finding(standing, assessment, measure, limit)));
    }
  }

  private Finding finding(
      SubstitutionStanding standing, Assessment assessment, Ref measure, BigDecimal limit) {
    return stop(
        measure.at(),
        "The assessment "
            + assessment.id()
            + " of "
            + standing.substitution().id()
            + " is content with "
            + Decimal.print(limit)
            + " of "
            + measure.id()
            + " and does not say why.",
        "A limit below 1 accepts a weaker part than was drawn; without its reason nobody can"
            + " agree.",
        "Ask for 1, or write the reason: less-because: {" + measure.id() + ": …}.",
        List.of(assessment.named(), standing.substitution().named()));
  }
}

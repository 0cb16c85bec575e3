package kitwright.assessment;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Assessment;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;

/** Fires where an assessment that no substitution names misses what it requires or allows. */
public final class LooseAssessmentFails implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    for (Result result : Assessments.on(day).all()) {
      if (result.verdict().fails() && isLoose(result.assessment(), day.ledger())) {
        out.add(finding(result));
      }
    }
  }

  private static boolean isLoose(Assessment assessment, Ledger ledger) {
    return ledger.substitutions().stream()
        .flatMap(substitution -> substitution.assessment().stream())
        .noneMatch(ref -> ref.id().equals(assessment.id()));
  }

  private Finding finding(Result result) {
    Assessment assessment = result.assessment();
    String key = assessment.require().isEmpty() ? "allow" : "require";
    return warn(
        assessment.at().of(key),
        "The assessment " + assessment.id() + " fails: " + result.verdict().because() + ".",
        "Nothing is held up by it, since no substitution names it; but the part is not what it was"
            + " asked to be.",
        "Change what is built until it passes; where it belongs to a substitution, name it there"
            + " under “assessment”.",
        List.of(assessment.named()));
  }
}

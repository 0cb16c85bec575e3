package kitwright.substitution;

import java.util.List;
import kitwright.assessment.sheet.Verdict;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Assessment;
import kitwright.ledger.Grade;

/**
 * Fires where the assessment of a substitution comes to no result, because something is lacking.
 */
public final class AssessmentInconclusive implements AssessedRule {
  @Override
  public void examine(
      SubstitutionStanding standing, Assessment assessment, Verdict verdict, Findings out) {
    if (!verdict.passes() && !verdict.fails()) {
      out.add(finding(standing, assessment, verdict));
    }
  }

  private Finding finding(SubstitutionStanding standing, Assessment assessment, Verdict verdict) {
    boolean structural = standing.grade() == Grade.STRUCTURAL;
    return new Finding(
        name(),
        structural ? Severity.STOP : Severity.WARN,
        assessment.at().record(),
        "The assessment "
            + assessment.id()
            + " of "
            + standing.substitution().id()
            + " comes to no result: "
            + verdict.because()
            + ".",
        "It shows nothing yet, so the substitution counts as not assessed.",
        "Supply what is lacking, with its source.",
        List.of(assessment.named(), standing.substitution().named()));
  }
}

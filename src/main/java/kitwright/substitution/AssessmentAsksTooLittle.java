package kitwright.substitution;

import java.util.List;
import kitwright.assessment.sheet.Verdict;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Assessment;

/** Fires where the assessment of a structural substitution does not ask what must be asked. */
public final class AssessmentAsksTooLittle implements AssessedRule {
  @Override
  public void examine(
      SubstitutionStanding standing, Assessment assessment, Verdict verdict, Findings out) {
    if (standing.lacks(Lack.ASKS_TOO_LITTLE)) {
      out.add(finding(standing, assessment));
    }
  }

  private Finding finding(SubstitutionStanding standing, Assessment assessment) {
    String missing = String.join(" and ", Asked.missing(assessment));
    return stop(
        assessment.at().of("require"),
        "The assessment "
            + assessment.id()
            + " of the structural substitution "
            + standing.substitution().id()
            + " does not ask for "
            + missing
            + ".",
        "A pass says nothing of what was not asked, so it does not count.",
        "Add under “require” a least value for "
            + missing
            + (Asked.missing(assessment).contains("strength") ? " (or moment, for strength)" : "")
            + "; where less than 1 is enough, say why under “less-because”.",
        List.of(assessment.named(), standing.substitution().named()));
  }
}

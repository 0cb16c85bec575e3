package kitwright.substitution;

import java.util.List;
import kitwright.assessment.sheet.Verdict;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Assessment;

/** Fires where the assessment of a substitution misses what it itself requires. */
public final class AssessmentFails implements AssessedRule {
  @Override
  public void examine(
      SubstitutionStanding standing, Assessment assessment, Verdict verdict, Findings out) {
    if (verdict.fails()) {
      out.add(finding(standing, assessment, verdict));
    }
  }

  private Finding finding(SubstitutionStanding standing, Assessment assessment, Verdict verdict) {
    return stop(
        assessment.at().of(assessment.require().isEmpty() ? "allow" : "require"),
        "The assessment "
            + assessment.id()
            + " of "
            + standing.substitution().id()
            + " misses its own requirement: "
            + verdict.because()
            + ".",
        "Built so, the part is weaker, softer or heavier than what was drawn.",
        "Change what is built until it passes, choose another way, or ask the designer whether less"
            + " is enough.",
        List.of(assessment.named(), standing.substitution().named()));
  }
}

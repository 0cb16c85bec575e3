package kitwright.substitution;

import java.util.Optional;
import kitwright.assessment.sheet.Verdict;
import kitwright.finding.Findings;
import kitwright.ledger.Assessment;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;

/** A rule about the assessment of each substitution that is not withdrawn. */
interface AssessedRule extends Rule {
  @Override
  default void examine(Facts day, Findings out) {
    for (SubstitutionStanding standing : SubstitutionStandings.on(day).all()) {
      Optional<Assessment> assessment =
          standing.substitution().assessment().flatMap(day.ledger()::assessment);
      if (!standing.isWithdrawn() && assessment.isPresent() && standing.verdict().isPresent()) {
        examine(standing, assessment.get(), standing.verdict().get(), out);
      }
    }
  }

  /** Adds a finding where it does not hold of one. */
  void examine(SubstitutionStanding standing, Assessment assessment, Verdict verdict, Findings out);
}

package kitwright.substitution;

import java.util.Optional;
import kitwright.assessment.sheet.Verdict;
import kitwright.ledger.Assessment;
import kitwright.ledger.Ledger;

/** Walks over the assessments that substitutions lean on. */
final class Assessed {
  /** What is done with each. */
  @FunctionalInterface
  interface Visit {
    void visit(Standing standing, Assessment assessment, Verdict verdict);
  }

  private Assessed() {}

  /** Visits the assessment of each substitution that is not withdrawn. */
  static void each(Standings substitutions, Ledger ledger, Visit visit) {
    for (Standing standing : substitutions.all()) {
      Optional<Assessment> assessment =
          standing.substitution().assessment().flatMap(ledger::assessment);
      if (!standing.isWithdrawn() && assessment.isPresent() && standing.verdict().isPresent()) {
        visit.visit(standing, assessment.get(), standing.verdict().get());
      }
    }
  }
}

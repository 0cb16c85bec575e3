package kitwright.substitution;

import java.util.List;
import kitwright.assessment.Judging;
import kitwright.assessment.sheet.Verdict;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Substitution.Condition;

/** Fires where a condition asks for a measure that the section it names does not state. */
public final class ConditionUncheckable implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    for (SubstitutionStanding standing : SubstitutionStandings.on(day).all()) {
      if (!standing.isWithdrawn()) {
        standing.signatures().stream()
            .flatMap(signature -> signature.signOff().conditions().stream())
            .filter(condition -> condition.section().isPresent() || !condition.atLeast().isEmpty())
            .forEach(condition -> examine(standing, condition, Judging.on(day), out));
      }
    }
  }

  private void examine(
      SubstitutionStanding standing, Condition condition, Judging judging, Findings out) {
    Verdict verdict = judging.conditions().apply(condition);
    if (verdict.outcome() == Verdict.Outcome.CANNOT_TELL) {
      out.add(
          warn(
              condition.at().of(condition.atLeast().isEmpty() ? "section" : "at-least"),
              "A condition of the signature under "
                  + standing.substitution().id()
                  + " cannot be checked: "
                  + verdict.because()
                  + ".",
              "Nobody notices if it is not met, so the signature does not count.",
              "Write into the built section what it lacks, where it is so; else ask the signer for"
                  + " a condition that its measures can show, and for a signature under that.",
              List.of(standing.substitution().named())));
    }
  }
}

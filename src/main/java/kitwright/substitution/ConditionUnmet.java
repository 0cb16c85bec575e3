package kitwright.substitution;

import java.util.List;
import kitwright.assessment.Judging;
import kitwright.assessment.sheet.Verdict;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Substitution.Condition;

/** Fires where the built section does not meet a condition under which somebody signed. */
public final class ConditionUnmet implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    for (SubstitutionStanding standing : SubstitutionStandings.on(day).all()) {
      if (!standing.isWithdrawn()) {
        standing.signatures().stream()
            .flatMap(signature -> signature.signOff().conditions().stream())
            .forEach(condition -> examine(standing, condition, Judging.on(day), out));
      }
    }
  }

  private void examine(
      SubstitutionStanding standing, Condition condition, Judging judging, Findings out) {
    Verdict verdict = judging.conditions().apply(condition);
    if (verdict.fails()) {
      out.add(
          stop(
              condition.at().of("at-least"),
              "A condition of the signature under "
                  + standing.substitution().id()
                  + " is not met: "
                  + verdict.because()
                  + ".",
              "It was signed for something stronger than what is to be built.",
              "Build it as the signer asks and record the section so, or ask for a signature"
                  + " without this condition.",
              List.of(standing.substitution().named())));
    }
  }
}

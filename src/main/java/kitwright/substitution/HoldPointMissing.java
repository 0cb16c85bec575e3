package kitwright.substitution;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Grade;
import kitwright.ledger.Rule;

/** Fires where a structural substitution names no task that must wait for the signature. */
public final class HoldPointMissing implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    SubstitutionStandings.on(day).all().stream()
        .filter(standing -> !standing.isWithdrawn())
        .filter(standing -> standing.hold().state() == HoldPoint.State.NONE)
        .filter(standing -> standing.grade() == Grade.STRUCTURAL)
        .forEach(standing -> out.add(finding(standing)));
  }

  private Finding finding(SubstitutionStanding standing) {
    return warn(
        standing.substitution().at().record(),
        "The structural substitution "
            + standing.substitution().id()
            + " names no task that waits for its signature.",
        "Only work that uses what it replaces or takes waits for it: nothing warns when the part is"
            + " closed up unsigned.",
        "Name the task that closes it up under “hold”.",
        List.of(standing.substitution().named()));
  }
}

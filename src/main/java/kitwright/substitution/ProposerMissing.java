package kitwright.substitution;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;

/** Fires where a structural substitution does not say who proposed it. */
public final class ProposerMissing implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    SubstitutionStandings.on(day).all().stream()
        .filter(standing -> !standing.isWithdrawn() && standing.lacks(Lack.PROPOSER_UNKNOWN))
        .forEach(standing -> out.add(finding(standing)));
  }

  private Finding finding(SubstitutionStanding standing) {
    return stop(
        standing.substitution().at().record(),
        "Nobody says who proposed the structural substitution "
            + standing.substitution().id()
            + ".",
        "Whoever had the idea must not be the one who releases it, and that cannot be seen.",
        "Add “proposed: {by: …, on: …}”, and have the statement signed that then stands.",
        List.of(standing.substitution().named()));
  }
}

package kitwright.substitution;

import java.util.List;
import java.util.Optional;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Facts;
import kitwright.ledger.Grade;
import kitwright.ledger.Rule;
import kitwright.ledger.Substitution;
import kitwright.value.Ref;

/** Fires where a structural or systems substitution has no engineering assessment. */
public final class SubstitutionUnassessed implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    SubstitutionStandings.on(day).all().stream()
        .filter(standing -> !standing.isWithdrawn() && standing.verdict().isEmpty())
        .filter(standing -> standing.grade() != Grade.FINISH)
        .forEach(standing -> out.add(finding(standing)));
  }

  private Finding finding(SubstitutionStanding standing) {
    Substitution substitution = standing.substitution();
    Optional<String> named = substitution.assessment().map(Ref::id);
    boolean structural = standing.grade() == Grade.STRUCTURAL;
    return new Finding(
        name(),
        structural ? Severity.STOP : Severity.WARN,
        substitution.at().of("grade"),
        "The "
            + (structural ? "structural" : "systems")
            + " substitution "
            + substitution.id()
            + (named.isPresent()
                ? " has no assessment that can be read: “" + named.get() + "”."
                : " has no assessment."),
        structural
            ? "Nobody has shown that it is as strong as what was drawn, and lives depend on it."
            : "Nobody has shown that it does what was drawn.",
        (named.isPresent()
                ? "Mend what is wrong with “" + named.get() + "”, or record it"
                : "Have it worked out, and name the assessment under “assessment”")
            + "; until then, do not build it in.",
        List.of(substitution.named()));
  }
}

package kitwright.substitution;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Facts;
import kitwright.ledger.Grade;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;
import kitwright.ledger.Substitution;
import kitwright.value.Ref;
import kitwright.value.Word;

/** Fires where nobody has signed a substitution. */
public final class SubstitutionUnsigned implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    SubstitutionStandings.on(day).all().stream()
        .filter(standing -> !standing.isWithdrawn() && standing.signatures().isEmpty())
        .forEach(standing -> out.add(finding(standing, day.ledger())));
  }

  private Finding finding(SubstitutionStanding standing, Ledger ledger) {
    Substitution substitution = standing.substitution();
    String held =
        substitution
            .hold()
            .map(task -> held(task, ledger))
            .orElse("It must not be built in before.");
    return new Finding(
        name(),
        standing.grade() == Grade.FINISH ? Severity.NOTE : Severity.WARN,
        substitution.at().record(),
        "Nobody has signed the "
            + Word.key(standing.grade())
            + " substitution "
            + substitution.id()
            + ".",
        held,
        "Ask "
            + standing.whoMaySign()
            + " to sign what “kitwright fingerprint "
            + substitution.id()
            + " --statement” prints.",
        List.of(substitution.named()));
  }

  private static String held(Ref task, Ledger ledger) {
    return ledger.task(task).isPresent()
        ? "The task " + task + " must not start before."
        : "No work may start before, since " + ledger.noSuch(Kind.TASKS, task.id()) + ".";
  }
}

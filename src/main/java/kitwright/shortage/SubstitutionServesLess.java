package kitwright.shortage;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.kit.Positions;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Substitution;

/** Fires where a substitution stands for less than it says it replaces. */
public final class SubstitutionServesLess implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    day.ledger().substitutions().stream()
        .filter(each -> each.withdrawn().isEmpty())
        .filter(each -> each.shortage().isPresent() || each.insteadOf().item().isPresent())
        .forEach(
            each -> {
              Serves serves = Serves.of(each, Positions.on(day), day.ledger());
              serves.why().ifPresent(why -> out.add(finding(each, serves, why)));
            });
  }

  private Finding finding(Substitution substitution, Serves serves, String why) {
    Substitution.InsteadOf instead = substitution.insteadOf();
    String what = instead.item().map(ref -> ref.id()).or(instead::what).orElse("what it replaces");
    return warn(
        substitution.at().of(substitution.use().isEmpty() ? "instead-of" : "use"),
        "The substitution "
            + substitution.id()
            + " shall take the place of "
            + instead.qty().told(what)
            + ", and "
            + why
            + ".",
        serves.qty().isNone()
            ? "It counts in place of none, signed or not."
            : "It counts in place of " + serves.qty().told() + ", signed or not.",
        substitution.use().isEmpty()
            ? "Write under “use” what it takes, with the quantity; where the part is left out,"
                + " decide “do-without” in its shortage."
            : "Write under “use” all that it takes, and no more than is there; get what is lacking,"
                + " or lessen both “use” and “instead-of”. What is cut into several needs its"
                + " “size”.",
        List.of(substitution.named()));
  }
}

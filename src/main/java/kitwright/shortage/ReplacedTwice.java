package kitwright.shortage;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.RecordRule;
import kitwright.ledger.Shortage;
import kitwright.ledger.Substitution;
import kitwright.substitution.SubstitutionStanding;
import kitwright.substitution.SubstitutionStandings;
import kitwright.value.Quantity;

/** Fires where several approved substitutions together replace more of a shortage than it lacks. */
public final class ReplacedTwice implements RecordRule<Shortage> {
  @Override
  public List<Shortage> records(Facts day) {
    return day.ledger().shortages();
  }

  @Override
  public void examine(Shortage shortage, Facts day, Findings out) {
    SubstitutionStandings standings = SubstitutionStandings.on(day);
    List<Substitution> all =
        standings.answering(shortage.id()).stream()
            .filter(SubstitutionStanding::isApproved)
            .map(SubstitutionStanding::substitution)
            .filter(each -> standings.taken().isTaken(each, shortage.id()))
            .filter(each -> each.insteadOf().qty().convertsTo(shortage.qty()))
            .toList();
    Quantity sum = Quantity.none(shortage.qty().unit());
    for (Substitution each : all) {
      boolean isFirst = sum.isNone();
      sum = sum.plus(each.insteadOf().qty());
      if (!isFirst && !Tiny.is(sum.less(shortage.qty()), shortage.qty())) {
        out.add(finding(shortage, each, sum));
      }
    }
  }

  private Finding finding(Shortage shortage, Substitution with, Quantity sum) {
    return warn(
        with.at().of("instead-of"),
        "With "
            + with.id()
            + ", "
            + sum.told(shortage.item().id())
            + " are replaced for the shortage "
            + shortage.id()
            + ", which lacks "
            + shortage.qty().told()
            + ".",
        "The bench is sent for what each of them takes, and other work is kept from it.",
        "Give up what is not built (“withdrawn: DAY”), or write under “instead-of” how much each"
            + " replaces.",
        List.of(with.named(), shortage.named()));
  }
}

package kitwright.shortage;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.kit.Position;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Shortage;
import kitwright.value.Quantity;

/** Fires where a count shows less of a cause than shortages of that cause say. */
public final class ShortageCauseContradicted implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    for (Balance balance : ShortageStandings.on(day).balances()) {
      if (balance.position().isCounted()) {
        for (Shortage.Cause cause :
            List.of(Shortage.Cause.NOT_PACKED, Shortage.Cause.DAMAGED, Shortage.Cause.WRONG)) {
          examine(balance, cause, out);
        }
      }
    }
  }

  private void examine(Balance balance, Shortage.Cause cause, Findings out) {
    Quantity recorded = Quantity.none(balance.position().promised().unit());
    for (ShortageStanding standing : balance.shortages()) {
      Shortage shortage = standing.shortage();
      if (shortage.cause() == cause && shortage.qty().convertsTo(recorded)) {
        recorded = recorded.plus(shortage.qty());
        Position then = balance.position().on(shortage.found());
        Quantity shown = Causes.shown(then, cause);
        boolean within =
            Causes.shown(then, Shortage.Cause.NOT_PACKED)
                    .plus(then.noGood())
                    .compareAmount(recorded)
                >= 0;
        if (then.isCounted() && within && !Tiny.is(recorded.less(shown), recorded)) {
          out.add(finding(balance, shortage, recorded, shown));
        }
      }
    }
  }

  private Finding finding(Balance balance, Shortage shortage, Quantity recorded, Quantity shown) {
    Position then = balance.position().on(shortage.found());
    return warn(
        shortage.at().of("cause"),
        "Recorded as "
            + Causes.word(shortage.cause())
            + ": "
            + recorded.told(shortage.item().id())
            + "; but the count shows "
            + shown.told()
            + " of that: "
            + then.promised().told()
            + " promised, "
            + then.counted().told()
            + " found, "
            + then.damaged().told()
            + " damaged, "
            + then.wrong().told()
            + " wrong"
            + (then.undersize().isNone() ? "" : ", " + then.undersize().told() + " undersize")
            + ".",
        "The letter gives the supplier a reason that their own papers contradict.",
        "Record one shortage a cause, each with its own number; or correct the count.",
        List.of(shortage.named(), balance.position().item().named()));
  }
}

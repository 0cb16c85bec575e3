package kitwright.shortage;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Shortage;
import kitwright.value.Quantity;

/**
 * Fires where more is recorded as missing, damaged or wrong than the count shows. What was used up
 * or found undersize later, no count can show.
 */
public final class ShortageBeyondCount implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    for (Balance balance : ShortageStandings.on(day).balances()) {
      if (!balance.shortages().isEmpty()) {
        examine(balance, out);
      }
    }
  }

  private void examine(Balance balance, Findings out) {
    Quantity shown = balance.missing().plus(balance.delivered());
    Quantity recorded = Quantity.none(shown.unit());
    for (ShortageStanding standing : balance.shortages()) {
      Shortage shortage = standing.shortage();
      if (shortage.qty().convertsTo(shown)) {
        recorded = recorded.plus(shortage.qty());
        if (isCountable(shortage) && !Tiny.is(recorded.less(shown), recorded)) {
          out.add(finding(balance, shortage, recorded, shown));
        }
      }
    }
  }

  private static boolean isCountable(Shortage shortage) {
    return switch (shortage.cause()) {
      case NOT_PACKED, DAMAGED, WRONG -> true;
      case UNDERSIZE, USED_UP -> false;
    };
  }

  private Finding finding(Balance balance, Shortage shortage, Quantity recorded, Quantity shown) {
    String item = shortage.item().id();
    return stop(
        shortage.at().of("qty"),
        "With this, the shortages recorded come to "
            + recorded.told(item)
            + ", but the counts show only "
            + shown.told()
            + " ("
            + balance.position().promised().told()
            + " promised, "
            + balance.position().good().told()
            + " counted good).",
        "A claim for it asks too much, and the supplier can show it.",
        "Count again: correct the shortage, or the count with its damaged and wrong pieces.",
        List.of(shortage.named(), balance.position().item().named()));
  }
}

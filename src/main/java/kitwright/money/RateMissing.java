package kitwright.money;

import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.value.Days;
import kitwright.value.Money;
import kitwright.value.Place;

/** Fires where an amount cannot be turned into the build's currency. */
public final class RateMissing implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    Currency home = day.ledger().build().currency();
    WithoutRate.of(day)
        .forEach(each -> out.add(missing(each.entry(), each.at(), each.amount(), each.on(), home)));
  }

  private Finding missing(Entry entry, Place at, Money amount, LocalDate on, Currency home) {
    return stop(
        at,
        "There is no rate from "
            + amount.currency()
            + " into "
            + home
            + " on or before "
            + Days.named(on)
            + ".",
        amount + " of the " + entry.named() + " are in no sum.",
        "Add to “rates:” a line such as {on: "
            + on
            + ", from: "
            + amount.currency()
            + ", to: "
            + home
            + ", rate: …}"
            + (entry instanceof kitwright.ledger.Spend
                ? ", or write “rate: …” on the spend itself."
                : "."),
        List.of(entry.named()));
  }
}

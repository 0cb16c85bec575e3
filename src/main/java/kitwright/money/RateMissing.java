package kitwright.money;

import java.time.LocalDate;
import java.util.Currency;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;
import kitwright.ledger.Shortage;
import kitwright.value.Money;
import kitwright.value.Place;

/** Fires where an amount cannot be turned into the build's currency. */
public final class RateMissing implements Rule {
  @Override
  public String name() {
    return "rate-missing";
  }

  @Override
  public void examine(Facts day, Findings out) {
    Currency home = day.ledger().build().currency();
    Exchange exchange = Exchange.of(day.ledger());
    Account.on(day)
        .unvalued()
        .forEach(
            spend ->
                out.add(missing(spend, spend.at().of("amount"), spend.amount(), spend.on(), home)));
    day.ledger().budget().stream()
        .filter(line -> exchange.planned(line.amount().currency()).isEmpty())
        .forEach(
            line ->
                out.add(
                    missing(
                        line,
                        line.at().of("amount"),
                        line.amount(),
                        day.ledger().build().started(),
                        home)));
    day.ledger().shortages().forEach(shortage -> options(shortage, exchange, day.day(), out));
    prices(day.ledger(), exchange, day.day(), out);
  }

  private void options(Shortage shortage, Exchange exchange, LocalDate today, Findings out) {
    for (Shortage.Option option : shortage.options()) {
      option
          .cost()
          .filter(cost -> exchange.home(cost.likely(), today).money().isEmpty())
          .ifPresent(
              cost ->
                  out.add(
                      missing(
                          shortage,
                          option.at().of("cost"),
                          cost.likely(),
                          today,
                          exchange.home())));
    }
  }

  /** Of a price list in one currency the first item stands for all. */
  private void prices(Ledger ledger, Exchange exchange, LocalDate today, Findings out) {
    Set<Currency> told = new HashSet<>();
    for (KitItem item : ledger.kit()) {
      item.price()
          .filter(price -> exchange.quote(price.currency(), exchange.home(), today).isEmpty())
          .filter(price -> told.add(price.currency()))
          .ifPresent(
              price ->
                  out.add(
                      missing(
                          item,
                          item.at().of("price"),
                          Money.rounded(price.amount(), price.currency()),
                          today,
                          exchange.home())));
    }
  }

  private Finding missing(Entry entry, Place at, Money amount, LocalDate on, Currency home) {
    return new Finding(
        name(),
        Severity.STOP,
        at,
        "There is no rate from "
            + amount.currency()
            + " into "
            + home
            + " on or before "
            + on
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

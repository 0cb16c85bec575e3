package kitwright.money;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kitwright.ledger.BudgetLine;
import kitwright.ledger.Claim;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.Loan;
import kitwright.ledger.Shortage;
import kitwright.spending.Exchange;
import kitwright.value.Money;
import kitwright.value.Place;
import kitwright.value.Ref;

/**
 * An amount that cannot be turned into the build’s currency, so that the sums lack it.
 *
 * @param at where it stands
 * @param on the day for which a rate is missing
 * @param line the budget line that lacks it; empty where no record says which
 */
public record WithoutRate(
    Entry entry, Place at, Money amount, LocalDate on, Optional<String> line) {

  /** All of them on a day, spends first. */
  public static List<WithoutRate> of(Facts day) {
    Gathering all = new Gathering(day);
    all.spends();
    all.budget();
    day.ledger().shortages().forEach(all::options);
    day.ledger().borrowed().forEach(all::repair);
    day.ledger().claims().forEach(all::ends);
    all.prices();
    return all.found;
  }

  /** {@code 10.00 GBP of the spend p}. */
  public String words() {
    return amount + " of the " + entry.named();
  }

  /** Goes through what the sums are made of. */
  private static final class Gathering {
    private final List<WithoutRate> found = new ArrayList<>();
    private final Facts day;
    private final Ledger ledger;
    private final Exchange exchange;

    Gathering(Facts day) {
      this.day = day;
      ledger = day.ledger();
      exchange = Exchange.on(day);
    }

    private boolean isKnown(Money amount) {
      return exchange.home(amount, day.day()).money().isPresent();
    }

    void spends() {
      Account.on(day)
          .unvalued()
          .forEach(
              spend ->
                  found.add(
                      new WithoutRate(
                          spend,
                          spend.at().of("amount"),
                          spend.amount(),
                          spend.on(),
                          Optional.of(spend.line().id()))));
    }

    void budget() {
      for (BudgetLine line : ledger.budget()) {
        Optional<String> id = Optional.of(line.line());
        if (exchange.planned(line.amount().currency()).isEmpty()) {
          LocalDate started = ledger.build().started();
          found.add(new WithoutRate(line, line.at().of("amount"), line.amount(), started, id));
        }
        likely(line, line.at().of("remaining"), line.remaining().map(range -> range.likely()), id);
      }
    }

    void options(Shortage shortage) {
      for (Shortage.Option option : shortage.options()) {
        likely(
            shortage,
            option.at().of("cost"),
            option.cost().map(cost -> cost.likely()),
            shortage.line().map(Ref::id));
      }
    }

    void repair(Loan loan) {
      loan.repair()
          .filter(repair -> repair.isOwed())
          .ifPresent(
              repair ->
                  likely(
                      loan,
                      repair.at().of("cost"),
                      repair.cost().map(cost -> cost.likely()),
                      repair.line().map(Ref::id)));
    }

    /** What was granted. */
    void ends(Claim claim) {
      Stream.concat(
              claim.asked().stream().flatMap(line -> line.settled().stream()),
              claim.settled().stream())
          .forEach(end -> likely(claim, end.at().of("amount"), end.amount(), Optional.empty()));
    }

    /** What is foretold, at the rate of the day. */
    private void likely(Entry entry, Place at, Optional<Money> amount, Optional<String> line) {
      amount
          .filter(each -> !isKnown(each))
          .ifPresent(each -> found.add(new WithoutRate(entry, at, each, day.day(), line)));
    }

    /** Of a price list in one currency the first item stands for all. */
    void prices() {
      Set<String> told = new HashSet<>();
      for (KitItem item : ledger.kit()) {
        item.price()
            .map(price -> Money.rounded(price.amount(), price.currency()))
            .filter(price -> !isKnown(price))
            .filter(price -> told.add(price.currency().getCurrencyCode()))
            .ifPresent(
                price ->
                    found.add(
                        new WithoutRate(
                            item, item.at().of("price"), price, day.day(), Optional.empty())));
      }
    }
  }
}

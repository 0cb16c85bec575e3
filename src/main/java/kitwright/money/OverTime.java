package kitwright.money;

import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import kitwright.ledger.Ledger;
import kitwright.ledger.Spend;
import kitwright.spending.Books;
import kitwright.spending.Exchange;
import kitwright.spending.Valued;
import kitwright.value.Money;

/**
 * What was paid and ordered by the evening of a day, as the ledger would have told it on that day.
 *
 * @param paid less what had come back
 * @param ordered promised and not yet paid then; an order paid since still shows here
 */
public record OverTime(LocalDate day, Money paid, Money ordered) {
  /** With more days of change than this, ends of months stand for them. */
  private static final int MOST_DAYS = 120;

  /** Both together. */
  public Money committed() {
    return paid.plus(ordered);
  }

  /**
   * The money of the build from its first day to the day of the account: each day on which
   * something changed, or the ends of months where those are many.
   */
  public static List<OverTime> of(Ledger ledger, Account account) {
    Exchange exchange = Exchange.of(ledger);
    return days(ledger, account.asOf()).stream().map(day -> on(day, ledger, exchange)).toList();
  }

  private static OverTime on(LocalDate day, Ledger ledger, Exchange exchange) {
    Money paid = Money.zero(exchange.home());
    Money ordered = paid;
    for (Valued each : Books.of(ledger, exchange, day).valued()) {
      if (Books.is(each.spend(), Spend.State.ORDERED)) {
        ordered = ordered.plus(each.counted());
      } else {
        paid = paid.plus(each.signed());
      }
    }
    return new OverTime(day, paid, ordered);
  }

  private static NavigableSet<LocalDate> days(Ledger ledger, LocalDate last) {
    NavigableSet<LocalDate> days = new TreeSet<>();
    days.add(ledger.build().started());
    for (Spend spend : ledger.spending()) {
      days.add(spend.on());
      spend.withdrawn().ifPresent(days::add);
    }
    if (days.size() > MOST_DAYS) {
      NavigableSet<LocalDate> months = new TreeSet<>();
      days.forEach(day -> months.add(day.with(TemporalAdjusters.lastDayOfMonth())));
      days = months;
    }
    days.add(last);
    return new TreeSet<>(days.headSet(last, true));
  }
}

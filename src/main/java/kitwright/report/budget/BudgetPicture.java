package kitwright.report.budget;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import kitwright.drawing.BurnDown;
import kitwright.drawing.Svg;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.money.Account;
import kitwright.money.CostRange;
import kitwright.money.Lacks;
import kitwright.money.OverTime;
import kitwright.value.Days;
import kitwright.value.Money;

/** Money over time, from the first day of the build to the launch. */
public final class BudgetPicture {
  private static final int FEW_MONTHS = 14;

  private BudgetPicture() {}

  /** Draws the whole build as of the account's day. */
  public static Svg of(Facts now, CostRange range) {
    Ledger ledger = now.ledger();
    Account account = Account.on(now);
    LocalDate first = ledger.build().started();
    LocalDate today = account.asOf();
    LocalDate launch =
        ledger.build().launch().filter(day -> day.isAfter(today)).orElse(today.plusDays(30));
    return BurnDown.of(
        ledger.build().name()
            + ": money over time"
            + (Lacks.ofForecast(now).isEmpty() ? "" : ", as far as it can be told"),
        ledger.build().currency().getCurrencyCode(),
        readings(ledger, account, first),
        new BurnDown.End(
            ChronoUnit.DAYS.between(first, launch),
            range.within(0.1).amount(),
            number(account.whole().forecast()),
            range.within(0.9).amount()),
        number(account.whole().budget()),
        account.contingency().map(BudgetPicture::number).orElse(0.0),
        ticks(first, launch));
  }

  private static List<BurnDown.Reading> readings(Ledger ledger, Account account, LocalDate first) {
    return OverTime.of(ledger, account).stream()
        .map(
            each ->
                new BurnDown.Reading(
                    Math.max(0, ChronoUnit.DAYS.between(first, each.day())),
                    number(each.paid()),
                    number(each.committed())))
        .toList();
  }

  private static List<BurnDown.Tick> ticks(LocalDate first, LocalDate last) {
    List<BurnDown.Tick> ticks = new ArrayList<>();
    long months = ChronoUnit.MONTHS.between(first, last) + 1;
    long step = Math.max(1, (months + FEW_MONTHS - 1) / FEW_MONTHS);
    boolean named = false;
    for (LocalDate month = first.withDayOfMonth(1).plusMonths(1);
        !month.isAfter(last);
        month = month.plusMonths(step)) {
      ticks.add(
          new BurnDown.Tick(
              ChronoUnit.DAYS.between(first, month),
              Days.monthInShort(month)
                  + (month.getMonthValue() == 1 || !named ? " " + month.getYear() : "")));
      named = true;
    }
    return ticks;
  }

  private static double number(Money money) {
    return money.amount().doubleValue();
  }
}

package kitwright.choice;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.money.Account;
import kitwright.money.OpenShortage;
import kitwright.money.WayCost;
import kitwright.shortage.ShortageStanding;
import kitwright.spending.Exchange;
import kitwright.spending.Valued;
import kitwright.value.Money;
import kitwright.value.ThreePoint;

/** What each way out of a shortage costs. */
final class Outlays {
  private final Ledger ledger;
  private final Facts day;
  private final Account account;
  private final ShortageStanding standing;
  private final Exchange exchange;
  private final Money zero;
  private final Money spent;

  Outlays(Facts day, Account account, ShortageStanding standing) {
    this.day = day;
    ledger = day.ledger();
    this.account = account;
    this.standing = standing;
    exchange = Exchange.on(day);
    zero = Money.zero(exchange.home());
    spent =
        account.spends().stream()
            .filter(each -> each.answers().filter(this::isThis).isPresent())
            .map(Valued::signed)
            .reduce(zero, Money::plus)
            .max(zero);
  }

  private boolean isThis(kitwright.value.Ref ref) {
    return ref.id().equals(standing.shortage().id());
  }

  Outlay of(Shortage.Option option) {
    Optional<ThreePoint<Money>> cost = WayCost.of(option, day, exchange);
    Optional<Money> now = cost.map(range -> range.likely().minus(spent).max(zero));
    BigDecimal hours = Choice.hours(option);
    return new Outlay(
        cost,
        now,
        now.map(this::forecast),
        claimable(option, cost),
        hours,
        hours.signum() == 0
            ? Optional.of(zero)
            : ledger
                .build()
                .ownHour()
                .flatMap(hour -> exchange.home(hour, account.asOf()).money())
                .map(hour -> hour.times(hours)));
  }

  private Optional<Money> home(Money amount) {
    LocalDate day = account.asOf();
    return exchange.home(amount, day).money();
  }

  /** The forecast with this way in place of what it counts for the shortage now. */
  private Money forecast(Money now) {
    Money counted =
        account.ways().stream()
            .filter(open -> open.shortage().id().equals(standing.shortage().id()))
            .map(OpenShortage::likely)
            .reduce(zero, Money::plus);
    return account.whole().forecast().minus(counted).plus(now);
  }

  /**
   * Whoever does not wait may ask the price of the missing goods back, and what another way costs
   * beyond it. Nothing where the goods came whole and were used up here, or where they still come.
   */
  private Money claimable(Shortage.Option option, Optional<ThreePoint<Money>> cost) {
    if (option.way() == Shortage.Way.WAIT
        || standing.shortage().cause() == Shortage.Cause.USED_UP) {
      return zero;
    }
    Money goods = standing.value().flatMap(this::home).orElse(zero);
    return cost.map(range -> range.likely().max(goods)).orElse(goods);
  }
}

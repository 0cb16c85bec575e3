package kitwright.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.LogDay;
import kitwright.ledger.Stock;
import kitwright.ledger.Substitution;
import kitwright.spending.Exchange;
import kitwright.spending.Share;
import kitwright.spending.Valued;
import kitwright.substitution.SubstitutionStanding;
import kitwright.substitution.SubstitutionStandings;
import kitwright.value.Money;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * Money not spent, since something at hand did instead. In no sum: it is what the forecast would be
 * higher by.
 *
 * @param substitution the substitution that used off-cuts or stock
 * @param instead what the replaced quantity costs at the kit's price
 * @param spent what the substitution cost all the same
 */
public record Saving(String substitution, Money instead, Money spent) {

  /** What was saved; nothing where it was dearer than buying. */
  public Money amount() {
    return instead.minus(spent).max(Money.zero(instead.currency()));
  }

  /**
   * What off-cuts and stock have saved, by substitution: only where it may be built, what it takes
   * was not bought, and the log says that it went into the work; of what is used in part, that
   * part.
   */
  public static List<Saving> byStock(Facts day) {
    Account account = Account.on(day);
    List<Saving> all = new ArrayList<>();
    for (SubstitutionStanding standing : SubstitutionStandings.on(day).all()) {
      Substitution substitution = standing.substitution();
      BigDecimal used = used(substitution, day.ledger());
      if (standing.isApproved() && used.signum() > 0) {
        instead(substitution, day.ledger(), account)
            .ifPresent(
                cost ->
                    all.add(
                        new Saving(
                            substitution.id(),
                            Share.of(cost, used, BigDecimal.ONE),
                            spent(substitution, account))));
      }
    }
    return List.copyOf(all);
  }

  /** The share of what it takes from stock that the log says was used; none where it was bought. */
  private static BigDecimal used(Substitution substitution, Ledger ledger) {
    BigDecimal least = BigDecimal.ONE;
    boolean any = false;
    for (Substitution.Take take : substitution.use()) {
      Optional<Stock> stock = take.stock().flatMap(ledger::stock);
      if (take.spend().isPresent() || stock.flatMap(Stock::bought).isPresent()) {
        return BigDecimal.ZERO;
      }
      if (stock.isPresent()) {
        any = true;
        least = least.min(used(take, substitution, ledger));
      }
    }
    return any ? least : BigDecimal.ZERO;
  }

  private static BigDecimal used(Substitution.Take take, Substitution substitution, Ledger ledger) {
    Optional<String> held = substitution.hold().map(Ref::id);
    Quantity used =
        ledger.log().stream()
            .flatMap(log -> log.used().stream())
            .filter(each -> each.stock().map(Ref::id).equals(take.stock().map(Ref::id)))
            .filter(each -> each.task().isEmpty() || each.task().map(Ref::id).equals(held))
            .map(LogDay.Used::qty)
            .filter(qty -> qty.convertsTo(take.qty()))
            .reduce(Quantity.none(take.qty().unit()), Quantity::plus);
    return take.qty().isNone()
        ? BigDecimal.ZERO
        : used.min(take.qty()).amount().divide(take.qty().amount(), 9, RoundingMode.HALF_UP);
  }

  private static Optional<Money> instead(
      Substitution substitution, Ledger ledger, Account account) {
    Exchange exchange = Exchange.of(ledger);
    return substitution
        .insteadOf()
        .item()
        .flatMap(ledger::kitItem)
        .flatMap(item -> item.cost(substitution.insteadOf().qty()))
        .flatMap(cost -> exchange.home(cost, account.asOf()).money());
  }

  private static Money spent(Substitution substitution, Account account) {
    return account.spends().stream()
        .filter(
            each -> each.substitution().map(Ref::id).filter(substitution.id()::equals).isPresent())
        .map(Valued::signed)
        .reduce(Money.zero(account.whole().budget().currency()), Money::plus);
  }
}

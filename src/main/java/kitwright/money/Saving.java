package kitwright.money;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.ledger.Ledger;
import kitwright.ledger.Substitution;
import kitwright.value.Money;
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

  /** What off-cuts and stock have saved, by substitution; only where the kit has a price. */
  public static List<Saving> byStock(Ledger ledger, Account account) {
    Exchange exchange = Exchange.of(ledger);
    List<Saving> all = new ArrayList<>();
    for (Substitution substitution : ledger.substitutions()) {
      boolean fromStock = substitution.use().stream().anyMatch(take -> take.stock().isPresent());
      if (fromStock && substitution.withdrawn().isEmpty()) {
        instead(substitution, ledger, exchange, account)
            .ifPresent(
                cost -> all.add(new Saving(substitution.id(), cost, spent(substitution, account))));
      }
    }
    return List.copyOf(all);
  }

  private static Optional<Money> instead(
      Substitution substitution, Ledger ledger, Exchange exchange, Account account) {
    return substitution
        .insteadOf()
        .item()
        .flatMap(ledger::kitItem)
        .flatMap(item -> item.price())
        .filter(price -> price.prices(substitution.insteadOf().qty()))
        .map(price -> price.of(substitution.insteadOf().qty()))
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

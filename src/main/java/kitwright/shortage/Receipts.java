package kitwright.shortage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Spend;
import kitwright.value.Money;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * Since when what a spend bought is here, as far as its own record and the stock show. What was
 * paid at the counter is here; what was paid before it should come is not, until somebody says so:
 * a day that was named is no proof that anything came on it.
 */
public final class Receipts {
  private static final Facts.Fact<Receipts> FACT = day -> new Receipts(day.ledger(), day.day());

  private final Ledger ledger;
  private final Map<String, LocalDate> inStock = new HashMap<>();

  /** By id of the order. */
  private final Map<String, List<Spend>> payments = new HashMap<>();

  /** Since when an order is here by what a payment of all of it says, by id of the order. */
  private final Map<String, LocalDate> byPayment = new HashMap<>();

  Receipts(Ledger ledger, LocalDate today) {
    this.ledger = ledger;
    ledger.stock().stream()
        .forEach(
            stock ->
                stock
                    .bought()
                    .ifPresent(ref -> inStock.put(ref.id(), stock.since().orElse(today))));
    for (Spend spend : ledger.spending()) {
      if (spend.state() == Spend.State.PAID && spend.pays().isPresent()) {
        payments.computeIfAbsent(spend.pays().get().id(), any -> new ArrayList<>(1)).add(spend);
      }
    }
    payments
        .values()
        .forEach(all -> all.forEach(each -> each.pays().ifPresent(order -> tell(order, each))));
  }

  /** A payment that names a part speaks for that part alone. */
  private void tell(Ref order, Spend payment) {
    Optional<Quantity> ordered = ledger.spend(order).flatMap(Spend::qty);
    boolean isPart =
        payment.qty().filter(part -> ordered.filter(all -> isAll(part, all)).isEmpty()).isPresent();
    if (!isPart) {
      told(payment)
          .or(() -> atTheCounter(payment, ledger.spend(order)))
          .ifPresent(day -> byPayment.merge(order.id(), day, (a, b) -> a.isBefore(b) ? a : b));
    }
  }

  private static boolean isAll(Quantity part, Quantity all) {
    return part.convertsTo(all) && part.compareAmount(all) >= 0;
  }

  /** The receipts up to the end of the day. */
  public static Receipts on(Facts day) {
    return FACT.on(day);
  }

  /** Since when it is here; empty where nothing shows that. */
  public Optional<LocalDate> since(Spend spend) {
    return since(spend, spend.pays().flatMap(ledger::spend));
  }

  /** The same, for a payment with its order. */
  Optional<LocalDate> since(Spend spend, Optional<Spend> order) {
    return told(spend).or(() -> order.flatMap(this::told)).or(() -> atTheCounter(spend, order));
  }

  /** What was ordered is here too where a payment of all of it is said to have come. */
  private Optional<LocalDate> told(Spend spend) {
    return spend
        .came()
        .or(() -> Optional.ofNullable(inStock.get(spend.id())))
        .or(() -> Optional.ofNullable(byPayment.get(spend.id())));
  }

  private Optional<LocalDate> atTheCounter(Spend spend, Optional<Spend> order) {
    boolean before =
        expected(spend, order).filter(spend.on()::isBefore).isPresent()
            || order.filter(this::isPaidInPart).isPresent();
    return before || spend.state() != Spend.State.PAID ? Optional.empty() : Optional.of(spend.on());
  }

  /** A deposit proves nothing: more is owed, in the currency of the order. */
  private boolean isPaidInPart(Spend order) {
    List<Spend> parts = payments.getOrDefault(order.id(), List.of());
    Currency currency = order.amount().currency();
    return parts.stream().noneMatch(Spend::inFull)
        && parts.stream().allMatch(each -> each.amount().currency().equals(currency))
        && parts.stream()
                .map(Spend::amount)
                .reduce(Money.zero(currency), Money::plus)
                .compareAmount(order.amount())
            < 0;
  }

  /** The day for which it is said, of a payment also by its order. */
  public Optional<LocalDate> expected(Spend spend) {
    return expected(spend, spend.pays().flatMap(ledger::spend));
  }

  static Optional<LocalDate> expected(Spend spend, Optional<Spend> order) {
    return spend.expected().or(() -> order.flatMap(Spend::expected));
  }
}

package kitwright.shortage;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Spend;
import kitwright.value.Ref;

/**
 * Since when what a spend bought is here, as far as its own record and the stock show. What was
 * paid at the counter is here; what was paid before it should come is not, until somebody says so:
 * a day that was named is no proof that anything came on it.
 */
public final class Receipts {
  private final Ledger ledger;
  private final Map<String, LocalDate> inStock = new HashMap<>();

  Receipts(Ledger ledger, LocalDate today) {
    this.ledger = ledger;
    ledger.stock().stream()
        .forEach(
            stock ->
                stock
                    .bought()
                    .ifPresent(ref -> inStock.put(ref.id(), stock.since().orElse(today))));
  }

  /** The receipts up to the end of the day. */
  public static Receipts on(Facts day) {
    return new Receipts(day.ledger(), day.day());
  }

  /**
   * Orders, and payments before the goods, of which nothing shows that they came. Of an order that
   * was paid the payment stands for both.
   */
  public Stream<Spend> awaited() {
    Set<String> paid = new HashSet<>();
    ledger.spending().stream()
        .filter(spend -> spend.state() == Spend.State.PAID)
        .forEach(spend -> spend.pays().map(Ref::id).ifPresent(paid::add));
    return ledger.spending().stream()
        .filter(spend -> spend.state() != Spend.State.REFUNDED)
        .filter(spend -> spend.withdrawn().isEmpty())
        .filter(spend -> !paid.contains(spend.id()) && since(spend).isEmpty());
  }

  /** Since when it is here; empty where nothing shows that. */
  public Optional<LocalDate> since(Spend spend) {
    return since(spend, spend.pays().flatMap(ledger::spend));
  }

  /** The same, for a payment with its order. */
  Optional<LocalDate> since(Spend spend, Optional<Spend> order) {
    return told(spend).or(() -> order.flatMap(this::told)).or(() -> atTheCounter(spend, order));
  }

  private Optional<LocalDate> told(Spend spend) {
    return spend.came().or(() -> Optional.ofNullable(inStock.get(spend.id())));
  }

  private Optional<LocalDate> atTheCounter(Spend spend, Optional<Spend> order) {
    boolean before = expected(spend, order).filter(spend.on()::isBefore).isPresent();
    return before || spend.state() != Spend.State.PAID ? Optional.empty() : Optional.of(spend.on());
  }

  /** The day for which it is said, of a payment also by its order. */
  public Optional<LocalDate> expected(Spend spend) {
    return expected(spend, spend.pays().flatMap(ledger::spend));
  }

  static Optional<LocalDate> expected(Spend spend, Optional<Spend> order) {
    return spend.expected().or(() -> order.flatMap(Spend::expected));
  }
}

package kitwright.shortage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.ledger.Spend;
import kitwright.value.Money;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/** What was bought of each item of the kit; an order and its payments are one purchase. */
final class Purchases {
  private final Ledger ledger;
  private final Map<String, List<Purchase>> byItem = new HashMap<>();
  private final Map<String, List<Spend>> payments = new HashMap<>();
  private final Map<String, List<Spend>> refunds = new HashMap<>();
  private final Receipts receipts;

  Purchases(Ledger ledger, LocalDate today) {
    this.ledger = ledger;
    receipts = new Receipts(ledger, today);
    List<Spend> spends = ledger.spending();
    for (Spend spend : spends) {
      spend
          .refunds()
          .ifPresent(ref -> refunds.computeIfAbsent(ref.id(), Purchases::list).add(spend));
      if (spend.state() == Spend.State.PAID) {
        spend
            .pays()
            .ifPresent(ref -> payments.computeIfAbsent(ref.id(), Purchases::list).add(spend));
      }
    }
    spends.stream()
        .filter(spend -> spend.state() == Spend.State.ORDERED || order(spend).isEmpty())
        .filter(spend -> spend.state() != Spend.State.REFUNDED)
        .forEach(this::take);
  }

  private static List<Spend> list(String any) {
    return new ArrayList<>();
  }

  private Optional<Spend> order(Spend payment) {
    return payment.pays().flatMap(ledger::spend);
  }

  /** What was bought of an item and not given back, by day. */
  List<Purchase> of(String item) {
    return byItem.getOrDefault(item, List.of());
  }

  /** An order with its payments, or a payment without an order. */
  private void take(Spend root) {
    Optional<String> because = because(root);
    Optional<String> item = item(root);
    Optional<Quantity> whole = item.flatMap(id -> qty(root, because));
    if (item.isEmpty() || whole.isEmpty()) {
      return;
    }
    Quantity left = whole.get().less(returned(root, whole.get()));
    List<Spend> paid = payments.getOrDefault(root.id(), List.of());
    for (Spend payment : paid) {
      Quantity part = payment.qty().filter(left::convertsTo).orElse(left).min(left);
      left = left.less(part);
      Quantity kept = part.less(returned(payment, part));
      add(payment, Optional.of(root), item.get(), because, kept);
    }
    boolean withdrawn = root.withdrawn().isPresent();
    if (!withdrawn) {
      add(root, Optional.empty(), item.get(), because, left);
    }
  }

  private void add(
      Spend spend, Optional<Spend> order, String item, Optional<String> because, Quantity qty) {
    if (!qty.isNone()) {
      byItem
          .computeIfAbsent(item, any -> new ArrayList<>())
          .add(
              new Purchase(
                  spend,
                  item,
                  qty,
                  because,
                  spend.on(),
                  Receipts.expected(spend, order),
                  receipts.since(spend, order)));
    }
  }

  /** The shortage that it, or a payment of it, was bought for. */
  private Optional<String> because(Spend root) {
    return root.because()
        .or(
            () ->
                payments.getOrDefault(root.id(), List.of()).stream()
                    .flatMap(payment -> payment.because().stream())
                    .findFirst())
        .map(Ref::id);
  }

  /** The item that was bought; a spend that a shortage caused need not buy the thing itself. */
  private Optional<String> item(Spend root) {
    return with(root, Spend::item)
        .map(Ref::id)
        .or(
            () ->
                with(root, Spend::replaces)
                    .flatMap(ledger::shortage)
                    .map(shortage -> shortage.item().id()))
        .or(() -> boughtAsDecided(root));
  }

  /** So much, where buying it was decided, is taken to be of the missing thing. */
  private Optional<String> boughtAsDecided(Spend root) {
    return with(root, Spend::qty).isEmpty() || with(root, Spend::material).isPresent()
        ? Optional.empty()
        : with(root, Spend::because)
            .flatMap(ledger::shortage)
            .filter(
                shortage ->
                    shortage
                        .chosen()
                        .filter(option -> option.way() == Shortage.Way.BUY)
                        .isPresent())
            .map(shortage -> shortage.item().id());
  }

  /** What the order says, or a payment of it. */
  private <T> Optional<T> with(Spend root, Function<Spend, Optional<T>> what) {
    return what.apply(root)
        .or(
            () ->
                payments.getOrDefault(root.id(), List.of()).stream()
                    .flatMap(payment -> what.apply(payment).stream())
                    .findFirst());
  }

  /** As written; else all that its shortage lacked, which it says it was bought for. */
  private Optional<Quantity> qty(Spend root, Optional<String> because) {
    Optional<Quantity> ofPayments =
        payments.getOrDefault(root.id(), List.of()).stream()
            .flatMap(payment -> payment.qty().stream())
            .reduce((one, two) -> two.convertsTo(one) ? one.plus(two) : one);
    return root.qty()
        .or(() -> ofPayments)
        .or(
            () ->
                because.flatMap(
                    id -> ledger.<Shortage>find(Kind.SHORTAGES, id).map(Shortage::qty)));
  }

  /**
   * What went back for its money: so much as the refund says; all of it where all was paid back.
   */
  private Quantity returned(Spend bought, Quantity qty) {
    List<Spend> all = refunds.getOrDefault(bought.id(), List.of());
    if (isWhole(bought, all)) {
      return qty;
    }
    return all.stream()
        .flatMap(refund -> refund.qty().stream())
        .filter(qty::convertsTo)
        .reduce(Quantity.none(qty.unit()), Quantity::plus);
  }

  /** Whether all that was paid came back, by refunds that do not say of how much. */
  private static boolean isWhole(Spend bought, List<Spend> refunds) {
    Optional<Money> sum = Optional.empty();
    for (Spend refund : refunds) {
      if (refund.qty().isEmpty()) {
        if (!refund.amount().currency().equals(bought.amount().currency())) {
          return true;
        }
        sum = sum.map(refund.amount()::plus).or(() -> Optional.of(refund.amount()));
      }
    }
    return sum.filter(back -> back.compareAmount(bought.amount()) >= 0).isPresent();
  }

  /** Whether a purchase was made at this firm, by its id or its name. */
  boolean isAt(Ref firm, Purchase purchase) {
    return purchase
        .spend()
        .to()
        .or(() -> order(purchase.spend()).flatMap(Spend::to))
        .filter(to -> ledger.nameOf(to).equals(ledger.nameOf(firm.id())))
        .isPresent();
  }
}

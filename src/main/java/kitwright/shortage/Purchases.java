package kitwright.shortage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
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
    spends.stream().filter(this::isRoot).forEach(this::take);
  }

  /** Whether it is an order, or a payment without one. */
  private boolean isRoot(Spend spend) {
    return spend.state() == Spend.State.ORDERED
        || (spend.state() == Spend.State.PAID && order(spend).isEmpty());
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
    parts(root, whole.get())
        .map(part -> part.purchase(item.get(), because))
        .forEach(
            purchase -> byItem.computeIfAbsent(item.get(), any -> new ArrayList<>()).add(purchase));
  }

  /**
   * So much of what was bought, with the payment that stands for it, or the order where none does.
   *
   * @param expected the day it shall come
   * @param here since when it is here; empty while it is not
   */
  record Part(Spend spend, Quantity qty, Optional<LocalDate> expected, Optional<LocalDate> here) {
    private Purchase purchase(String item, Optional<String> because) {
      return new Purchase(spend, item, qty, because, spend.on(), expected, here);
    }
  }

  /** The parts of an order, or of a payment without one, that were not given back. */
  Stream<Part> parts(Spend root, Quantity whole) {
    List<Part> parts = new ArrayList<>();
    Quantity left = whole.less(returned(root, whole));
    for (Spend payment : payments.getOrDefault(root.id(), List.of())) {
      Quantity part = payment.qty().filter(left::convertsTo).orElse(left).min(left);
      left = left.less(part);
      parts.add(part(payment, Optional.of(root), part.less(returned(payment, part))));
    }
    if (root.withdrawn().isEmpty()) {
      parts.add(part(root, Optional.empty(), left));
    }
    return parts.stream().filter(part -> !part.qty().isNone());
  }

  /** What nothing shows to have come: by parts where it is known how much was bought. */
  Stream<Undelivered> undelivered() {
    return ledger.spending().stream().filter(this::isRoot).flatMap(this::undelivered);
  }

  private Stream<Undelivered> undelivered(Spend root) {
    Optional<Quantity> whole = qty(root, because(root));
    if (whole.isEmpty()) {
      List<Spend> paid = payments.getOrDefault(root.id(), List.of());
      return (paid.isEmpty() ? Stream.of(root) : paid.stream())
          .filter(each -> each.withdrawn().isEmpty() && receipts.since(each).isEmpty())
          .map(each -> new Undelivered(each, Optional.empty(), receipts.expected(each)));
    }
    return parts(root, whole.get())
        .filter(part -> part.spend().withdrawn().isEmpty() && part.here().isEmpty())
        .map(
            part ->
                new Undelivered(
                    part.spend(),
                    Optional.of(part.qty()).filter(qty -> qty.compareAmount(whole.get()) < 0),
                    part.expected()));
  }

  private Part part(Spend spend, Optional<Spend> order, Quantity qty) {
    return new Part(spend, qty, Receipts.expected(spend, order), receipts.since(spend, order));
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

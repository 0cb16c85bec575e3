package kitwright.spending;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.ledger.Ledger;
import kitwright.ledger.Spend;
import kitwright.value.Money;

/**
 * What was paid for each purchase, and what of it has come back. A purchase is an order with all
 * its payments, or a payment that names no order.
 */
final class Purchases {
  private final Ledger ledger;
  private final Exchange exchange;
  private final LocalDate asOf;
  private final Map<String, List<Spend>> payments = new HashMap<>();
  private final Map<String, List<Returned>> returned = new HashMap<>();
  private final Map<String, Map<String, Money>> backByLine = new HashMap<>();

  Purchases(Ledger ledger, Exchange exchange, LocalDate asOf) {
    this.ledger = ledger;
    this.exchange = exchange;
    this.asOf = asOf;
  }

  /** A payment, which may name an order. */
  void pay(Spend spend) {
    spend
        .pays()
        .ifPresent(
            order -> payments.computeIfAbsent(order.id(), id -> new ArrayList<>(1)).add(spend));
  }

  /**
   * Payments in the currency of an order; those without a rate are left out, and told elsewhere.
   */
  Money sum(List<Spend> paid, Spend order) {
    return paid.stream()
        .flatMap(payment -> exchange.inOrder(payment, order, asOf).stream())
        .reduce(Money.zero(order.amount().currency()), Money::plus);
  }

  /** The purchase that a refund belongs to: an order, or a payment that names none. */
  Optional<Spend> of(Spend refund) {
    return refund.refunds().flatMap(ledger::spend).map(this::purchaseOf);
  }

  /** The order that a payment pays; of another payment, or an order, itself. */
  Spend purchaseOf(Spend bought) {
    return bought
        .pays()
        .flatMap(ledger::spend)
        .filter(order -> Books.is(order, Spend.State.ORDERED))
        .orElse(bought);
  }

  /** A refund, with what of it counts. */
  void giveBack(Returned each) {
    each.purchase()
        .ifPresent(
            purchase ->
                returned.computeIfAbsent(purchase.id(), id -> new ArrayList<>(1)).add(each));
  }

  /** What has come back of a purchase so far, in its currency. */
  Money back(Spend purchase) {
    return sum(returned.getOrDefault(purchase.id(), List.of()), purchase.amount());
  }

  private static Money sum(List<Returned> all, Money like) {
    return all.stream()
        .flatMap(each -> each.ofPurchase().stream())
        .reduce(Money.zero(like.currency()), Money::plus);
  }

  /**
   * The lines that what comes back is taken from, each no further than it paid: that of the payment
   * that the refund names, or else its own, first; then the others in the order of their days.
   */
  Map<String, Money> byLine(Spend refund, Spend purchase, Money granted) {
    Spend named = refund.refunds().flatMap(ledger::spend).orElse(purchase);
    Map<String, Money> left = new LinkedHashMap<>();
    Money nothing = Money.zero(granted.currency());
    Stream.of(Books.is(named, Spend.State.PAID) ? named.line() : refund.line(), named.line())
        .forEach(line -> left.put(line.id(), nothing));
    for (Spend payment : paymentsOf(purchase).stream().sorted(Books.BY_DAY).toList()) {
      if (!payment.on().isAfter(refund.on())) {
        left.merge(payment.line().id(), sum(List.of(payment), purchase), Money::plus);
      }
    }
    Map<String, Money> back = backByLine.computeIfAbsent(purchase.id(), id -> new HashMap<>());
    Map<String, Money> parts = new LinkedHashMap<>();
    Money rest = granted;
    for (Map.Entry<String, Money> line : left.entrySet()) {
      Money paid = line.getValue().minus(back.getOrDefault(line.getKey(), nothing)).max(nothing);
      Money part = rest.min(paid);
      rest = rest.minus(part);
      parts.put(line.getKey(), part);
      back.merge(line.getKey(), part, Money::plus);
    }
    return parts;
  }

  /** What was paid of it up to the day, in its currency; without what a rate is missing for. */
  Money paid(Spend purchase) {
    return sum(paymentsOf(purchase), purchase);
  }

  /** The payments of an order up to the day, in the order of the ledger; of a payment itself. */
  List<Spend> paymentsOf(Spend purchase) {
    return Books.is(purchase, Spend.State.PAID)
        ? List.of(purchase)
        : payments.getOrDefault(purchase.id(), List.of());
  }

  /**
   * What of an order or a payment has come back, in its currency. A refund that names an order, not
   * the payment, gives back its other payments first.
   *
   * @param before refunds of that day and later are left out; empty for none
   */
  Money givenBack(Spend bought, Optional<LocalDate> before) {
    Spend purchase = purchaseOf(bought);
    List<Returned> all =
        returned.getOrDefault(purchase.id(), List.of()).stream()
            .filter(each -> before.filter(day -> !each.refund().on().isBefore(day)).isEmpty())
            .toList();
    Money back = sum(all, purchase.amount());
    if (purchase.id().equals(bought.id())) {
      return back;
    }
    Optional<Money> own = exchange.inOrder(bought, purchase, asOf);
    Money named = sum(all.stream().filter(each -> each.names(bought)).toList(), back);
    Money ofOrder = sum(all.stream().filter(each -> each.names(purchase)).toList(), back);
    Money nothing = Money.zero(back.currency());
    return own.map(
            mine -> {
              Money others = sum(paymentsOf(purchase), purchase).minus(mine);
              Money ofOthers = back.minus(named).minus(ofOrder);
              Money rest = ofOrder.minus(others.minus(ofOthers).max(nothing)).max(nothing);
              Money mineBack = named.plus(rest).min(mine);
              return Share.of(bought.amount(), mineBack, mine);
            })
        .orElse(Money.zero(bought.amount().currency()));
  }
}

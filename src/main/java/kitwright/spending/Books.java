package kitwright.spending;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Spend;
import kitwright.value.Money;

/**
 * What counts of the spends up to a day. Payments that name an order reduce what is open of it; a
 * refund gives back no more than was paid, by its day, for the same purchase, which is an order
 * with all its payments, or a payment that names no order. Whoever asks whether money has come back
 * asks here.
 */
public final class Books {
  /** Stands for the line of a spend whose line the budget does not have. */
  public static final String NO_LINE = "";

  static final Comparator<Spend> BY_DAY = Comparator.comparing(Spend::on).thenComparing(Spend::id);

  private static final Facts.Fact<Books> FACT =
      day -> of(day.ledger(), Exchange.on(day), day.day());

  private final Exchange exchange;
  private final LocalDate asOf;
  private final Money zero;
  private final Purchases purchases;
  private final Valuing valuing;
  private final List<Spend> belowZero = new ArrayList<>();
  private final List<Returned> returned = new ArrayList<>();
  private final Map<String, Tally> tallies = new HashMap<>();
  private final List<Valued> valued = new ArrayList<>();
  private final List<Spend> unvalued = new ArrayList<>();
  private final List<Refused> refused = new ArrayList<>();

  private Books(Ledger ledger, Exchange exchange, LocalDate asOf) {
    this.exchange = exchange;
    this.asOf = asOf;
    zero = Money.zero(exchange.home());
    purchases = new Purchases(ledger, exchange, asOf);
    valuing = new Valuing(ledger, exchange, asOf);
  }

  /** The books at the end of the day. */
  public static Books on(Facts day) {
    return FACT.on(day);
  }

  /** The books at the end of another day than the ledger’s. */
  public static Books of(Ledger ledger, Exchange exchange, LocalDate asOf) {
    Books books = new Books(ledger, exchange, asOf);
    List<Spend> orders = new ArrayList<>();
    List<Spend> refunds = new ArrayList<>();
    for (Spend spend : ledger.spending()) {
      if (spend.on().isAfter(asOf)) {
        continue;
      }
      if (spend.amount().signum() < 0) {
        books.belowZero.add(spend);
        continue;
      }
      switch (spend.state()) {
        case PAID -> books.pay(spend);
        case ORDERED -> orders.add(spend);
        case REFUNDED -> refunds.add(spend);
      }
    }
    orders.forEach(books::order);
    refunds.sort(BY_DAY);
    for (Spend refund : refunds) {
      books.purchases.of(refund).ifPresent(purchase -> books.refund(refund, purchase));
    }
    refunds.removeIf(each -> books.purchases.of(each).isPresent());
    if (!refunds.isEmpty()) {
      SpentByDay byDay = new SpentByDay(books.valued, books.zero);
      refunds.forEach(each -> books.refundOnLine(each, byDay));
    }
    return books;
  }

  public static boolean is(Spend spend, Spend.State state) {
    return spend.state() == state;
  }

  /** What counts, in the order of the ledger within each state. */
  public List<Valued> valued() {
    return List.copyOf(valued);
  }

  /** Spends that could not be valued, since a rate is missing. */
  public List<Spend> unvalued() {
    return unvalued.stream().sorted(BY_DAY).toList();
  }

  /** Spends below zero, which are in no sum. */
  public List<Spend> belowZero() {
    return List.copyOf(belowZero);
  }

  /** Refunds, or parts of them, that give back what nobody paid. */
  public List<Refused> refused() {
    return List.copyOf(refused);
  }

  /** What of each refund has come back. */
  public List<Returned> returned() {
    return List.copyOf(returned);
  }

  /** The order that a payment pays; of another payment, or an order, itself. */
  public Spend purchaseOf(Spend bought) {
    return purchases.purchaseOf(bought);
  }

  /** What was paid of it up to the day, in its currency; without what a rate is missing for. */
  public Money paid(Spend purchase) {
    return purchases.paid(purchase);
  }

  /** The payments of an order up to the day, in the order of the ledger; of a payment itself. */
  public List<Spend> paymentsOf(Spend purchase) {
    return purchases.paymentsOf(purchase);
  }

  /**
   * What of an order or a payment has come back, in its currency. A refund that names an order, not
   * the payment, gives back its other payments first.
   *
   * @param before refunds of that day and later are left out; empty for none
   */
  public Money givenBack(Spend bought, Optional<LocalDate> before) {
    return purchases.givenBack(bought, before);
  }

  /** Whether anything counts on a line. */
  public boolean holds(String line) {
    return tallies.containsKey(line);
  }

  /** The sums of a line. */
  public Tally tally(String line) {
    return tallies.getOrDefault(line, new Tally(zero));
  }

  private void count(Valued each) {
    valued.add(each);
    tallies.computeIfAbsent(each.line(), line -> new Tally(zero)).add(each);
  }

  private void pay(Spend spend) {
    purchases.pay(spend);
    value(spend, spend.amount()).ifPresent(this::count);
  }

  private void order(Spend spend) {
    Money open = open(spend);
    if (open.signum() > 0) {
      value(spend, open).ifPresent(this::count);
    }
  }

  /** What is still to be paid of an order, in its own currency. */
  private Money open(Spend order) {
    Money nothing = Money.zero(order.amount().currency());
    boolean withdrawn = order.withdrawn().filter(day -> !day.isAfter(asOf)).isPresent();
    List<Spend> paid = purchases.paymentsOf(order);
    if (withdrawn || paid.stream().anyMatch(Spend::inFull)) {
      return nothing;
    }
    return order.amount().minus(purchases.sum(paid, order)).max(nothing);
  }

  /** Of one that names nothing: from what was paid on its line by its day. */
  private void refundOnLine(Spend spend, SpentByDay byDay) {
    String line = valuing.line(spend.line().id());
    Money byThen = byDay.on(line, spend.on());
    Money left = byThen.min(tally(line).spent()).min(allSpent()).max(zero);
    Optional<Valued> all = value(spend, spend.amount());
    if (all.isEmpty()) {
      returned(new Returned(spend, Optional.empty(), spend.amount(), Optional.empty()));
      return;
    }
    Money asked = all.get().counted();
    if (asked.compareAmount(left) > 0) {
      refused.add(new Refused(spend, Optional.empty(), asked, left, false));
    }
    Money granted = asked.min(left);
    Money came = Share.of(spend.amount(), granted, asked);
    returned(new Returned(spend, Optional.empty(), came, Optional.empty()));
    Valued counted = granted.equals(asked) ? all.get() : all.get().counting(granted);
    byDay.add(counted);
    take(counted);
  }

  private void returned(Returned each) {
    returned.add(each);
    purchases.giveBack(each);
  }

  private Optional<Valued> value(Spend spend, Money part) {
    Optional<Valued> worth = valuing.of(spend, part);
    if (worth.isEmpty()) {
      unvalued.add(spend);
    }
    return worth;
  }

  private Money allSpent() {
    return tallies.values().stream().map(Tally::spent).reduce(zero, Money::plus);
  }

  /** Of a refund of what nobody had paid by then. */
  private void refuseAll(Spend refund, Spend purchase) {
    Money nothing = Money.zero(refund.amount().currency());
    refused.add(new Refused(refund, Optional.of(purchase), refund.amount(), nothing, true));
    returned(new Returned(refund, Optional.of(purchase), nothing, Optional.empty()));
  }

  private void refund(Spend spend, Spend purchase) {
    List<Spend> paid =
        purchases.paymentsOf(purchase).stream()
            .filter(payment -> !payment.on().isAfter(spend.on()))
            .toList();
    if (paid.isEmpty()) {
      refuseAll(spend, purchase);
      return;
    }
    Optional<Money> asked = exchange.inOrder(spend, purchase, asOf);
    if (asked.isEmpty()) {
      unvalued.add(spend);
      returned(new Returned(spend, Optional.of(purchase), spend.amount(), Optional.empty()));
      return;
    }
    grant(
        spend,
        purchase,
        asked.get(),
        purchases.sum(paid, purchase).minus(purchases.back(purchase)));
  }

  private void grant(Spend spend, Spend purchase, Money asked, Money paid) {
    Money left = paid.max(Money.zero(paid.currency()));
    if (asked.compareAmount(left) > 0) {
      refused.add(new Refused(spend, Optional.of(purchase), asked, left, false));
    }
    Money granted = asked.min(left);
    Money came = Share.of(spend.amount(), granted, asked);
    returned(new Returned(spend, Optional.of(purchase), came, Optional.of(granted)));
    value(spend, spend.amount())
        .ifPresent(all -> take(all, purchases.byLine(spend, purchase, granted), asked));
  }

  /** Counts a refund line by line, to the minor unit. */
  private void take(Valued all, Map<String, Money> parts, Money asked) {
    Money nothing = Money.zero(asked.currency());
    Money sum = nothing;
    for (Map.Entry<String, Money> part : parts.entrySet()) {
      Money before = Share.of(all.counted(), sum, asked);
      sum = sum.plus(part.getValue());
      Money counted = Share.of(all.counted(), sum, asked).minus(before);
      boolean whole = part.getValue().equals(asked);
      take((whole ? all : all.counting(counted)).on(valuing.line(part.getKey())));
    }
  }

  private void take(Valued refund) {
    if (refund.counted().signum() > 0) {
      count(refund);
    }
  }
}

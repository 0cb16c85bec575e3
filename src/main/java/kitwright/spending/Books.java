package kitwright.spending;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.ledger.BudgetLine;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Spend;
import kitwright.value.Money;
import kitwright.value.Ref;

/**
 * What counts of the spends up to a day. Payments that name an order reduce what is open of it; a
 * refund gives back no more than was paid, by its day, for the same purchase, which is an order
 * with all its payments, or a payment that names no order. Whoever asks whether money has come back
 * asks here.
 */
public final class Books {
  /** Stands for the line of a spend whose line the budget does not have. */
  public static final String NO_LINE = "";

  private static final Comparator<Spend> BY_DAY =
      Comparator.comparing(Spend::on).thenComparing(Spend::id);

  private static final Facts.Fact<Books> FACT =
      day -> of(day.ledger(), Exchange.on(day), day.day());

  private final Ledger ledger;
  private final Exchange exchange;
  private final LocalDate asOf;
  private final Money zero;
  private final Map<String, List<Spend>> payments = new HashMap<>();
  private final Map<String, List<Returned>> returned = new HashMap<>();
  private final Map<String, Map<String, Money>> backByLine = new HashMap<>();
  private final List<Spend> belowZero = new ArrayList<>();
  private final List<Returned> allReturned = new ArrayList<>();
  private final Map<String, Tally> tallies = new HashMap<>();
  private final Map<Currency, Optional<Quote>> planned = new HashMap<>();
  private final List<Valued> valued = new ArrayList<>();
  private final List<Spend> unvalued = new ArrayList<>();
  private final List<Refused> refused = new ArrayList<>();

  private Books(Ledger ledger, Exchange exchange, LocalDate asOf) {
    this.ledger = ledger;
    this.exchange = exchange;
    this.asOf = asOf;
    zero = Money.zero(exchange.home());
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
      if (!spend.on().isAfter(asOf) && spend.amount().signum() < 0) {
        books.belowZero.add(spend);
      } else if (!spend.on().isAfter(asOf)) {
        switch (spend.state()) {
          case PAID -> books.pay(spend);
          case ORDERED -> orders.add(spend);
          case REFUNDED -> refunds.add(spend);
        }
      }
    }
    orders.forEach(books::order);
    refunds.sort(BY_DAY);
    refunds.stream().filter(each -> books.purchase(each).isPresent()).forEach(books::refund);
    refunds.stream().filter(each -> books.purchase(each).isEmpty()).forEach(books::refund);
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
    spend
        .pays()
        .ifPresent(
            order -> payments.computeIfAbsent(order.id(), id -> new ArrayList<>(1)).add(spend));
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
    List<Spend> paid = payments.getOrDefault(order.id(), List.of());
    if (withdrawn || paid.stream().anyMatch(Spend::inFull)) {
      return nothing;
    }
    return order.amount().minus(sum(paid, order)).max(nothing);
  }

  /**
   * Payments in the currency of an order; those without a rate are left out, and told elsewhere.
   */
  private Money sum(List<Spend> paid, Spend order) {
    return paid.stream()
        .flatMap(payment -> exchange.inOrder(payment, order, asOf).stream())
        .reduce(Money.zero(order.amount().currency()), Money::plus);
  }

  /** The purchase that a refund belongs to: an order, or a payment that names none. */
  private Optional<Spend> purchase(Spend refund) {
    return refund
        .refunds()
        .flatMap(ledger::spend)
        .filter(bought -> !is(bought, Spend.State.REFUNDED))
        .map(this::purchaseOf);
  }

  private Spend purchaseOf(Spend bought) {
    return bought
        .pays()
        .flatMap(ledger::spend)
        .filter(order -> is(order, Spend.State.ORDERED))
        .orElse(bought);
  }

  private void refund(Spend spend) {
    Optional<Spend> purchase = purchase(spend);
    Optional<Spend> other = spend.refunds().flatMap(ledger::spend);
    if (purchase.isPresent()) {
      refund(spend, purchase.get());
    } else if (other.isPresent()) {
      refuseAll(spend, other.get());
    } else {
      refundOnLine(spend);
    }
  }

  private void refundOnLine(Spend spend) {
    Money left = tally(line(spend.line())).spent().min(allSpent()).max(zero);
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
    take(granted.equals(asked) ? all.get() : cut(all.get(), granted));
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

  private void returned(Returned each) {
    allReturned.add(each);
    each.purchase()
        .ifPresent(
            purchase ->
                returned.computeIfAbsent(purchase.id(), id -> new ArrayList<>(1)).add(each));
  }

  private void refund(Spend spend, Spend purchase) {
    List<Spend> paid =
        paymentsOf(purchase).stream().filter(payment -> !payment.on().isAfter(spend.on())).toList();
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
    grant(spend, purchase, asked.get(), sum(paid, purchase).minus(back(purchase)));
  }

  /** What has come back of a purchase so far, in its currency. */
  private Money back(Spend purchase) {
    return sum(returned.getOrDefault(purchase.id(), List.of()), purchase.amount());
  }

  private static Money sum(List<Returned> all, Money like) {
    return all.stream()
        .flatMap(each -> each.ofPurchase().stream())
        .reduce(Money.zero(like.currency()), Money::plus);
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
        .ifPresent(all -> take(all, byLine(spend, purchase, granted), asked));
  }

  /**
   * The lines that what comes back is taken from, each no further than it paid: that of the payment
   * that the refund names, or else its own, first.
   */
  private Map<String, Money> byLine(Spend refund, Spend purchase, Money granted) {
    Spend named = refund.refunds().flatMap(ledger::spend).orElse(purchase);
    Map<String, Money> left = new LinkedHashMap<>();
    Money nothing = Money.zero(granted.currency());
    Stream.of(is(named, Spend.State.PAID) ? named.line() : refund.line(), named.line())
        .forEach(line -> left.put(line(line), nothing));
    for (Spend payment : paymentsOf(purchase)) {
      if (!payment.on().isAfter(refund.on())) {
        left.merge(line(payment.line()), sum(List.of(payment), purchase), Money::plus);
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

  /** Counts a refund line by line, to the minor unit. */
  private void take(Valued all, Map<String, Money> parts, Money asked) {
    Money nothing = Money.zero(asked.currency());
    Money sum = nothing;
    for (Map.Entry<String, Money> part : parts.entrySet()) {
      Money before = Share.of(all.counted(), sum, asked);
      sum = sum.plus(part.getValue());
      Money counted = Share.of(all.counted(), sum, asked).minus(before);
      boolean whole = part.getValue().equals(asked);
      take(onLine(whole ? all : cut(all, counted), part.getKey()));
    }
  }

  /** What was paid of it up to the day, in its currency; without what a rate is missing for. */
  public Money paid(Spend purchase) {
    return sum(paymentsOf(purchase), purchase);
  }

  /** The payments of an order up to the day, in the order of the ledger; of a payment itself. */
  public List<Spend> paymentsOf(Spend purchase) {
    return is(purchase, Spend.State.PAID)
        ? List.of(purchase)
        : payments.getOrDefault(purchase.id(), List.of());
  }

  /** What of each refund has come back. */
  public List<Returned> returned() {
    return List.copyOf(allReturned);
  }

  /**
   * What of an order or a payment has come back, in its currency. A refund that names an order, not
   * the payment, gives back its other payments first.
   *
   * @param before refunds of that day and later are left out; empty for none
   */
  public Money givenBack(Spend bought, Optional<LocalDate> before) {
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

  private void take(Valued refund) {
    if (refund.counted().signum() > 0) {
      count(refund);
    }
  }

  private static Valued onLine(Valued all, String line) {
    return new Valued(
        all.spend(),
        all.origin(),
        all.answers(),
        line,
        all.counted(),
        all.planned(),
        all.tax(),
        all.duty(),
        all.quote());
  }

  /** The same with less of it counted. */
  private static Valued cut(Valued all, Money counted) {
    Money most = counted.max(Money.zero(counted.currency()));
    return new Valued(
        all.spend(),
        all.origin(),
        all.answers(),
        all.line(),
        most,
        Share.of(all.planned(), most, all.counted()),
        Share.of(all.tax(), most, all.counted()),
        Share.of(all.duty(), most, all.counted()),
        all.quote());
  }

  private String line(Ref line) {
    return ledger.budgetLine(line).map(BudgetLine::line).orElse(NO_LINE);
  }

  /** The whole or the open part of a spend in the build's currency. */
  private Optional<Valued> value(Spend spend, Money part) {
    LocalDate day = is(spend, Spend.State.ORDERED) ? asOf : spend.on();
    Optional<Conversion.Known> known = exchange.home(part, day, spend.rate()).known();
    if (known.isEmpty()) {
      unvalued.add(spend);
      return Optional.empty();
    }
    Money atPlan =
        planned
            .computeIfAbsent(part.currency(), exchange::planned)
            .map(quote -> quote.of(part))
            .orElse(known.get().result());
    Optional<Spend> origin = spend.pays().or(spend::refunds).flatMap(ledger::spend);
    return Optional.of(
        new Valued(
            spend,
            origin,
            answers(spend).or(() -> origin.flatMap(this::answers)),
            line(spend.line()),
            known.get().result(),
            atPlan,
            of(spend, spend.tax(), part, day),
            of(spend, spend.duty(), part, day),
            known.get().quote()));
  }

  /** The shortage that a spend answers: its own, or that of the substitution it was made for. */
  private Optional<Ref> answers(Spend spend) {
    return spend
        .because()
        .or(
            () ->
                spend
                    .substitution()
                    .flatMap(ledger::substitution)
                    .flatMap(substitution -> substitution.shortage()));
  }

  private Money of(Spend spend, Optional<Money> tax, Money part, LocalDate day) {
    return tax.flatMap(
            whole ->
                exchange.home(Share.of(whole, part, spend.amount()), day, spend.rate()).money())
        .orElse(zero);
  }
}

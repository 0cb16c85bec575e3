package kitwright.money;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.ledger.BudgetLine;
import kitwright.ledger.Ledger;
import kitwright.ledger.Spend;
import kitwright.value.Money;
import kitwright.value.Ref;

/**
 * Values the spends up to a day. Payments that name an order reduce what is open of it; refunds are
 * taken out of what was paid for the same purchase, which is an order with all its payments, or a
 * payment that names no order.
 */
final class Books {
  /** Stands for the line of a spend whose line the budget does not have. */
  static final String NO_LINE = "";

  private static final Comparator<Spend> BY_DAY =
      Comparator.comparing(Spend::on).thenComparing(Spend::id);

  private final Ledger ledger;
  private final Exchange exchange;
  private final LocalDate asOf;
  private final Money zero;
  private final Map<String, List<Spend>> payments = new HashMap<>();
  private final Map<String, Money> unrefunded = new HashMap<>();
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

  static Books of(Ledger ledger, Exchange exchange, LocalDate asOf) {
    Books books = new Books(ledger, exchange, asOf);
    List<Spend> orders = new ArrayList<>();
    List<Spend> refunds = new ArrayList<>();
    for (Spend spend : ledger.spending()) {
      if (!spend.on().isAfter(asOf) && spend.amount().signum() >= 0) {
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

  static boolean is(Spend spend, Spend.State state) {
    return spend.state() == state;
  }

  /** What counts, in the order of the ledger within each state. */
  List<Valued> valued() {
    return List.copyOf(valued);
  }

  /** Spends that could not be valued, since a rate is missing. */
  List<Spend> unvalued() {
    return unvalued.stream().sorted(BY_DAY).toList();
  }

  /** Refunds, or parts of them, that give back what nobody paid. */
  List<Refused> refused() {
    return List.copyOf(refused);
  }

  /** Whether anything counts on a line. */
  boolean holds(String line) {
    return tallies.containsKey(line);
  }

  /** The sums of a line. */
  Tally tally(String line) {
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
        .map(bought -> bought.pays().flatMap(ledger::spend).orElse(bought));
  }

  private void refund(Spend spend) {
    Optional<Spend> purchase = purchase(spend);
    if (purchase.isPresent()) {
      refund(spend, purchase.get());
    } else {
      String line = line(spend.line());
      Money left = tally(line).spent().min(allSpent()).max(zero);
      value(spend, spend.amount())
          .ifPresent(
              all -> {
                refuse(spend, Optional.empty(), all.counted(), left);
                take(all.counted().compareAmount(left) <= 0 ? all : cut(all, left));
              });
    }
  }

  private Money allSpent() {
    return tallies.values().stream().map(Tally::spent).reduce(zero, Money::plus);
  }

  private void refuse(Spend refund, Optional<Spend> purchase, Money asked, Money left) {
    if (asked.compareAmount(left) > 0) {
      refused.add(new Refused(refund, purchase, asked, left));
    }
  }

  private void refund(Spend spend, Spend purchase) {
    Money left =
        unrefunded.computeIfAbsent(purchase.id(), id -> sum(paymentsOf(purchase), purchase));
    Optional<Money> asked = exchange.inOrder(spend, purchase, asOf);
    if (asked.isEmpty()) {
      unvalued.add(spend);
      return;
    }
    refuse(spend, Optional.of(purchase), asked.get(), left);
    Money granted = asked.get().min(left);
    unrefunded.put(purchase.id(), left.minus(granted));
    String line = spend.refunds().flatMap(ledger::spend).map(Spend::line).map(this::line).get();
    value(spend, spend.amount())
        .map(
            all ->
                granted.equals(asked.get())
                    ? all
                    : cut(all, Share.of(all.counted(), granted, asked.get())))
        .map(all -> onLine(all, line))
        .ifPresent(this::take);
  }

  private List<Spend> paymentsOf(Spend purchase) {
    return is(purchase, Spend.State.PAID)
        ? List.of(purchase).stream().filter(paid -> !paid.on().isAfter(asOf)).toList()
        : payments.getOrDefault(purchase.id(), List.of());
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
        all.duty());
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
        Share.of(all.duty(), most, all.counted()));
  }

  private String line(Ref line) {
    return ledger.budgetLine(line).map(BudgetLine::line).orElse(NO_LINE);
  }

  /** The whole or the open part of a spend in the build's currency. */
  private Optional<Valued> value(Spend spend, Money part) {
    LocalDate day = is(spend, Spend.State.ORDERED) ? asOf : spend.on();
    Optional<Money> counted = exchange.home(part, day, spend.rate()).money();
    if (counted.isEmpty()) {
      unvalued.add(spend);
      return Optional.empty();
    }
    Money atPlan =
        planned
            .computeIfAbsent(part.currency(), exchange::planned)
            .map(quote -> quote.of(part))
            .orElse(counted.get());
    Optional<Spend> origin = spend.pays().or(spend::refunds).flatMap(ledger::spend);
    return Optional.of(
        new Valued(
            spend,
            origin,
            answers(spend).or(() -> origin.flatMap(this::answers)),
            line(spend.line()),
            counted.get(),
            atPlan,
            of(spend, spend.tax(), part, day),
            of(spend, spend.duty(), part, day)));
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

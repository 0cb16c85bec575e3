package kitwright.money;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kitwright.claim.Asking;
import kitwright.ledger.Claim;
import kitwright.ledger.Ledger;
import kitwright.value.Money;
import kitwright.value.Ref;

/**
 * Money that a claim may bring back; never counted before it is in the spending as a refund.
 *
 * @param goodsOf value of the missing goods at the kit's price, by shortage, where money is asked
 *     for them and nothing has ended it
 * @param costsOf ids of the spending that the claim asks back
 * @param costs spending that the claim asks back, as far as it is paid or ordered
 * @param received come back already, as refunds for its shortages or costs
 * @param granted what the settlement says; empty while there is none, or it names no amount
 */
public record Back(
    Claim claim,
    State state,
    Map<String, Money> goodsOf,
    Set<String> costsOf,
    Money costs,
    Money received,
    Optional<Money> granted) {
  /** How far a claim has come. */
  public enum State {
    /** Not sent: nothing can be expected. */
    DRAFT,
    /** Sent and not settled. */
    ASKED,
    /** Settled with something for the builder. */
    GRANTED,
    /** Refused or withdrawn. */
    REFUSED
  }

  public Back {
    goodsOf = Map.copyOf(goodsOf);
    costsOf = Set.copyOf(costsOf);
  }

  /** Value of the missing goods that the claim asks in money. */
  public Money goods() {
    return goodsOf.values().stream().reduce(zero(), Money::plus);
  }

  /** All that the claim asks. */
  public Money asked() {
    return goods().plus(costs);
  }

  private Money zero() {
    return Money.zero(costs.currency());
  }

  /** What would still come if all that is asked were granted; nothing unless it is asked. */
  public Money ifGranted() {
    return state == State.ASKED
        ? left(asked().plus(granted.orElse(zero()))).minus(outstanding())
        : zero();
  }

  /** What is granted and has not come in yet. */
  public Money outstanding() {
    return state == State.GRANTED || state == State.ASKED ? left(granted.orElse(zero())) : zero();
  }

  private Money left(Money of) {
    return of.minus(received).max(zero());
  }

  static List<Back> of(Ledger ledger, Exchange exchange, LocalDate asOf, List<Valued> valued) {
    Map<String, List<Valued>> out = new HashMap<>();
    List<Valued> back = new ArrayList<>();
    for (Valued each : valued) {
      if (each.isBack()) {
        back.add(each);
      } else {
        out.computeIfAbsent(each.spend().id(), any -> new ArrayList<>(1)).add(each);
      }
    }
    return ledger.claims().stream()
        .map(claim -> of(claim, ledger, exchange, asOf, out, back))
        .toList();
  }

  private static Back of(
      Claim claim,
      Ledger ledger,
      Exchange exchange,
      LocalDate asOf,
      Map<String, List<Valued>> out,
      List<Valued> back) {
    Money zero = Money.zero(exchange.home());
    List<Asking> all = Asking.of(claim, ledger);
    List<Asking> parts = all.stream().filter(part -> !part.isSettled()).toList();
    Set<String> costs = new HashSet<>();
    parts.forEach(part -> part.costs().forEach(spend -> costs.add(spend.id())));
    Asking.besides(claim, ledger).forEach(spend -> costs.add(spend.id()));
    Set<String> shortages = ids(claim.shortages());
    Money spent =
        sum(costs.stream().flatMap(id -> out.getOrDefault(id, List.of()).stream()).toList(), zero);
    Set<String> given = new HashSet<>(costs);
    all.forEach(part -> part.costs().forEach(spend -> given.add(spend.id())));
    List<Valued> came =
        back.stream()
            .filter(
                each -> named(each.spend().refunds(), given) || named(each.because(), shortages))
            .toList();
    return new Back(
        claim,
        state(claim, all),
        goods(parts, ledger, exchange, asOf),
        costs,
        spent,
        sum(came, zero),
        granted(claim, all, came, exchange, asOf));
  }

  /** What the ends of the claim and of its lines say; empty where none names an amount. */
  private static Optional<Money> granted(
      Claim claim, List<Asking> parts, List<Valued> came, Exchange exchange, LocalDate asOf) {
    List<Money> amounts =
        Stream.concat(
                claim.settled().stream(),
                parts.stream().flatMap(part -> part.settled().stream()).distinct())
            .flatMap(end -> end.amount().stream())
            .toList();
    if (amounts.isEmpty()) {
      return Optional.empty();
    }
    Map<Currency, Money> sums = new LinkedHashMap<>();
    amounts.forEach(amount -> sums.merge(amount.currency(), amount, Money::plus));
    Money received = sum(came, Money.zero(exchange.home()));
    return sums.values().stream()
        .flatMap(
            amount ->
                isAllOf(amount, came) && sums.size() == 1
                    ? Stream.of(received)
                    : exchange.home(amount, asOf).money().stream())
        .reduce(Money::plus);
  }

  /** Whether all of it came, in its own currency: what the rate did since then is not owed. */
  private static boolean isAllOf(Money amount, List<Valued> came) {
    Money same =
        came.stream()
            .map(each -> each.spend().amount())
            .filter(money -> money.currency().equals(amount.currency()))
            .reduce(Money.zero(amount.currency()), Money::plus);
    return same.compareAmount(amount) >= 0;
  }

  private static boolean named(Optional<Ref> ref, Set<String> ids) {
    return ref.filter(named -> ids.contains(named.id())).isPresent();
  }

  private static Set<String> ids(List<Ref> refs) {
    Set<String> ids = new HashSet<>();
    refs.forEach(ref -> ids.add(ref.id()));
    return ids;
  }

  private static Money sum(List<Valued> valued, Money zero) {
    return valued.stream().map(Valued::counted).reduce(zero, Money::plus);
  }

  private static State state(Claim claim, List<Asking> parts) {
    Optional<Claim.Settlement> end = claim.settled();
    if (end.isPresent()) {
      return switch (end.get().how()) {
        case REPLACED, CREDITED, REFUNDED -> State.GRANTED;
        case REFUSED, WITHDRAWN -> State.REFUSED;
      };
    }
    if (claim.sent().isEmpty()) {
      return State.DRAFT;
    }
    boolean over = !parts.isEmpty() && parts.stream().allMatch(Asking::isSettled);
    return over ? State.GRANTED : State.ASKED;
  }

  /** Missing goods at the kit's price, where money is asked for them. */
  private static Map<String, Money> goods(
      List<Asking> parts, Ledger ledger, Exchange exchange, LocalDate asOf) {
    Map<String, Money> goods = new LinkedHashMap<>();
    parts.stream()
        .filter(part -> part.isForMoney() && part.remedy() != Claim.Remedy.COST)
        .forEach(
            part ->
                part.value(part.qty(), ledger)
                    .flatMap(worth -> exchange.home(worth, asOf).money())
                    .ifPresent(worth -> goods.merge(part.shortage().id(), worth, Money::plus)));
    return goods;
  }
}

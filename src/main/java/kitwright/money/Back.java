package kitwright.money;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitwright.ledger.Claim;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.value.Money;
import kitwright.value.Ref;

/**
 * Money that a claim may bring back; never counted before it is in the spending as a refund.
 *
 * @param goodsOf value of the missing goods at the kit's price, by shortage; empty where a
 *     replacement is asked
 * @param costs spending that the claim asks back, as far as it is paid or ordered
 * @param received come back already, as refunds for its shortages or costs
 * @param granted what the settlement says; empty while there is none, or it names no amount
 */
public record Back(
    Claim claim,
    State state,
    Map<String, Money> goodsOf,
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
    return state == State.ASKED ? left(asked()) : zero();
  }

  /** What is granted and has not come in yet. */
  public Money outstanding() {
    return state == State.GRANTED ? left(granted.orElse(zero())) : zero();
  }

  private Money left(Money of) {
    return of.minus(received).max(zero());
  }

  static List<Back> of(Ledger ledger, Exchange exchange, LocalDate asOf, List<Valued> valued) {
    Set<String> claimed = new HashSet<>();
    ledger.claims().forEach(claim -> claimed.addAll(ids(claim.costs())));
    Map<String, List<Valued>> out = new HashMap<>();
    List<Valued> back = new ArrayList<>();
    for (Valued each : valued) {
      String id = each.spend().id();
      if (each.isBack()) {
        back.add(each);
      } else if (claimed.contains(id)) {
        out.computeIfAbsent(id, any -> new ArrayList<>()).add(each);
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
    Set<String> costs = ids(claim.costs());
    Set<String> shortages = ids(claim.shortages());
    Money spent =
        sum(costs.stream().flatMap(id -> out.getOrDefault(id, List.of()).stream()).toList(), zero);
    List<Valued> came =
        back.stream()
            .filter(
                each -> named(each.spend().refunds(), costs) || named(each.because(), shortages))
            .toList();
    Money received = sum(came, zero);
    Optional<Money> granted =
        claim
            .settled()
            .filter(end -> !end.on().isAfter(asOf))
            .flatMap(Claim.Settlement::amount)
            .flatMap(
                amount ->
                    isAllOf(amount, came)
                        ? Optional.of(received)
                        : exchange.home(amount, asOf).money());
    return new Back(
        claim, state(claim, asOf), goods(claim, ledger, exchange, asOf), spent, received, granted);
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

  private static State state(Claim claim, LocalDate asOf) {
    Optional<Claim.Settlement> end = claim.settled().filter(made -> !made.on().isAfter(asOf));
    if (end.isPresent()) {
      return switch (end.get().how()) {
        case REPLACED, CREDITED, REFUNDED -> State.GRANTED;
        case REFUSED, WITHDRAWN -> State.REFUSED;
      };
    }
    return claim.sent().filter(day -> !day.isAfter(asOf)).isPresent() ? State.ASKED : State.DRAFT;
  }

  /** Missing goods at the kit's price, where money is asked for them. */
  private static Map<String, Money> goods(
      Claim claim, Ledger ledger, Exchange exchange, LocalDate asOf) {
    Map<String, Money> goods = new LinkedHashMap<>();
    if (claim.remedy() != Claim.Remedy.REPLACEMENT) {
      claim.shortages().stream()
          .flatMap(ref -> ledger.<Shortage>find(Kind.SHORTAGES, ref.id()).stream())
          .forEach(
              shortage ->
                  worth(shortage, ledger, exchange, asOf)
                      .ifPresent(worth -> goods.put(shortage.id(), worth)));
    }
    return goods;
  }

  /** What a shortage's goods cost at the kit's price, if that is known and convertible. */
  static Optional<Money> worth(
      Shortage shortage, Ledger ledger, Exchange exchange, LocalDate asOf) {
    return ledger
        .kitItem(shortage.item())
        .flatMap(item -> item.price())
        .filter(price -> price.prices(shortage.qty()))
        .flatMap(price -> exchange.home(price.of(shortage.qty()), asOf).money());
  }
}

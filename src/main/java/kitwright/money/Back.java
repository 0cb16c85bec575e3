package kitwright.money;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.claim.Asking;
import kitwright.claim.ClaimStanding;
import kitwright.claim.ClaimStandings;
import kitwright.claim.Cost;
import kitwright.claim.Line;
import kitwright.ledger.Claim;
import kitwright.ledger.Facts;
import kitwright.ledger.Spend;
import kitwright.spending.Books;
import kitwright.spending.Exchange;
import kitwright.spending.Returned;
import kitwright.spending.Share;
import kitwright.spending.Valued;
import kitwright.value.Money;

/**
 * Money that a claim may bring back; never counted before it is in the spending as a refund.
 *
 * @param goodsOf value of the missing goods at the kit's price, by shortage, where money is asked
 *     for them and nothing has ended it
 * @param costsOf so much of each spend as the claim asks back, as far as it is paid, by id
 * @param received come back already, as refunds for its shortages or costs
 * @param granted what the settlement says; empty while there is none, or it names no amount
 */
public record Back(
    Claim claim,
    State state,
    Map<String, Money> goodsOf,
    Map<String, Money> costsOf,
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
    costsOf = Map.copyOf(costsOf);
  }

  /** Value of the missing goods that the claim asks in money. */
  public Money goods() {
    return goodsOf.values().stream().reduce(zero(), Money::plus);
  }

  /** All that the claim asks. */
  public Money asked() {
    return goods().plus(costs());
  }

  /** What it cost that the claim asks back. */
  public Money costs() {
    return costsOf.values().stream().reduce(zero(), Money::plus);
  }

  private Money zero() {
    return Money.zero(received.currency());
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

  static List<Back> of(Facts day, Exchange exchange, List<Valued> valued) {
    Map<String, List<Valued>> out = new HashMap<>();
    Map<String, List<Valued>> back = new HashMap<>();
    for (Valued each : valued) {
      if (each.isBack()) {
        back.computeIfAbsent(each.spend().id(), any -> new ArrayList<>(1)).add(each);
      } else {
        out.computeIfAbsent(each.spend().id(), any -> new ArrayList<>(1)).add(each);
        each.spend()
            .pays()
            .ifPresent(
                order -> out.computeIfAbsent(order.id(), any -> new ArrayList<>(1)).add(each));
      }
    }
    Map<String, Money> whole = new HashMap<>();
    Books.on(day).returned().forEach(each -> whole.put(each.refund().id(), each.came()));
    return ClaimStandings.on(day).all().stream()
        .map(standing -> of(standing, exchange, day.day(), out, received(standing, back, whole)))
        .toList();
  }

  private static Back of(
      ClaimStanding standing,
      Exchange exchange,
      LocalDate asOf,
      Map<String, List<Valued>> out,
      List<Money> back) {
    Money received = back.stream().reduce(Money.zero(exchange.home()), Money::plus);
    List<Asking> all = standing.lines().stream().map(Line::asking).toList();
    List<Line> open = standing.lines().stream().filter(line -> !line.asking().isSettled()).toList();
    List<Cost> costs =
        Stream.concat(
                open.stream().flatMap(line -> line.asking().costs().stream()),
                standing.costs().stream())
            .toList();
    return new Back(
        standing.claim(),
        state(standing),
        goods(open, exchange, asOf),
        costsOf(costs, out),
        received,
        granted(standing, all, received, exchange, asOf));
  }

  /** Of each refund what came for the claim, in the build’s currency. */
  private static List<Money> received(
      ClaimStanding standing, Map<String, List<Valued>> back, Map<String, Money> whole) {
    List<Money> all = new ArrayList<>();
    for (Returned part : standing.cameBack().refunds()) {
      String id = part.refund().id();
      Money of = whole.getOrDefault(id, part.came());
      back.getOrDefault(id, List.of())
          .forEach(each -> all.add(Share.of(each.counted(), part.came(), of)));
    }
    return all;
  }

  /**
   * What the ends of the claim and of its lines say, or else what was granted of one that is over;
   * empty where nothing names an amount.
   */
  private static Optional<Money> granted(
      ClaimStanding standing,
      List<Asking> parts,
      Money received,
      Exchange exchange,
      LocalDate asOf) {
    List<Money> ends =
        Stream.concat(
                standing.claim().settled().stream(),
                parts.stream().flatMap(part -> part.settled().stream()).distinct())
            .flatMap(end -> end.amount().stream())
            .toList();
    boolean isOver = standing.state() == ClaimStanding.State.SETTLED;
    List<Money> amounts = ends.isEmpty() && isOver ? standing.granted() : ends;
    if (amounts.isEmpty()) {
      return Optional.empty();
    }
    Map<Currency, Money> sums = new LinkedHashMap<>();
    amounts.forEach(amount -> sums.merge(amount.currency(), amount, Money::plus));
    return sums.values().stream()
        .flatMap(
            amount ->
                sums.size() == 1 && isAllOf(amount, standing)
                    ? Stream.of(received)
                    : exchange.home(amount, asOf).money().stream())
        .reduce(Money::plus);
  }

  /** Whether all of it came, by the rates of those days: what they did since then is not owed. */
  private static boolean isAllOf(Money amount, ClaimStanding standing) {
    return standing.cameBack().takenOff().stream()
        .anyMatch(
            sum -> sum.currency().equals(amount.currency()) && sum.compareAmount(amount) >= 0);
  }

  private static Map<String, Money> costsOf(List<Cost> costs, Map<String, List<Valued>> out) {
    Map<String, Money> all = new LinkedHashMap<>();
    for (Cost cost : costs) {
      out.getOrDefault(cost.spend().id(), List.of()).stream()
          .filter(each -> !Books.is(each.spend(), Spend.State.ORDERED)) // nobody has paid it yet
          .forEach(each -> all.merge(each.spend().id(), cost.of(each.counted()), Money::plus));
    }
    return all;
  }

  private static State state(ClaimStanding standing) {
    return switch (standing.state()) {
      case DRAFT -> State.DRAFT;
      case SENT, ACKNOWLEDGED, ANSWERED, DISPUTED, REFUSED -> State.ASKED;
      case SETTLED ->
          standing
                  .settled()
                  .filter(
                      end ->
                          switch (end.how()) {
                            case REPLACED, CREDITED, REFUNDED -> false;
                            case REFUSED, WITHDRAWN -> true;
                          })
                  .isPresent()
              ? State.REFUSED
              : State.GRANTED;
    };
  }

  /** What is still owed at the kit's price, where money is asked for it. */
  private static Map<String, Money> goods(List<Line> open, Exchange exchange, LocalDate asOf) {
    Map<String, Money> goods = new LinkedHashMap<>();
    open.stream()
        .filter(line -> line.remedy() != Claim.Remedy.COST)
        .forEach(
            line ->
                line.openMoney().stream()
                    .flatMap(worth -> exchange.home(worth, asOf).money().stream())
                    .forEach(
                        worth -> goods.merge(line.asking().shortage().id(), worth, Money::plus)));
    return goods;
  }
}

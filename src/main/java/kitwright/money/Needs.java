package kitwright.money;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.Spend;
import kitwright.ledger.Stock;
import kitwright.network.Headways;
import kitwright.shortage.Thing;
import kitwright.shortage.Things;
import kitwright.shortage.Want;
import kitwright.spending.Exchange;
import kitwright.spending.Share;
import kitwright.value.Money;
import kitwright.value.Quantity;

/**
 * What the tasks need and nobody has bought. The kit's promise, what was bought with its quantity,
 * and stock that names no spend are shared out to the tasks by need: finished work first, then work
 * under way, then the rest by id; what then lacks for unfinished work is priced at the last price
 * paid, or else at the kit's or the material's. What a section takes is needed like what a task
 * names.
 */
final class Needs {
  /** What one line still has to buy. */
  record Unbought(Money cost, List<String> unpriced) {}

  /** So much of a thing for so much money. */
  private record Offer(Money cost, BigDecimal amount) {
    Money of(BigDecimal wanted) {
      return Share.of(cost, wanted, amount);
    }
  }

  private final Ledger ledger;
  private final Exchange exchange;
  private final LocalDate asOf;
  private final Headways headways;
  private final Things things;
  private final Map<String, BigDecimal> supply = new HashMap<>();
  private final Map<String, Offer> paid = new HashMap<>();
  private final Map<String, Offer> offered = new HashMap<>();
  private final Map<String, Money> costs = new HashMap<>();
  private final Map<String, List<String>> unpriced = new HashMap<>();

  private Needs(
      Ledger ledger, Exchange exchange, LocalDate asOf, Headways headways, Things things) {
    this.ledger = ledger;
    this.exchange = exchange;
    this.asOf = asOf;
    this.headways = headways;
    this.things = things;
    ledger.kit().forEach(this::promise);
    bought().forEach(this::buy);
    ledger.stock().forEach(this::store);
  }

  static Needs of(
      Ledger ledger, Exchange exchange, LocalDate asOf, Headways headways, Demand demand) {
    Needs needs = new Needs(ledger, exchange, asOf, headways, demand.things());
    Map<String, List<Demand.Ask>> asks = new TreeMap<>();
    demand
        .asks()
        .sorted(
            Comparator.comparing((Demand.Ask ask) -> headways.share(ask.task()))
                .reversed()
                .thenComparing(ask -> ask.task().id()))
        .forEach(ask -> asks.computeIfAbsent(ask.thing().key(), key -> new ArrayList<>()).add(ask));
    asks.values().forEach(needs::shareOut);
    return needs;
  }

  private void promise(KitItem item) {
    things
        .of(item, item.qty())
        .ifPresent(
            of -> {
              put(of);
              item.cost(item.qty())
                  .filter(any -> of.amount().signum() > 0)
                  .ifPresent(
                      cost -> offered.putIfAbsent(of.thing().key(), new Offer(cost, of.amount())));
            });
  }

  /** Purchases that say what and how much, by day. */
  private Stream<Spend> bought() {
    return ledger.spending().stream()
        .filter(this::isBought)
        .sorted(Comparator.comparing(Spend::on).thenComparing(Spend::id));
  }

  private boolean isBought(Spend spend) {
    return spend.thing().isPresent()
        && spend.qty().filter(qty -> !qty.isNone()).isPresent()
        && spend.state() != Spend.State.REFUNDED
        && spend.withdrawn().isEmpty();
  }

  /** The last price stands; a payment of an order brings nothing that the order does not. */
  private void buy(Spend spend) {
    things
        .of(spend)
        .ifPresent(
            of -> {
              paid.put(of.thing().key(), new Offer(spend.amount(), of.amount()));
              if (spend.pays().flatMap(ledger::spend).filter(this::isBought).isEmpty()) {
                put(beyondShortage(spend, of));
              }
            });
  }

  /** What is bought in place of missing goods: the kit's promise counts those already. */
  private Things.Amount beyondShortage(Spend spend, Things.Amount of) {
    BigDecimal promised =
        spend
            .because()
            .flatMap(ledger::shortage)
            .flatMap(
                shortage ->
                    ledger
                        .kitItem(shortage.item())
                        .flatMap(item -> things.of(item, shortage.qty())))
            .filter(missing -> missing.thing().equals(of.thing()))
            .map(Things.Amount::amount)
            .orElse(BigDecimal.ZERO);
    return new Things.Amount(of.thing(), of.amount().subtract(promised).max(BigDecimal.ZERO));
  }

  private void store(Stock stock) {
    if (stock.bought().isEmpty()) {
      things.of(stock, stock.amount()).ifPresent(this::put);
    }
  }

  private void put(Things.Amount of) {
    supply.merge(of.thing().key(), of.amount(), BigDecimal::add);
  }

  private void shareOut(List<Demand.Ask> asks) {
    BigDecimal left = supply.getOrDefault(asks.get(0).thing().key(), BigDecimal.ZERO);
    for (Demand.Ask ask : asks) {
      Quantity missing = ask.thing().qty(ask.amount().subtract(left));
      left = left.subtract(ask.amount()).max(BigDecimal.ZERO);
      if (!missing.isNone() && headways.share(ask.task()).compareTo(BigDecimal.ONE) < 0) {
        ask.task().budget().ifPresent(line -> book(line.id(), ask, missing));
      }
    }
  }

  private void book(String line, Demand.Ask ask, Quantity missing) {
    price(ask, missing)
        .ifPresentOrElse(
            cost -> costs.merge(line, cost, Money::plus),
            () ->
                unpriced
                    .computeIfAbsent(line, id -> new ArrayList<>())
                    .add(Thing.told(missing, ask.want().ref().id())));
  }

  private Optional<Money> price(Demand.Ask ask, Quantity missing) {
    String key = ask.thing().key();
    return Optional.ofNullable(paid.get(key))
        .map(offer -> offer.of(missing.amount()))
        .or(() -> listed(ask.want(), missing))
        .or(() -> Optional.ofNullable(offered.get(key)).map(offer -> offer.of(missing.amount())))
        .flatMap(cost -> exchange.home(cost, asOf).money());
  }

  /** At the price that the record itself gives. */
  private Optional<Money> listed(Want want, Quantity qty) {
    return switch (want.sort()) {
      case ITEM -> ledger.kitItem(want.ref()).flatMap(item -> item.cost(qty));
      case MATERIAL -> ledger.material(want.ref()).flatMap(material -> material.cost(qty));
      case STOCK -> Optional.empty();
    };
  }

  /** What a line still has to buy; empty where its tasks lack nothing that has a price. */
  Optional<Unbought> of(String line) {
    return Optional.ofNullable(costs.get(line))
        .map(cost -> new Unbought(cost, unpriced.getOrDefault(line, List.of())));
  }
}

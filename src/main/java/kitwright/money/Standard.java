package kitwright.money;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import kitwright.ledger.Ledger;
import kitwright.ledger.Spend;
import kitwright.shortage.Things;
import kitwright.spending.Exchange;
import kitwright.spending.Valued;
import kitwright.value.Money;
import kitwright.value.Quantity;

/**
 * What planned purchases would have cost by the price known before (the kit's, or the material's),
 * and how much of each was more than planned: beyond what the tasks ask for, or the kit promises
 * where that is more. Purchases are taken by day, so that the last ones are those beyond; less than
 * planned is no saving, since the rest may still be bought.
 *
 * <p>With these, what a line paid splits as standard costing does: price variance = (actual price −
 * standard price) × actual quantity; quantity variance = (actual quantity − standard quantity) ×
 * standard price.
 *
 * @see "Direct materials variances: Warren, Reeve and Duchac, Accounting, exercise 23-5 (the book
 *     from memory, its figures at second hand)"
 */
final class Standard {
  /** A purchase that is compared, and the part of it that counts. */
  private record Bought(Valued valued, BigDecimal amount) {}

  private final Ledger ledger;
  private final Exchange exchange;
  private final Map<String, Money> wholes = new HashMap<>();
  private final Map<String, BigDecimal> beyond = new HashMap<>();

  /**
   * Compares.
   *
   * @param valued all that counts; orders and their payments share the quantity by their amounts
   * @param planned those of it that nothing else explains; no others use up the planned quantity
   */
  Standard(Ledger ledger, Exchange exchange, List<Valued> valued, List<Valued> planned) {
    this.ledger = ledger;
    this.exchange = exchange;
    valued.stream()
        .filter(each -> !each.isBack())
        .forEach(each -> wholes.merge(purchase(each.spend()), each.planned(), Money::plus));
    Demand demand = Demand.of(ledger);
    Map<String, BigDecimal> standard = demand.planned();
    Map<String, List<Bought>> byThing = new TreeMap<>();
    planned.forEach(
        each ->
            amount(each, demand.things())
                .ifPresent(
                    of ->
                        byThing
                            .computeIfAbsent(of.thing().key(), key -> new ArrayList<>())
                            .add(new Bought(each, of.amount()))));
    byThing.forEach(
        (key, all) ->
            Optional.ofNullable(standard.get(key)).ifPresent(limit -> compare(all, limit)));
  }

  /** The order that a spend belongs to, or itself. */
  private static String purchase(Spend spend) {
    return spend.pays().map(order -> order.id()).orElse(spend.id());
  }

  /** The spend that says how much was bought: itself, or what it pays or gives back. */
  private static Optional<Spend> source(Valued each) {
    return each.spend().qty().isPresent()
        ? Optional.of(each.spend())
        : each.origin().filter(origin -> origin.qty().isPresent());
  }

  /** The share of its source's quantity that counts here. */
  private BigDecimal share(Valued each, Spend source) {
    boolean own = source.equals(each.spend()) && source.state() != Spend.State.ORDERED;
    Money whole =
        own
            ? exchange
                .planned(source.amount().currency())
                .map(quote -> quote.of(source.amount()))
                .orElse(each.planned())
            : wholes.getOrDefault(purchase(source), each.planned());
    return whole.signum() == 0
        ? BigDecimal.ONE
        : each.planned().amount().divide(whole.amount(), MathContext.DECIMAL128);
  }

  private Optional<Things.Amount> amount(Valued each, Things things) {
    return source(each)
        .flatMap(
            source ->
                things
                    .of(named(each, source), source.qty().get())
                    .map(
                        of ->
                            new Things.Amount(
                                of.thing(), of.amount().multiply(share(each, source)))));
  }

  /** The spend that says what was bought. */
  private static Spend named(Valued each, Spend source) {
    return source.thing().isPresent() ? source : each.origin().orElse(source);
  }

  private void compare(List<Bought> all, BigDecimal limit) {
    all.sort(
        Comparator.comparing((Bought each) -> each.valued().spend().on())
            .thenComparing(each -> each.valued().spend().id()));
    BigDecimal sum = BigDecimal.ZERO;
    for (Bought each : all) {
      BigDecimal before = sum.subtract(limit).max(BigDecimal.ZERO);
      sum = each.valued().isBack() ? sum.subtract(each.amount()) : sum.add(each.amount());
      BigDecimal step = sum.subtract(limit).max(BigDecimal.ZERO).subtract(before).abs();
      if (step.signum() > 0) {
        beyond.put(each.valued().spend().id(), step.divide(each.amount(), MathContext.DECIMAL128));
      }
    }
  }

  /** At the standard price and the plan's rate, in the build's currency; empty without a price. */
  Optional<Money> cost(Valued each) {
    return source(each)
        .flatMap(
            source ->
                listed(named(each, source), source.qty().get())
                    .flatMap(all -> exchange.planned(all.currency()).map(quote -> quote.of(all)))
                    .map(all -> all.times(share(each, source))));
  }

  private Optional<Money> listed(Spend spend, Quantity qty) {
    return spend
        .item()
        .flatMap(ledger::kitItem)
        .flatMap(item -> item.cost(qty))
        .or(() -> spend.material().flatMap(ledger::material).flatMap(of -> of.cost(qty)));
  }

  /** Of a purchase's cost, what is beyond the planned quantity. */
  Money beyond(Valued each, Money cost) {
    return cost.times(beyond.getOrDefault(each.spend().id(), BigDecimal.ZERO));
  }
}

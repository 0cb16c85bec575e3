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
import java.util.stream.Collectors;
import kitwright.ledger.Ledger;
import kitwright.ledger.Spend;
import kitwright.ledger.Stock;
import kitwright.ledger.Task;
import kitwright.value.Money;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Unit;

/**
 * What the tasks need and nobody has bought. The kit's promise, what was bought with its quantity,
 * and stock that names no spend are shared out to the tasks by need: finished work first, then work
 * under way, then the rest by id; what then lacks is priced at the last price paid, or else at the
 * kit's.
 */
final class Needs {
  /** What one line still has to buy. */
  record Unbought(Money cost, List<String> unpriced) {}

  private record Want(Task task, Ref thing, Quantity qty) {}

  private final Ledger ledger;
  private final Exchange exchange;
  private final LocalDate asOf;
  private final Map<String, List<Spend>> bought;
  private final Map<String, Money> costs = new HashMap<>();
  private final Map<String, List<String>> unpriced = new HashMap<>();

  private Needs(Ledger ledger, Exchange exchange, LocalDate asOf) {
    this.ledger = ledger;
    this.exchange = exchange;
    this.asOf = asOf;
    this.bought =
        ledger.spending().stream()
            .filter(this::isBought)
            .collect(Collectors.groupingBy(spend -> spend.thing().get().id()));
  }

  static Needs of(Ledger ledger, Exchange exchange, LocalDate asOf, Progress progress) {
    Needs needs = new Needs(ledger, exchange, asOf);
    Map<String, List<Want>> wants = new TreeMap<>();
    ledger.tasks().stream()
        .filter(task -> task.withdrawn().isEmpty())
        .sorted(Comparator.comparing(progress::of).reversed().thenComparing(Task::id))
        .forEach(task -> wantsOf(task).forEach(want -> add(want, wants)));
    Map<String, List<Quantity>> supply = needs.supply();
    wants.forEach((thing, all) -> needs.shareOut(all, supply.getOrDefault(thing, List.of())));
    return needs;
  }

  private static void add(Want want, Map<String, List<Want>> wants) {
    wants.computeIfAbsent(want.thing().id(), id -> new ArrayList<>()).add(want);
  }

  private static List<Want> wantsOf(Task task) {
    return task.uses().stream()
        .filter(use -> use.thing().isPresent() && use.qty().isPresent())
        .map(use -> new Want(task, use.thing().get(), gross(use)))
        .toList();
  }

  private static Quantity gross(Task.Use use) {
    return use.qty().get().times(BigDecimal.ONE.add(use.waste().orElse(BigDecimal.ZERO)));
  }

  /** What there is of each thing. */
  private Map<String, List<Quantity>> supply() {
    Map<String, List<Quantity>> all = new HashMap<>();
    ledger.kit().forEach(item -> put(all, item.id(), item.qty()));
    bought.forEach(
        (thing, spends) ->
            spends.stream()
                .filter(
                    spend -> spend.pays().flatMap(ledger::spend).filter(this::isBought).isEmpty())
                .forEach(spend -> put(all, thing, spend.qty().get())));
    for (Stock stock : ledger.stock()) {
      if (stock.bought().isEmpty()) {
        put(all, stock.id(), stock.amount());
        stock.material().ifPresent(material -> put(all, material.id(), stock.amount()));
      }
    }
    return all;
  }

  private static void put(Map<String, List<Quantity>> all, String thing, Quantity qty) {
    all.computeIfAbsent(thing, id -> new ArrayList<>()).add(qty);
  }

  private boolean isBought(Spend spend) {
    return spend.state() != Spend.State.REFUNDED
        && !spend.on().isAfter(asOf)
        && spend.withdrawn().filter(day -> !day.isAfter(asOf)).isEmpty()
        && spend.thing().isPresent()
        && spend.qty().filter(qty -> !qty.isNone()).isPresent();
  }

  private void shareOut(List<Want> wants, List<Quantity> supply) {
    Unit unit = wants.get(0).qty().unit();
    Quantity left =
        supply.stream()
            .filter(qty -> qty.unit().convertsTo(unit))
            .reduce(Quantity.none(unit), Quantity::plus);
    for (Want want : wants) {
      boolean comparable = want.qty().unit().convertsTo(unit);
      Quantity missing = comparable ? want.qty().less(left) : want.qty();
      left = comparable ? left.less(want.qty()) : left;
      if (!missing.isNone() && want.task().budget().isPresent()) {
        book(want, missing);
      }
    }
  }

  private void book(Want want, Quantity missing) {
    String line = want.task().budget().get().id();
    price(want.thing(), missing)
        .ifPresentOrElse(
            cost -> costs.merge(line, cost, Money::plus),
            () ->
                unpriced
                    .computeIfAbsent(line, id -> new ArrayList<>())
                    .add(missing + " of " + want.thing().id()));
  }

  private Optional<Money> price(Ref thing, Quantity qty) {
    return lastPaid(thing, qty)
        .or(
            () ->
                ledger
                    .kitItem(thing)
                    .flatMap(item -> item.price())
                    .filter(price -> price.prices(qty))
                    .map(price -> price.of(qty)))
        .flatMap(cost -> exchange.home(cost, asOf).money());
  }

  private Optional<Money> lastPaid(Ref thing, Quantity qty) {
    return bought.getOrDefault(thing.id(), List.of()).stream()
        .filter(spend -> spend.qty().get().convertsTo(qty))
        .max(Comparator.comparing(Spend::on).thenComparing(Spend::id))
        .map(
            spend ->
                Share.of(
                    spend.amount(),
                    qty.in(spend.qty().get().unit()).amount(),
                    spend.qty().get().amount()));
  }

  /** What a line still has to buy; empty where its tasks lack nothing that has a price. */
  Optional<Unbought> of(String line) {
    return Optional.ofNullable(costs.get(line))
        .map(cost -> new Unbought(cost, unpriced.getOrDefault(line, List.of())));
  }
}

package kitwright.kit;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import kitwright.ledger.Cut;
import kitwright.ledger.Delivery;
import kitwright.ledger.Entry;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.LogDay;
import kitwright.ledger.Stock;
import kitwright.ledger.Substitution;
import kitwright.ledger.Task;
import kitwright.network.Headways;
import kitwright.value.Place;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Unit;

/** Gathers, record by record, what belongs to each item and each piece of stock. */
final class Tallies {
  private final Ledger ledger;
  private final Headways headways;
  private final SameWood sameWood;
  private final Doubts doubts;
  private final Map<String, List<Count>> counts = new HashMap<>();
  private final Map<String, List<Awaited>> awaited = new HashMap<>();
  private final Map<String, List<SentBack>> back = new HashMap<>();
  private final Map<String, List<Use>> itemUses = new HashMap<>();
  private final Map<String, List<Promise>> itemPromises = new HashMap<>();
  private final Map<String, List<Use>> stockUses = new HashMap<>();
  private final Map<String, List<Promise>> stockPromises = new HashMap<>();

  /**
   * @param headways how far the work is on the evening of the day
   */
  Tallies(Ledger ledger, Headways headways) {
    this.ledger = ledger;
    this.headways = headways;
    sameWood = new SameWood(ledger);
    doubts = new Doubts(ledger);
    ledger.deliveries().forEach(this::take);
    ledger.log().forEach(this::take);
    ledger.substitutions().stream().filter(each -> each.withdrawn().isEmpty()).forEach(this::take);
    ledger.tasks().stream().filter(task -> task.withdrawn().isEmpty()).forEach(this::take);
    ledger.cutsToMake().forEach(this::take);
    ledger.cuts().stream().filter(cut -> cut.done().isPresent()).forEach(this::used);
    ledger.stock().forEach(this::take);
  }

  Map<String, Position> items() {
    Map<String, Position> all = new LinkedHashMap<>();
    ledger
        .kit()
        .forEach(
            item ->
                all.putIfAbsent(
                    item.id(),
                    new Position(
                        item,
                        byDay(counts.getOrDefault(item.id(), List.of()), Count::on),
                        uses(itemUses, item.id()),
                        SameWork.ahead(
                            itemPromises.getOrDefault(item.id(), List.of()),
                            uses(itemUses, item.id()),
                            ledger,
                            headways),
                        byDay(back.getOrDefault(item.id(), List.of()), SentBack::on),
                        awaited.getOrDefault(item.id(), List.of()),
                        doubts.of(Kind.KIT, item.id()))));
    return all;
  }

  Map<String, StockPosition> stock() {
    Map<String, StockPosition> all = new LinkedHashMap<>();
    ledger
        .stock()
        .forEach(
            stock ->
                all.putIfAbsent(
                    stock.id(),
                    new StockPosition(
                        stock,
                        stockPromises.getOrDefault(stock.id(), List.of()),
                        SameWork.ahead(
                            stockPromises.getOrDefault(stock.id(), List.of()),
                            uses(stockUses, stock.id()),
                            ledger,
                            headways),
                        keepers(stock),
                        uses(stockUses, stock.id()),
                        doubts.of(Kind.STOCK, stock.id()))));
    return all;
  }

  private static List<Use> uses(Map<String, List<Use>> all, String id) {
    return byDay(all.getOrDefault(id, List.of()), Use::on);
  }

  private static <T> List<T> byDay(List<T> parts, Function<T, LocalDate> on) {
    return parts.size() < 2 ? parts : parts.stream().sorted(Comparator.comparing(on)).toList();
  }

  private void take(Delivery delivery) {
    if (delivery.received().isPresent()) {
      LocalDate on = delivery.received().orElseThrow();
      delivery.counted().forEach(line -> take(delivery, on, line));
      delivery.sentBack().forEach(line -> take(delivery, line));
    } else {
      for (Delivery.Packed line : delivery.packed()) {
        itemUnit(line.item())
            .flatMap(unit -> in(unit, line.qty()))
            .ifPresent(qty -> add(awaited, line.item(), new Awaited(delivery, qty)));
      }
    }
  }

  private void take(Delivery delivery, Delivery.SentBack line) {
    itemUnit(line.item())
        .flatMap(unit -> in(unit, line.qty()))
        .ifPresent(
            qty -> add(back, line.item(), new SentBack(delivery, line, qty, line.at().of("qty"))));
  }

  private void take(Delivery delivery, LocalDate on, Delivery.Counted line) {
    Optional<Unit> unit = itemUnit(line.item());
    Optional<Quantity> found = unit.flatMap(u -> in(u, line.qty()));
    if (found.isPresent()) {
      Quantity none = Quantity.none(unit.get());
      add(
          counts,
          line.item(),
          new Count(
              delivery,
              on,
              found.get(),
              line.damaged().flatMap(qty -> in(unit.get(), qty)).orElse(none),
              line.wrong().flatMap(qty -> in(unit.get(), qty)).orElse(none),
              line.undersize().flatMap(qty -> in(unit.get(), qty)).orElse(none),
              line.remark(),
              line.at().of("qty")));
    }
  }

  private void take(LogDay log) {
    for (LogDay.Used used : log.used()) {
      used.item().ifPresent(item -> use(itemUses, item, itemUnit(item), log, used, used.qty()));
      used.stock().ifPresent(stock -> use(stock, log, used));
    }
  }

  /** What a cut that is done says it took. */
  private void used(Cut cut) {
    for (Cut.Taken taken : cut.used()) {
      Quantity pieces = new Quantity(BigDecimal.valueOf(taken.pieces()), Unit.EACH);
      stockUnit(taken.stock())
          .flatMap(unit -> in(unit, pieces))
          .ifPresent(
              qty ->
                  add(
                      stockUses,
                      taken.stock(),
                      new Use(
                          cut,
                          cut.done().orElseThrow(),
                          qty,
                          SameWood.work(cut, ledger),
                          taken.at().record())));
    }
  }

  private void use(Ref stock, LogDay log, LogDay.Used used) {
    use(stockUses, stock, stockUnit(stock), log, used, sameWood.beyond(log, used));
  }

  private static void use(
      Map<String, List<Use>> uses,
      Ref thing,
      Optional<Unit> unit,
      LogDay log,
      LogDay.Used used,
      Quantity amount) {
    unit.flatMap(u -> in(u, amount))
        .filter(qty -> !qty.isNone())
        .ifPresent(
            qty ->
                add(uses, thing, new Use(log, log.day(), qty, used.task(), used.at().of("qty"))));
  }

  private void take(Substitution substitution) {
    for (Substitution.Take take : substitution.use()) {
      promise(
          take.item(),
          take.stock(),
          take.qty(),
          substitution,
          substitution.hold(),
          take.at().of("qty"));
    }
  }

  private void take(Task task) {
    Ref self = new Ref(task.id(), task.at().record());
    for (Task.Use use : task.uses()) {
      use.gross()
          .ifPresent(
              qty ->
                  promise(
                      use.item(), use.stock(), qty, task, Optional.of(self), use.at().of("qty")));
    }
  }

  private void promise(
      Optional<Ref> item,
      Optional<Ref> stock,
      Quantity qty,
      Entry to,
      Optional<Ref> task,
      Place at) {
    item.flatMap(this::itemUnit)
        .flatMap(unit -> in(unit, qty))
        .ifPresent(q -> add(itemPromises, item.get(), new Promise(to, Optional.of(q), task, at)));
    stock
        .flatMap(this::stockUnit)
        .flatMap(unit -> in(unit, qty))
        .ifPresent(q -> add(stockPromises, stock.get(), new Promise(to, Optional.of(q), task, at)));
  }

  private void take(Cut cut) {
    cut.from()
        .forEach(
            stock ->
                add(
                    stockPromises,
                    stock,
                    new Promise(cut, Optional.empty(), SameWood.work(cut, ledger), stock.at())));
  }

  private void take(Stock stock) {
    for (Ref kept : keepers(stock)) {
      ledger
          .task(kept)
          .ifPresent(
              task ->
                  stockPromises
                      .computeIfAbsent(stock.id(), id -> new ArrayList<>())
                      .add(new Promise(task, Optional.empty(), Optional.of(kept), kept.at())));
    }
  }

  /** Work that has ended, or was given up, keeps nothing; a name that is no task's may. */
  private List<Ref> keepers(Stock stock) {
    return stock.keepFor().stream()
        .filter(kept -> ledger.task(kept).flatMap(Task::withdrawn).isEmpty())
        .filter(kept -> !headways.hasEnded(kept))
        .toList();
  }

  private Optional<Unit> itemUnit(Ref item) {
    return ledger.kitItem(item).map(found -> found.qty().unit());
  }

  private Optional<Unit> stockUnit(Ref stock) {
    return ledger.stock(stock).map(found -> found.amount().unit());
  }

  private static Optional<Quantity> in(Unit unit, Quantity qty) {
    return qty.unit().convertsTo(unit) ? Optional.of(qty.in(unit)) : Optional.empty();
  }

  private static <T> void add(Map<String, List<T>> all, Ref thing, T part) {
    all.computeIfAbsent(thing.id(), id -> new ArrayList<>()).add(part);
  }
}

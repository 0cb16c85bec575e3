package kitwright.kit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import kitwright.ledger.Cut;
import kitwright.ledger.Delivery;
import kitwright.ledger.Entry;
import kitwright.ledger.Kind;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.LogDay;
import kitwright.ledger.Stock;
import kitwright.ledger.Substitution;
import kitwright.ledger.Task;
import kitwright.value.Nearest;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Unit;

/**
 * Why nobody can say how much of a thing is left: something takes of it in a unit that does not
 * convert, or names nothing and is near to its name, or cannot be read.
 */
final class Doubts {
  private final Ledger ledger;
  private final Map<Kind, Map<String, List<String>>> all = new TreeMap<>();

  Doubts(Ledger ledger) {
    this.ledger = ledger;
    ledger.log().forEach(this::log);
    ledger.deliveries().forEach(this::delivery);
    ledger.tasks().stream().filter(task -> task.withdrawn().isEmpty()).forEach(this::task);
    ledger.substitutions().stream()
        .filter(each -> each.withdrawn().isEmpty())
        .forEach(this::substitution);
    ledger.cuts().stream().filter(cut -> cut.done().isPresent()).forEach(this::cut);
  }

  /** Clauses after “it is not known how much is here, since”. */
  List<String> of(Kind kind, String id) {
    List<String> doubts =
        new ArrayList<>(all.getOrDefault(kind, Map.of()).getOrDefault(id, List.of()));
    doubts.addAll(ledger.unreadTakers(id));
    return doubts;
  }

  private void log(LogDay day) {
    for (LogDay.Used used : day.used()) {
      takes(day, used.item(), used.stock(), used.qty());
      used.material()
          .filter(ref -> Nearest.to(ref.id(), ledger.ids(Kind.MATERIALS)).isEmpty())
          .ifPresent(ref -> meant(day, ref, used.qty()));
    }
  }

  private void delivery(Delivery delivery) {
    delivery.sentBack().forEach(line -> item(delivery, line.item(), line.qty()));
    for (Delivery.Counted line : delivery.counted()) {
      line.damaged().ifPresent(qty -> item(delivery, line.item(), qty));
      line.wrong().ifPresent(qty -> item(delivery, line.item(), qty));
      line.undersize().ifPresent(qty -> item(delivery, line.item(), qty));
    }
  }

  private void task(Task task) {
    for (Task.Use use : task.uses()) {
      use.qty().ifPresent(qty -> takes(task, use.item(), use.stock(), qty));
    }
  }

  private void substitution(Substitution substitution) {
    for (Substitution.Take take : substitution.use()) {
      takes(substitution, take.item(), take.stock(), take.qty());
    }
  }

  private void cut(Cut cut) {
    for (Cut.Taken taken : cut.used()) {
      stock(cut, taken.stock(), new Quantity(BigDecimal.valueOf(taken.pieces()), Unit.EACH));
    }
  }

  private void takes(Entry by, Optional<Ref> item, Optional<Ref> stock, Quantity qty) {
    item.ifPresent(ref -> item(by, ref, qty));
    stock.ifPresent(ref -> stock(by, ref, qty));
  }

  private void item(Entry by, Ref ref, Quantity qty) {
    ledger
        .kitItem(ref)
        .ifPresentOrElse(
            found -> compare(by, Kind.KIT, ref, qty, found.qty()), () -> meant(by, ref, qty));
  }

  private void stock(Entry by, Ref ref, Quantity qty) {
    ledger
        .stock(ref)
        .ifPresentOrElse(
            found -> compare(by, Kind.STOCK, ref, qty, found.amount()), () -> meant(by, ref, qty));
  }

  private void compare(Entry by, Kind kind, Ref ref, Quantity qty, Quantity own) {
    if (!qty.convertsTo(own)) {
      add(kind, ref.id(), by.named() + " takes " + qty + " of it, which does not convert");
    }
  }

  /** A name of nothing may mean what has a like name; where nothing has, whatever it may be. */
  private void meant(Entry by, Ref ref, Quantity qty) {
    String why = by.named() + " takes " + qty + " of “" + ref.id() + "”, which is not there";
    Optional<String> item = Nearest.to(ref.id(), ledger.ids(Kind.KIT));
    Optional<String> stock = Nearest.to(ref.id(), ledger.ids(Kind.STOCK));
    item.ifPresent(id -> add(Kind.KIT, id, why));
    stock.ifPresent(id -> add(Kind.STOCK, id, why));
    if (item.isEmpty() && stock.isEmpty()) {
      anything(qty, why);
    }
  }

  /** What the amount converts into; where it converts into nothing here, all of it. */
  private void anything(Quantity qty, String why) {
    List<KitItem> items = ledger.kit().stream().filter(each -> qty.convertsTo(each.qty())).toList();
    List<Stock> stock =
        ledger.stock().stream().filter(each -> qty.convertsTo(each.amount())).toList();
    boolean none = items.isEmpty() && stock.isEmpty();
    (none ? ledger.kit() : items).forEach(each -> add(Kind.KIT, each.id(), why));
    (none ? ledger.stock() : stock).forEach(each -> add(Kind.STOCK, each.id(), why));
  }

  private void add(Kind kind, String id, String why) {
    List<String> doubts =
        all.computeIfAbsent(kind, any -> new TreeMap<>())
            .computeIfAbsent(id, any -> new ArrayList<>());
    if (!doubts.contains(why)) {
      doubts.add(why);
    }
  }
}

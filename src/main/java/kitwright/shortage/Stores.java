package kitwright.shortage;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import kitwright.kit.Position;
import kitwright.kit.Positions;
import kitwright.kit.SameWork;
import kitwright.kit.StockPosition;
import kitwright.ledger.Delivery;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.Party;
import kitwright.ledger.Stock;
import kitwright.ledger.Substitution;
import kitwright.ledger.Task;
import kitwright.network.Supply;
import kitwright.network.WorkTime;
import kitwright.substitution.SubstitutionStanding;
import kitwright.substitution.SubstitutionStandings;
import kitwright.substitution.TakenWays;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * What is at hand and under way, with the lead time of what must be ordered. A supply's id names
 * the record that brings it: {@code delivery d-fourth}.
 */
final class Stores {
  private final Ledger ledger;
  private final LocalDate today;
  private final Things things;
  private final Positions positions;
  private final List<Supply> supplies = new ArrayList<>();
  private final Map<String, Integer> leadDays = new HashMap<>();
  private final Map<String, List<ShortageStanding>> openByItem = new LinkedHashMap<>();
  private final OnItsWay onItsWay;

  /** What of stock that was bought serves as no item yet, by id of the stock. */
  private final Map<String, Quantity> freeOfBought = new HashMap<>();

  /** Since when stock is here, by the id of its supply. */
  private final Map<String, LocalDate> since = new HashMap<>();

  Stores(
      Ledger ledger,
      Things things,
      Positions positions,
      ShortageStandings shortages,
      SubstitutionStandings substitutions,
      Late late) {
    this.ledger = ledger;
    this.today = positions.day();
    this.things = things;
    this.positions = positions;
    shortages
        .open()
        .forEach(
            each ->
                openByItem
                    .computeIfAbsent(each.shortage().item().id(), id -> new ArrayList<>())
                    .add(each));
    onItsWay =
        new OnItsWay(today, things, late, new Purchases(ledger, today), openByItem, supplies);
    positions.all().forEach(this::add);
    positions.allStock().forEach(this::add);
    shortages.all().forEach(this::add);
    shortages.balances().forEach(this::spare);
    substitutions.where(each -> isWithoutShortage(each, substitutions.taken())).stream()
        .filter(SubstitutionStanding::isApproved)
        .map(SubstitutionStanding::substitution)
        .forEach(this::add);
    ledger.spending().forEach(onItsWay::add);
  }

  /**
   * All of it, less what the log calls by its material alone, and less what finished tasks used
   * without a word in the log.
   */
  List<Supply> left(Consumption consumption) {
    Map<String, List<Supply>> byThing =
        supplies.stream()
            .collect(Collectors.groupingBy(Supply::item, LinkedHashMap::new, Collectors.toList()));
    List<Supply> left = new ArrayList<>();
    byThing.forEach(
        (key, all) -> {
          List<Supply> rest = new ArrayList<>(all);
          consumption.byMaterial(key).forEach(use -> take(rest, use.amount(), use.on()));
          take(rest, consumption.unlogged(key), today);
          left.addAll(rest);
        });
    return left;
  }

  /** Takes an amount from what was at hand on a day, the first first. */
  private void take(List<Supply> supplies, BigDecimal amount, LocalDate on) {
    BigDecimal gone = amount;
    for (int i = 0; i < supplies.size(); i++) {
      Supply each = supplies.get(i);
      boolean wasHere =
          each.arrives().isEmpty() && !since.getOrDefault(each.id(), LocalDate.MIN).isAfter(on);
      BigDecimal taken = wasHere ? each.amount().min(gone) : BigDecimal.ZERO;
      gone = gone.subtract(taken);
      supplies.set(i, less(each, taken));
    }
  }

  private static Supply less(Supply supply, BigDecimal taken) {
    return new Supply(
        supply.id(),
        supply.item(),
        supply.amount().subtract(taken),
        supply.arrives(),
        supply.keptFor(),
        supply.sureness());
  }

  /** From ordering each thing to having it; one whose lead time nobody wrote down has none. */
  Map<String, Integer> leadDays() {
    return leadDays;
  }

  private void add(Position position) {
    KitItem item = position.item();
    Quantity known = position.isCounted() ? position.left() : uncounted(position);
    here(
        "kit item " + item.id(),
        things.of(item, known),
        Set.of(),
        position.isCounted() ? Supply.Sureness.COUNTED : Supply.Sureness.UNCOUNTED);
    position.awaited().forEach(awaited -> onItsWay.add(item, awaited));
    // Of several items that are the same thing the one that is had soonest counts.
    lead(item)
        .ifPresent(
            days ->
                things
                    .of(item, item.qty())
                    .ifPresent(of -> leadDays.merge(of.thing().key(), days, Math::min)));
  }

  /**
   * The promise, less what is known to be short, still to come or used; what comes for shortages is
   * short already.
   */
  private Quantity uncounted(Position position) {
    Quantity known = position.promised().less(position.onItsWay()).less(position.used());
    for (ShortageStanding standing : openByItem.getOrDefault(position.item().id(), List.of())) {
      Quantity sent =
          standing.coming().stream()
              .filter(coming -> coming.how() == Coming.How.SENT)
              .map(Coming::qty)
              .reduce(Quantity.none(standing.shortage().qty().unit()), Quantity::plus);
      Quantity lacking = standing.shortage().qty().less(sent);
      known = lacking.convertsTo(known) ? known.less(lacking) : known;
    }
    return known;
  }

  private Optional<Integer> lead(KitItem item) {
    Optional<Party> supplier =
        item.from()
            .flatMap(ledger::party)
            .or(
                () ->
                    ledger.parties().stream()
                        .filter(party -> party.role() == Party.Role.SUPPLIER)
                        .findFirst());
    return item.lead()
        .or(() -> supplier.flatMap(Party::lead))
        .map(lead -> WorkTime.calendarDays(lead) + onItsWay.lateOfShortage(item));
  }

  /** What is on its way for no day that holds, by the key of the thing. */
  Map<String, List<Dayless>> dayless() {
    return onItsWay.dayless();
  }

  private void add(StockPosition position) {
    Stock stock = position.stock();
    stock.since().ifPresent(day -> since.put("stock " + stock.id(), day));
    here(
        "stock " + stock.id(),
        things.of(stock, position.left()),
        keptFor(position),
        Supply.Sureness.COUNTED);
  }

  /** What covers a shortage other than a count, and what is ordered, promised or decided for it. */
  private void add(ShortageStanding standing) {
    standing
        .item()
        .ifPresent(
            item -> {
              standing.covers().forEach(cover -> here(item, cover));
              standing
                  .coming()
                  .forEach(coming -> onItsWay.add(item, coming, onItsWay.lateBy(standing)));
            });
  }

  private void here(KitItem item, Cover cover) {
    boolean isCounted = cover.by() instanceof Delivery;
    List<StockPosition> bought =
        positions.allStock().stream().filter(each -> isBoughtBy(each.stock(), cover)).toList();
    if (isCounted) {
      return;
    }
    if (bought.isEmpty()
        || !bought.stream().allMatch(each -> each.free().convertsTo(cover.qty()))) {
      here(item, cover, cover.qty(), heldFor(item, cover));
    } else {
      stillThere(item, cover, bought);
    }
  }

  private void here(KitItem item, Cover cover, Quantity qty, Set<String> keptFor) {
    here(
        cover.by().named(),
        things.of(item, qty),
        keptFor,
        cover.how() == Cover.How.DONE_WITHOUT ? Supply.Sureness.WAIVED : Supply.Sureness.COUNTED);
  }

  private void spare(Balance balance) {
    KitItem item = balance.position().item();
    balance.spare().forEach(cover -> here(item, cover));
    balance.spareToCome().forEach(coming -> onItsWay.add(item, coming, 0));
  }

  /**
   * What was bought may stand in the stock: then only what nobody has used there, or asks for by
   * its name, serves as the item, and once, for the tasks that the stock is kept for; nothing where
   * the stock counts as the same thing already.
   */
  private void stillThere(KitItem item, Cover cover, List<StockPosition> bought) {
    Quantity rest = cover.qty();
    for (StockPosition each : bought) {
      String stock = each.stock().id();
      Quantity there = freeOfBought.getOrDefault(stock, each.free());
      Quantity part = isSame(each, item, cover) ? Quantity.none(rest.unit()) : rest.min(there);
      rest = rest.less(part);
      freeOfBought.put(stock, there.less(part));
      here(item, cover, part, keptFor(each));
    }
  }

  private static Set<String> keptFor(StockPosition position) {
    return position.keptFor().stream().map(Ref::id).collect(Collectors.toSet());
  }

  /**
   * Where what was put in a thing's place is held for a task, only the work up to it may take it;
   * any, where none of that asks for the thing.
   */
  private Set<String> heldFor(KitItem item, Cover cover) {
    if (!(cover.by() instanceof Substitution substitution)) {
      return Set.of();
    }
    Optional<Thing> thing = things.of(item, cover.qty()).map(Things.Amount::thing);
    return SameWork.onTheWayTo(substitution.hold(), ledger).stream()
        .flatMap(id -> ledger.tasks().stream().filter(task -> task.id().equals(id)))
        .filter(
            task ->
                Wants.of(task, ledger).stream()
                    .anyMatch(want -> things.of(want).map(Things.Amount::thing).equals(thing)))
        .map(Task::id)
        .collect(Collectors.toSet());
  }

  private static boolean isBoughtBy(Stock stock, Cover cover) {
    return stock.bought().filter(by -> by.id().equals(cover.by().id())).isPresent();
  }

  private boolean isSame(StockPosition stock, KitItem item, Cover cover) {
    return things
        .of(stock.stock(), stock.left())
        .map(Things.Amount::thing)
        .equals(things.of(item, cover.qty()).map(Things.Amount::thing));
  }

  private static boolean isWithoutShortage(Substitution substitution, TakenWays taken) {
    return taken.isOfNoShortage(substitution)
        && substitution.insteadOf().item().isPresent()
        && substitution.hold().isPresent();
  }

  /** A change of the design without a shortage serves the task that it holds, and no other. */
  private void add(Substitution substitution) {
    Optional<KitItem> item = substitution.insteadOf().item().flatMap(ledger::kitItem);
    item.ifPresent(
        each ->
            here(
                substitution.named(),
                things.of(each, Serves.of(substitution, positions, ledger).qty()),
                Set.of(substitution.hold().orElseThrow().id()),
                Supply.Sureness.COUNTED));
  }

  private void here(
      String id, Optional<Things.Amount> amount, Set<String> keptFor, Supply.Sureness sureness) {
    amount
        .filter(each -> each.amount().signum() > 0)
        .ifPresent(
            each ->
                supplies.add(
                    new Supply(
                        id,
                        each.thing().key(),
                        each.amount(),
                        Optional.empty(),
                        keptFor,
                        sureness)));
  }
}

package kitwright.shortage;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import kitwright.kit.Awaited;
import kitwright.kit.Position;
import kitwright.kit.Positions;
import kitwright.kit.StockPosition;
import kitwright.ledger.Claim;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.Party;
import kitwright.ledger.Shortage;
import kitwright.ledger.Spend;
import kitwright.ledger.Stock;
import kitwright.ledger.Substitution;
import kitwright.network.OrderRule;
import kitwright.network.Supply;
import kitwright.network.WorkTime;
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
  private final Late late;
  private final List<Supply> supplies = new ArrayList<>();
  private final Map<String, OrderRule> rules = new HashMap<>();
  private final Map<String, Standing> openByItem = new LinkedHashMap<>();
  private final Set<String> inStock = new HashSet<>();

  Stores(
      Ledger ledger,
      Things things,
      Positions positions,
      Standings shortages,
      kitwright.substitution.Standings substitutions,
      Late late) {
    this.ledger = ledger;
    this.today = positions.day();
    this.things = things;
    this.positions = positions;
    this.late = late;
    shortages.open().forEach(each -> openByItem.putIfAbsent(each.shortage().item().id(), each));
    ledger.stock().forEach(stock -> stock.bought().map(Ref::id).ifPresent(inStock::add));
    positions.all().forEach(this::add);
    positions.allStock().forEach(this::add);
    shortages.all().forEach(this::add);
    substitutions.all().stream()
        .filter(kitwright.substitution.Standing::isApproved)
        .map(kitwright.substitution.Standing::substitution)
        .filter(substitution -> substitution.shortage().isEmpty())
        .forEach(this::add);
    ledger.spending().forEach(this::add);
  }

  /** All of it, less what finished tasks used without a word in the log. */
  List<Supply> left(Consumption consumption) {
    Map<String, List<Supply>> byThing =
        supplies.stream()
            .collect(Collectors.groupingBy(Supply::item, LinkedHashMap::new, Collectors.toList()));
    List<Supply> left = new ArrayList<>();
    byThing.forEach(
        (key, all) -> {
          BigDecimal gone = consumption.unlogged(key);
          for (Supply each : all) {
            BigDecimal taken =
                each.arrives().isPresent() ? BigDecimal.ZERO : each.amount().min(gone);
            gone = gone.subtract(taken);
            left.add(less(each, taken));
          }
        });
    return left;
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

  /** How each thing is bought; a thing whose lead time nobody wrote down has none. */
  Map<String, OrderRule> rules() {
    return rules;
  }

  private void add(Position position) {
    KitItem item = position.item();
    Quantity known =
        position.isCounted()
            ? position.left()
            : position.promised().less(position.onItsWay()).less(position.used());
    add(
        "kit item " + item.id(),
        things.of(item, known),
        Optional.empty(),
        Set.of(),
        position.isCounted() ? Supply.Sureness.COUNTED : Supply.Sureness.UNCOUNTED);
    Quantity ofShortage =
        Optional.ofNullable(openByItem.get(item.id()))
            .map(Standing::open)
            .filter(open -> open.convertsTo(position.promised()))
            .orElse(Quantity.none(position.promised().unit()));
    for (Awaited awaited : position.awaited()) {
      Quantity owed = awaited.qty().min(ofShortage);
      ofShortage = ofShortage.less(owed);
      String delivery = awaited.delivery().id();
      int own = late.of(delivery);
      awaited(delivery, item, awaited.qty().less(owed), awaited.delivery().expected(), own);
      awaited(
          delivery, item, owed, awaited.delivery().expected(), Math.max(own, lateOfShortage(item)));
    }
    lead(item).ifPresent(rule -> things.of(item, item.qty()).ifPresent(t -> rule(t, rule)));
  }

  private void awaited(
      String delivery, KitItem item, Quantity qty, Optional<LocalDate> expected, int days) {
    expected.ifPresent(
        day ->
            add(
                "delivery " + delivery,
                things.of(item, qty),
                Optional.of(coming(day, days)),
                Set.of(),
                Supply.Sureness.EXPECTED));
  }

  /** A day that has passed without anything coming is tomorrow at the earliest. */
  private LocalDate coming(LocalDate said, int days) {
    LocalDate day = said.isAfter(today) ? said : today.plusDays(1);
    return day.plusDays(days);
  }

  private int lateOfShortage(KitItem item) {
    return Optional.ofNullable(openByItem.get(item.id())).map(this::lateBy).orElse(0);
  }

  private int lateBy(Standing standing) {
    int most = late.of(standing.shortage().id());
    for (Claim claim : standing.claims()) {
      most = Math.max(most, late.of(claim.id()));
    }
    return most;
  }

  private Optional<OrderRule> lead(KitItem item) {
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
        .map(lead -> OrderRule.lotForLot(WorkTime.calendarDays(lead) + lateOfShortage(item)));
  }

  /** Of several items that are the same thing the one that is had soonest counts. */
  private void rule(Things.Amount of, OrderRule rule) {
    rules.merge(of.thing().key(), rule, (a, b) -> a.leadDays() <= b.leadDays() ? a : b);
  }

  private void add(StockPosition position) {
    Stock stock = position.stock();
    add(
        "stock " + stock.id(),
        things.of(stock, position.left()),
        stock.since().filter(today::isBefore),
        stock.keepFor().stream().map(Ref::id).collect(Collectors.toSet()),
        Supply.Sureness.COUNTED);
  }

  /** What covers a shortage other than a count, and what is promised for the open rest. */
  private void add(Standing standing) {
    Shortage shortage = standing.shortage();
    if (standing.item().isEmpty()) {
      return;
    }
    KitItem item = standing.item().get();
    for (Cover cover : standing.covers()) {
      if (cover.how() == Cover.How.SUBSTITUTED || cover.how() == Cover.How.BOUGHT) {
        add(
            cover.by().named(),
            things.of(item, stillThere(cover)),
            Optional.empty(),
            Set.of(),
            Supply.Sureness.COUNTED);
      }
    }
    Quantity awaited =
        standing.equals(openByItem.get(item.id()))
            ? positions
                .of(new Ref(item.id(), item.at().record()))
                .map(Position::onItsWay)
                .orElse(Quantity.none(item.qty().unit()))
            : Quantity.none(item.qty().unit());
    if (standing.isOpen() && standing.open().convertsTo(awaited)) {
      standing
          .promisedFor()
          .ifPresent(
              day ->
                  add(
                      "shortage " + shortage.id(),
                      things.of(item, standing.open().less(awaited)),
                      Optional.of(coming(day, lateBy(standing))),
                      Set.of(),
                      Supply.Sureness.EXPECTED));
    }
  }

  /** What was bought may stand in the stock, and some of it be used: then only the rest serves. */
  private Quantity stillThere(Cover cover) {
    return positions.allStock().stream()
        .filter(
            each -> each.stock().bought().filter(by -> by.id().equals(cover.by().id())).isPresent())
        .map(StockPosition::left)
        .filter(left -> left.convertsTo(cover.qty()))
        .findFirst()
        .map(left -> cover.qty().min(left.in(cover.qty().unit())))
        .orElse(cover.qty());
  }

  /** A change of the design without a shortage serves the task that it holds, and no other. */
  private void add(Substitution substitution) {
    Optional<KitItem> item = substitution.insteadOf().item().flatMap(ledger::kitItem);
    if (item.isPresent() && substitution.hold().isPresent()) {
      add(
          substitution.named(),
          things.of(item.get(), substitution.insteadOf().qty()),
          Optional.empty(),
          Set.of(substitution.hold().get().id()),
          Supply.Sureness.COUNTED);
    }
  }

  /** An order under way that no shortage caused. */
  private void add(Spend spend) {
    boolean coming =
        spend.state() != Spend.State.REFUNDED
            && spend.because().isEmpty()
            && !spend.on().isAfter(today)
            && spend.withdrawn().filter(day -> !day.isAfter(today)).isEmpty()
            && spend.expected().filter(today::isBefore).isPresent()
            && !inStock.contains(spend.id())
            && spend.pays().isEmpty();
    if (coming) {
      Optional<LocalDate> day =
          spend.expected().map(expected -> coming(expected, late.of(spend.id())));
      add(spend.named(), things.of(spend), day, Set.of(), Supply.Sureness.EXPECTED);
    }
  }

  private void add(
      String id,
      Optional<Things.Amount> amount,
      Optional<LocalDate> arrives,
      Set<String> keptFor,
      Supply.Sureness sureness) {
    amount
        .filter(each -> each.amount().signum() > 0)
        .ifPresent(
            each ->
                supplies.add(
                    new Supply(id, each.thing().key(), each.amount(), arrives, keptFor, sureness)));
  }
}

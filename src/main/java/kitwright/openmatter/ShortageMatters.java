package kitwright.openmatter;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitwright.kit.Count;
import kitwright.ledger.Facts;
import kitwright.ledger.KitItem;
import kitwright.ledger.Shortage;
import kitwright.network.PlannedOrder;
import kitwright.shortage.Balance;
import kitwright.shortage.CountedShortUnrecorded;
import kitwright.shortage.LookAhead;
import kitwright.shortage.Notice;
import kitwright.shortage.ShortageStanding;
import kitwright.shortage.ShortageStandings;
import kitwright.shortage.Thing;
import kitwright.shortage.Wanted;
import kitwright.value.Days;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/** What is short, recorded or not. */
final class ShortageMatters {
  private final Facts now;
  private final Needed needed;
  private final ShortageMove move;

  ShortageMatters(Facts now, Needed needed) {
    this.now = now;
    this.needed = needed;
    move = new ShortageMove(now);
  }

  List<OpenMatter> all() {
    List<OpenMatter> all = new ArrayList<>();
    Map<String, Quantity> recorded = new HashMap<>();
    for (ShortageStanding standing : ShortageStandings.on(now).open()) {
      List<Wanted> wanted = LookAhead.on(now).ofItem(standing.shortage().item());
      wanted.stream()
          .map(Wanted::thing)
          .findFirst()
          .ifPresent(thing -> recorded.merge(thing.key(), of(standing, thing), Quantity::plus));
      all.add(shortage(standing, wanted.stream().filter(ShortageMatters::waits).toList()));
    }
    for (Balance balance : CountedShortUnrecorded.all(now)) {
      List<Wanted> wanted = LookAhead.on(now).ofItem(ref(balance));
      wanted.stream()
          .map(Wanted::thing)
          .findFirst()
          .ifPresent(
              thing ->
                  recorded.merge(thing.key(), in(thing, balance.unrecorded()), Quantity::plus));
      all.add(unrecorded(balance, wanted.stream().filter(ShortageMatters::waits).toList()));
    }
    lacking().forEach((thing, wanted) -> lack(thing, wanted, recorded).ifPresent(all::add));
    return all;
  }

  private static Ref ref(Balance balance) {
    KitItem item = balance.position().item();
    return new Ref(item.id(), item.at().record());
  }

  private OpenMatter unrecorded(Balance balance, List<Wanted> waiting) {
    KitItem item = balance.position().item();
    Optional<OpenMatter.Stop> stop = needed.of(waiting.stream().map(Wanted::task).toList());
    Optional<PlannedOrder> order = orderOf(waiting);
    Optional<LocalDate> last = lastDayToOrder(stop, waiting).filter(day -> order.isPresent());
    return new OpenMatter(
        OpenMatter.Sort.SHORTAGE,
        item.named(),
        Thing.told(balance.unrecorded(), item.what()) + ": counted short, not recorded",
        stop,
        "you",
        "record it as a shortage and claim it"
            + last.map(day -> "; if you buy it, " + order(day, order.orElseThrow())).orElse(""),
        earlier(last, notice(balance)),
        Optional.empty());
  }

  private Optional<LocalDate> notice(Balance balance) {
    return balance.position().counts().stream()
        .map(Count::delivery)
        .flatMap(delivery -> WaitingMatters.notice(delivery, now.ledger()).stream())
        .max(Comparator.naturalOrder());
  }

  private Optional<PlannedOrder> orderOf(List<Wanted> waiting) {
    return waiting.stream()
        .filter(wanted -> !wanted.missing().isNone())
        .findFirst()
        .flatMap(wanted -> LookAhead.on(now).orderOf(wanted.thing()));
  }

  /** What nobody sends of a shortage, in the unit in which the thing is netted. */
  private static Quantity of(ShortageStanding standing, Thing thing) {
    return in(thing, standing.unsupplied());
  }

  private static Quantity in(Thing thing, Quantity qty) {
    Quantity none = Quantity.none(thing.unit());
    return qty.convertsTo(none) ? none.plus(qty) : none;
  }

  private static boolean waits(Wanted wanted) {
    return !wanted.missing().isNone() || !wanted.toCome().isEmpty();
  }

  private OpenMatter shortage(ShortageStanding standing, List<Wanted> waiting) {
    Shortage shortage = standing.shortage();
    Optional<OpenMatter.Stop> stop = needed.of(waiting.stream().map(Wanted::task).toList());
    return new OpenMatter(
        OpenMatter.Sort.SHORTAGE,
        shortage.named(),
        Thing.told(standing.open(), name(standing))
            + ": "
            + cause(shortage.cause())
            + underWay(standing),
        stop,
        move.waitsFor(standing),
        move.next(standing, Awaited.last(stop, waiting, now)),
        earlier(
            isSettledByOthers(standing) ? Optional.empty() : lastDayToOrder(stop, waiting),
            standing.state() == ShortageStanding.State.FOUND ? notice(shortage) : Optional.empty()),
        standing.promisedFor());
  }

  /** The last day to tell the supplier, as far as its record says. */
  private Optional<LocalDate> notice(Shortage shortage) {
    return Notice.of(shortage, ShortageStandings.on(now), now.ledger()).map(Notice::last);
  }

  static Optional<LocalDate> earlier(Optional<LocalDate> one, Optional<LocalDate> other) {
    return Stream.concat(one.stream(), other.stream()).min(Comparator.naturalOrder());
  }

  /** What part of it comes, where not all of it does. */
  private static String underWay(ShortageStanding standing) {
    return standing.unsupplied().isNone()
        ? ""
        : standing.coming().stream()
            .map(
                part ->
                    "; "
                        + Thing.told(part.qty())
                        + part.on()
                            .map(day -> " to come " + Days.named(day))
                            .or(
                                () ->
                                    part.lapsed()
                                        .map(day -> " due " + Days.named(day) + " did not come"))
                            .orElse(" to come, nobody says when"))
            .collect(Collectors.joining());
  }

  /** Whether others have said when all of it comes, or something else takes its place. */
  private static boolean isSettledByOthers(ShortageStanding standing) {
    return standing.promisedFor().isPresent()
        || standing.chosen().filter(way -> way.way() == Shortage.Way.SUBSTITUTE).isPresent();
  }

  /** The last day to order so that the work can start when it must. */
  private Optional<LocalDate> lastDayToOrder(Optional<OpenMatter.Stop> stop, List<Wanted> waiting) {
    return lastDayToOrder(stop, waiting, now);
  }

  static Optional<LocalDate> lastDayToOrder(
      Optional<OpenMatter.Stop> stop, List<Wanted> waiting, Facts now) {
    Optional<Integer> lead =
        waiting.stream()
            .map(Wanted::thing)
            .findFirst()
            .flatMap(thing -> LookAhead.on(now).leadDays(thing));
    return lead.flatMap(days -> stop.map(at -> at.neededBy().minusDays(days)));
  }

  private static String name(ShortageStanding standing) {
    return standing.item().map(item -> item.what()).orElse(standing.shortage().item().id());
  }

  private static String cause(Shortage.Cause cause) {
    return switch (cause) {
      case NOT_PACKED -> "not packed";
      case DAMAGED -> "damaged";
      case WRONG -> "wrong ones came";
      case UNDERSIZE -> "undersize";
      case USED_UP -> "used up";
    };
  }

  /** What is missing, recorded as short or not, by thing. */
  private Map<Thing, List<Wanted>> lacking() {
    Map<Thing, List<Wanted>> all = new LinkedHashMap<>();
    LookAhead.on(now).all().stream()
        .filter(wanted -> !wanted.missing().isNone())
        .forEach(
            wanted -> all.computeIfAbsent(wanted.thing(), any -> new ArrayList<>()).add(wanted));
    return all;
  }

  private Optional<OpenMatter> lack(
      Thing thing, List<Wanted> wanted, Map<String, Quantity> recorded) {
    Quantity none = Quantity.none(thing.unit());
    Quantity missing =
        wanted.stream()
            .map(Wanted::missing)
            .reduce(none, Quantity::plus)
            .less(recorded.getOrDefault(thing.key(), none));
    return missing.isNone() ? Optional.empty() : Optional.of(lack(thing, missing, wanted));
  }

  private OpenMatter lack(Thing thing, Quantity missing, List<Wanted> wanted) {
    Optional<PlannedOrder> order = LookAhead.on(now).orderOf(thing);
    Optional<OpenMatter.Stop> stop = needed.of(wanted.stream().map(Wanted::task).toList());
    Optional<LocalDate> last = lastDayToOrder(stop, wanted).filter(day -> order.isPresent());
    return new OpenMatter(
        OpenMatter.Sort.LACK,
        thing.record(),
        thing.so(missing)
            + ": none left, none on order"
            + (LookAhead.on(now).dayless(thing).isEmpty() ? "" : " for a day that holds"),
        stop,
        "you",
        last.map(day -> order(day, order.orElseThrow())).orElseGet(() -> get(thing)),
        last,
        Optional.empty());
  }

  /** Only a kit item has a lead, and only an item or a material is ordered by name. */
  private static String get(Thing thing) {
    return switch (thing.record().split(" ")[0]) {
      case "kit" -> "get it, and write down how long that takes (“lead”)";
      case "stock" -> "get more of it and write down how much there is then, or use something else";
      default -> "get it, and record the order with its “material” and “expected”";
    };
  }

  private String order(LocalDate last, PlannedOrder order) {
    return last.isBefore(now.day())
        ? "order it today; it comes about " + Days.named(order.arrives()) + ", too late"
        : "order it by " + Days.named(last);
  }
}

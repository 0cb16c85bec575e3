package kitwright.openmatter;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitwright.kit.Count;
import kitwright.ledger.Facts;
import kitwright.ledger.KitItem;
import kitwright.ledger.Party;
import kitwright.ledger.Shortage;
import kitwright.network.PlannedOrder;
import kitwright.shortage.Balance;
import kitwright.shortage.CountedShortUnrecorded;
import kitwright.shortage.LookAhead;
import kitwright.shortage.Notice;
import kitwright.shortage.Standing;
import kitwright.shortage.Standings;
import kitwright.shortage.Thing;
import kitwright.shortage.Wanted;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/** What is short, recorded or not. */
final class ShortageMatters {
  private final Facts now;
  private final Needed needed;

  ShortageMatters(Facts now, Needed needed) {
    this.now = now;
    this.needed = needed;
  }

  List<OpenMatter> all() {
    List<OpenMatter> all = new ArrayList<>();
    Set<String> recorded = new HashSet<>();
    for (Standing standing : Standings.on(now).open()) {
      List<Wanted> wanted = LookAhead.on(now).ofItem(standing.shortage().item());
      wanted.forEach(each -> recorded.add(each.thing().key()));
      all.add(shortage(standing, wanted.stream().filter(ShortageMatters::waits).toList()));
    }
    for (Balance balance : CountedShortUnrecorded.all(now)) {
      List<Wanted> wanted = LookAhead.on(now).ofItem(ref(balance));
      wanted.forEach(each -> recorded.add(each.thing().key()));
      all.add(unrecorded(balance, wanted.stream().filter(ShortageMatters::waits).toList()));
    }
    lacking(recorded).forEach((thing, wanted) -> all.add(lack(thing, wanted)));
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
    Optional<LocalDate> last = lastDayToOrder(stop, order);
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

  private static boolean waits(Wanted wanted) {
    return !wanted.missing().isNone() || !wanted.toCome().isEmpty();
  }

  private OpenMatter shortage(Standing standing, List<Wanted> waiting) {
    Shortage shortage = standing.shortage();
    Optional<PlannedOrder> order = orderOf(waiting);
    Optional<OpenMatter.Stop> stop = needed.of(waiting.stream().map(Wanted::task).toList());
    return new OpenMatter(
        OpenMatter.Sort.SHORTAGE,
        shortage.named(),
        Thing.told(standing.open(), name(standing)) + ": " + cause(shortage.cause()),
        stop,
        waitsFor(standing),
        next(standing),
        earlier(
            isSubstituted(standing) ? Optional.empty() : lastDayToOrder(stop, order),
            standing.state() == Standing.State.FOUND ? notice(shortage) : Optional.empty()),
        standing.promisedFor());
  }

  /** The last day to tell the supplier, as far as its record says. */
  private Optional<LocalDate> notice(Shortage shortage) {
    return Notice.of(shortage, Standings.on(now), now.ledger()).map(Notice::last);
  }

  static Optional<LocalDate> earlier(Optional<LocalDate> one, Optional<LocalDate> other) {
    return Stream.concat(one.stream(), other.stream()).min(Comparator.naturalOrder());
  }

  /** The last day to order so that the work can start when it must. */
  private static Optional<LocalDate> lastDayToOrder(
      Optional<OpenMatter.Stop> stop, Optional<PlannedOrder> order) {
    return order.flatMap(
        planned ->
            stop.map(
                at ->
                    at.neededBy()
                        .minusDays(ChronoUnit.DAYS.between(planned.orderBy(), planned.needed()))));
  }

  private static boolean isSubstituted(Standing standing) {
    return standing
        .shortage()
        .decided()
        .filter(
            decided ->
                standing.shortage().options().stream()
                    .anyMatch(
                        option ->
                            option.name().equals(decided.option())
                                && option.way() == Shortage.Way.SUBSTITUTE))
        .isPresent();
  }

  private static String name(Standing standing) {
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

  private String waitsFor(Standing standing) {
    return switch (standing.state()) {
      case FOUND -> "you";
      case ANSWERED -> "you";
      case CLAIMED, PROMISED -> supplier(standing);
      case COVERED -> "nobody";
    };
  }

  private String supplier(Standing standing) {
    return standing.claims().stream()
        .flatMap(claim -> now.ledger().party(claim.against()).stream())
        .map(Party::name)
        .findFirst()
        .orElse("the seller");
  }

  private String next(Standing standing) {
    Optional<String> chosen = chosen(standing);
    if (chosen.isPresent()) {
      return chosen.get();
    }
    if (standing.shortage().decided().isEmpty() && standing.shortage().options().size() > 1) {
      return "choose a way out: "
          + standing.shortage().options().stream()
              .map(Shortage.Option::name)
              .collect(Collectors.joining(", "));
    }
    return switch (standing.state()) {
      case FOUND ->
          standing.claims().isEmpty() ? "claim it from the supplier" : "send the drafted claim";
      case CLAIMED -> "press for an answer to " + claims(standing);
      case ANSWERED -> "settle what was answered to " + claims(standing);
      case PROMISED -> "see that it comes on " + standing.promisedFor().orElseThrow();
      case COVERED -> "nothing";
    };
  }

  private static String claims(Standing standing) {
    return standing.claims().stream().map(claim -> claim.id()).collect(Collectors.joining(", "));
  }

  /** What the decision asks, where it asks something now. */
  private Optional<String> chosen(Standing standing) {
    Optional<Shortage.Option> option =
        standing
            .shortage()
            .decided()
            .flatMap(
                decided ->
                    standing.shortage().options().stream()
                        .filter(each -> each.name().equals(decided.option()))
                        .findFirst());
    if (option.isEmpty()) {
      return Optional.empty();
    }
    return switch (option.get().way()) {
      case WAIT, DO_WITHOUT -> Optional.empty();
      case BUY ->
          standing.promisedFor().isPresent()
              ? Optional.empty()
              : Optional.of("buy it, as decided, and record the order");
      case SUBSTITUTE ->
          standing.substitutions().stream()
              .filter(each -> !each.isWithdrawn() && !each.isApproved())
              .findFirst()
              .map(each -> "get substitution " + each.substitution().id() + " signed");
    };
  }

  /** What is missing without a record, by thing. */
  private Map<Thing, List<Wanted>> lacking(Set<String> recorded) {
    Map<Thing, List<Wanted>> all = new LinkedHashMap<>();
    LookAhead.on(now).all().stream()
        .filter(wanted -> !wanted.missing().isNone())
        .filter(wanted -> !recorded.contains(wanted.thing().key()))
        .forEach(
            wanted -> all.computeIfAbsent(wanted.thing(), any -> new ArrayList<>()).add(wanted));
    return all;
  }

  private OpenMatter lack(Thing thing, List<Wanted> wanted) {
    Quantity missing =
        wanted.stream().map(Wanted::missing).reduce(Quantity.none(thing.unit()), Quantity::plus);
    Optional<PlannedOrder> order = LookAhead.on(now).orderOf(thing);
    Optional<OpenMatter.Stop> stop = needed.of(wanted.stream().map(Wanted::task).toList());
    Optional<LocalDate> last = lastDayToOrder(stop, order);
    return new OpenMatter(
        OpenMatter.Sort.LACK,
        thing.record(),
        thing.so(missing) + ": nobody has it, nobody sends it",
        stop,
        "you",
        last.map(day -> order(day, order.orElseThrow()))
            .orElse("get it, and write down how long that takes (“lead”)"),
        last,
        Optional.empty());
  }

  private String order(LocalDate last, PlannedOrder order) {
    return last.isBefore(now.day())
        ? "order it today; it comes about " + order.arrives() + ", too late"
        : "order it by " + last;
  }
}

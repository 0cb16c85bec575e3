package kitwright.shortage;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitwright.kit.Position;
import kitwright.kit.Positions;
import kitwright.kit.SameWork;
import kitwright.kit.StockPosition;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.LogDay;
import kitwright.ledger.Spend;
import kitwright.ledger.Substitution;
import kitwright.ledger.Task;
import kitwright.network.Netting;
import kitwright.network.Plan;
import kitwright.network.PlannedOrder;
import kitwright.network.Schedule;
import kitwright.network.Supply;
import kitwright.substitution.Lack;
import kitwright.substitution.SubstitutionStanding;
import kitwright.substitution.SubstitutionStandings;
import kitwright.takeoff.TakeOff;
import kitwright.value.Nearest;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * Each open task's need of material, on the day on which the work can use it, set against what is
 * counted good, expected, bought, approved in place of it or kept for it. The first need is served
 * first; what is promised to one is not given to another.
 */
public final class LookAhead {
  private static final Facts.Fact<LookAhead> FACT = day -> LookAhead.on(day, Late.NOTHING);

  private final Plan plan;
  private final Things things;
  private final Ledger ledger;
  private final Map<String, BigDecimal> hand;
  private final Netting netting;
  private final Map<String, Integer> leadDays;
  private final List<Wanted> all;
  private final Map<String, List<Wanted>> byTask;
  private final Map<String, List<Wanted>> byThing;
  private final Map<String, PlannedOrder> firstOrders = new HashMap<>();
  private final Map<String, Thing> byKey;
  private final Schedule paced;
  private final OwnWork ownWork;
  private final Map<String, List<Dayless>> dayless;
  private final Map<String, List<String>> doubts;
  private final Map<String, List<String>> beyond;

  private LookAhead(
      Facts day,
      Plan plan,
      Ledger ledger,
      Things things,
      Map<String, BigDecimal> hand,
      Netting netting,
      Stores stores,
      List<Wanted> all,
      Gathered gathered) {
    this.plan = plan;
    this.ledger = ledger;
    this.things = things;
    this.hand = hand;
    this.netting = netting;
    this.leadDays = stores.leadDays();
    this.dayless = stores.dayless();
    this.all = all;
    this.byTask = all.stream().collect(Collectors.groupingBy(Wanted::task));
    this.byThing = all.stream().collect(Collectors.groupingBy(w -> w.thing().key()));
    netting.orders().forEach(order -> firstOrders.putIfAbsent(order.item(), order));
    this.byKey = gathered.things();
    this.beyond = gathered.beyond();
    this.doubts = doubts(Positions.on(day), ledger, things);
    this.ownWork = new OwnWork(day, this::leaning);
    this.paced = paced(plan, netting, ownWork.without(""));
  }

  public static LookAhead on(Facts day) {
    return FACT.on(day);
  }

  /** The same, with some goods supposed to come later than said. */
  public static LookAhead on(Facts day, Late late) {
    Ledger ledger = day.ledger();
    Plan plan = Plan.on(day);
    SubstitutionStandings substitutions = SubstitutionStandings.on(day);
    Map<String, List<Want>> byTask = new LinkedHashMap<>();
    for (Task task : plan.tasks()) {
      byTask.put(task.id(), Wants.of(task, ledger));
    }
    List<Substitution> substituted =
        substitutions
            .where(
                each -> takesForOpenWork(each, plan) && !substitutions.taken().isOnlyAnOption(each))
            .stream()
            .filter(
                standing -> standing.isApproved() || isDecided(standing, ShortageStandings.on(day)))
            .map(SubstitutionStanding::substitution)
            .toList();
    Things things =
        new Things(ledger, byTask.values().stream().flatMap(Collection::stream).toList());
    Consumption used = new Consumption(ledger, plan, things, byTask, Positions.on(day));
    Gathered gathered = new Gathered(plan, things, used);
    byTask.values().forEach(wants -> gathered.add(wants));
    substituted.forEach(each -> gathered.add(each, SameWork.onTheWayTo(each.hold(), ledger)));
    Stores stores =
        new Stores(
            ledger, things, Positions.on(day), ShortageStandings.on(day), substitutions, late);
    List<Supply> left = stores.left(used);
    Netting netting = Netting.of(gathered.needs(), left, stores.leadDays(), plan.today());
    return new LookAhead(
        day, plan, ledger, things, hand(left), netting, stores, gathered.wanted(netting), gathered);
  }

  private static Map<String, BigDecimal> hand(List<Supply> supplies) {
    Map<String, BigDecimal> hand = new HashMap<>();
    supplies.stream()
        .filter(each -> each.arrives().isEmpty() && Wanted.isItself(each))
        .forEach(each -> hand.merge(each.item(), each.amount(), BigDecimal::add));
    return hand;
  }

  /** Only of such a substitution it has to be known whether it may be built. */
  private static boolean takesForOpenWork(Substitution substitution, Plan plan) {
    return substitution.hold().filter(task -> plan.isOpen(task.id())).isPresent()
        && !substitution.use().isEmpty();
  }

  /** Whether its shortage is to be met by it, by the builder's decision, and is not yet. */
  private static boolean isDecided(SubstitutionStanding standing, ShortageStandings shortages) {
    String id = standing.substitution().id();
    boolean fails = standing.lacks(Lack.ASSESSMENT_FAILS);
    return !standing.isWithdrawn()
        && !fails
        && shortages.open().stream()
            .flatMap(each -> each.chosen().stream())
            .flatMap(option -> option.substitution().stream())
            .anyMatch(ref -> ref.id().equals(id));
  }

  /** Every need, by day, then by task. */
  public List<Wanted> all() {
    return all;
  }

  /** The needs that are short on their day, by day. */
  public List<Wanted> shortages() {
    return all.stream().filter(Wanted::isShort).toList();
  }

  /** What a task needs. */
  public List<Wanted> ofTask(String task) {
    return byTask.getOrDefault(task, List.of());
  }

  /**
   * What a task takes and nobody can reckon, each a clause after “it is not known”: a record that
   * is not there or cannot be read, a unit that does not convert, a section that leaves something
   * out; what it still needs of a thing of which nobody knows how much is left; and what it has
   * used more of than it asks for, and is not done.
   */
  public List<String> unreckoned(Task task) {
    Stream<String> unfound =
        Wants.of(task, ledger).stream()
            .filter(want -> want.sort() != Want.Sort.MATERIAL && things.of(want).isEmpty())
            .map(want -> "how much of “" + want.ref().id() + "” is here");
    Stream<String> gaps = TakeOff.of(task, ledger).gaps().stream().map(TakeOff.Gap::what);
    Stream<String> doubtful =
        ofTask(task.id()).stream()
            .flatMap(wanted -> doubts.getOrDefault(wanted.thing().key(), List.of()).stream());
    Stream<String> beyond = this.beyond.getOrDefault(task.id(), List.of()).stream();
    return Stream.of(unfound, gaps, doubtful, beyond)
        .flatMap(Function.identity())
        .distinct()
        .toList();
  }

  /** Of which things, by key, nobody knows how much is left, each a clause as above. */
  private static Map<String, List<String>> doubts(
      Positions positions, Ledger ledger, Things things) {
    Map<String, List<String>> doubts = new HashMap<>();
    for (Position each : positions.all()) {
      each.doubts().forEach(why -> doubt(doubts, things.of(each.item()), each.item().id(), why));
    }
    for (StockPosition each : positions.allStock()) {
      each.doubts().forEach(why -> doubt(doubts, things.of(each.stock()), each.stock().id(), why));
    }
    for (LogDay day : ledger.log()) {
      for (LogDay.Used used : day.used()) {
        used.material()
            .filter(any -> things.of(used).isEmpty())
            .ifPresent(ref -> doubt(doubts, day, used, ref, ledger, things));
      }
    }
    for (String material : things.materials()) {
      ledger
          .unreadTakers(material)
          .forEach(why -> doubt(doubts, things.keysOf(material), material, why));
    }
    return doubts;
  }

  /** A name of nothing may mean the material of a like name; where none has, any. */
  private static void doubt(
      Map<String, List<String>> doubts,
      LogDay day,
      LogDay.Used used,
      Ref material,
      Ledger ledger,
      Things things) {
    String takes = day.named() + " takes " + used.qty() + " of ";
    if (ledger.knows(Kind.MATERIALS, material.id())) {
      String why = takes + "it, which does not convert";
      doubt(doubts, things.keysOf(material.id()), material.id(), why);
      return;
    }
    String why = takes + "“" + material.id() + "”, which is not there";
    Nearest.to(material.id(), ledger.ids(Kind.MATERIALS))
        .<Collection<String>>map(List::of)
        .orElse(things.materials())
        .forEach(each -> doubt(doubts, things.keysOf(each), each, why));
  }

  private static void doubt(
      Map<String, List<String>> doubts, Collection<String> keys, String id, String why) {
    String clause = "how much of “" + id + "” is here, since " + why;
    keys.forEach(key -> doubts.computeIfAbsent(key, any -> new ArrayList<>()).add(clause));
  }

  /** Who needs an item of the kit, the first first. */
  public List<Wanted> ofItem(Ref item) {
    return ledger
        .kitItem(item)
        .flatMap(found -> things.of(found, found.qty()))
        .map(amount -> ofKey(amount.thing().key()))
        .orElse(List.of());
  }

  /** The needs of a thing that a spend bought, short on their day; none where it says no amount. */
  List<Wanted> shortOf(Spend spend) {
    return things.of(spend).stream()
        .flatMap(amount -> ofKey(amount.thing().key()).stream())
        .filter(Wanted::isShort)
        .toList();
  }

  private List<Wanted> ofKey(String key) {
    return byThing.getOrDefault(key, List.of());
  }

  /** The needs that lean on what nobody has counted, up to a day. */
  public List<Wanted> countBefore(LocalDate until) {
    return all.stream()
        .filter(wanted -> !wanted.uncounted().isNone() && !wanted.on().isAfter(until))
        .toList();
  }

  /**
   * Something to order, since nobody has it and nobody sends it.
   *
   * @param order how much, until when, and when it comes
   */
  public record ToOrder(Thing thing, PlannedOrder order) {}

  /** What to order, by the last day to order. */
  public List<ToOrder> orders() {
    return netting.orders().stream()
        .filter(order -> Thing.clean(order.amount()).signum() > 0)
        .map(order -> new ToOrder(Objects.requireNonNull(byKey.get(order.item())), order))
        .toList();
  }

  /** The first order of a thing. */
  public Optional<PlannedOrder> orderOf(Thing thing) {
    return Optional.ofNullable(firstOrders.get(thing.key()));
  }

  /** What of a thing is sent, ordered or promised for no day that holds. */
  public List<Dayless> dayless(Thing thing) {
    return dayless.getOrDefault(thing.key(), List.of());
  }

  /** Calendar days from ordering a thing to having it; empty where nobody wrote them down. */
  public Optional<Integer> leadDays(Thing thing) {
    return Optional.ofNullable(leadDays.get(thing.key()));
  }

  /**
   * What is at hand of an item itself now, less what finished work must have used; none where
   * unknown. What a substitution takes in its place is told where that stands.
   */
  public Quantity atHand(KitItem item) {
    return things
        .of(item, item.qty())
        .map(amount -> amount.thing().qty(hand.getOrDefault(amount.thing().key(), BigDecimal.ZERO)))
        .orElse(Quantity.none(item.qty().unit()));
  }

  /** What must be ordered of an item, by the last day to order. */
  public List<ToOrder> ordersOf(KitItem item) {
    Optional<String> key = things.of(item, item.qty()).map(amount -> amount.thing().key());
    return orders().stream()
        .filter(order -> key.filter(order.thing().key()::equals).isPresent())
        .toList();
  }

  /**
   * The schedule with every task held until its materials can be there: as promised, or ordered
   * today where they must be. What nobody can order holds nothing, since nobody knows how long.
   */
  public Schedule paced() {
    return paced;
  }

  private static Schedule paced(Plan plan, Netting netting, Map<String, Long> ownWork) {
    return plan.scheduled(plan.network().heldUntil(netting.readyDays()).longerBy(ownWork));
  }

  /** The same, with some tasks so many working minutes longer. */
  public Schedule paced(Map<String, Long> longer) {
    return plan.scheduled(paced.network().longerBy(longer));
  }

  /**
   * Minutes of own work that chosen ways out add, by task.
   *
   * @param shortage id of a shortage whose way out is left aside
   */
  public Map<String, Long> ownWorkWithout(String shortage) {
    return ownWork.without(shortage);
  }

  /** The tasks that lack the thing of a shortage, or take what took its place. */
  private Stream<String> leaning(ShortageStanding standing) {
    Set<String> records = new HashSet<>();
    standing.covers().forEach(cover -> records.add(cover.by().named()));
    standing.coming().forEach(coming -> records.add(coming.by().named()));
    return ofItem(standing.shortage().item()).stream()
        .filter(
            wanted ->
                standing.isOpen()
                    ? !wanted.missing().isNone() || !wanted.toCome().isEmpty()
                    : records.stream().anyMatch(wanted::leansOn))
        .map(Wanted::task);
  }

  /** Ids of the tasks that lack something which neither comes nor can be ordered. */
  public List<String> stopped() {
    return netting.stopped();
  }
}

package kitwright.choice;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitwright.kit.Positions;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.ledger.Substitution;
import kitwright.network.Plan;
import kitwright.network.Planned;
import kitwright.network.Schedule;
import kitwright.openmatter.Ends;
import kitwright.openmatter.Needed;
import kitwright.openmatter.OpenMatter;
import kitwright.shortage.Arrival;
import kitwright.shortage.LookAhead;
import kitwright.shortage.ShortageStanding;
import kitwright.shortage.Wanted;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * The schedule with and without the missing thing. Everything else is paced as the look-ahead paces
 * it; the tasks that lack the thing are held until the day on which a way out brings it, and the
 * own hours of that way are added to the first of them.
 */
final class Waiting {
  private final Plan plan;
  private final Needed needed;
  private final Ledger ledger;
  private final Positions positions;
  private final ShortageStanding standing;
  private final Map<String, LocalDate> others;
  private final Map<String, Long> otherWork;
  private final List<String> lacking;
  private final Schedule free;
  private final Facts now;

  Waiting(Facts now, ShortageStanding standing) {
    this.now = now;
    plan = Plan.on(now);
    needed = Needed.on(now);
    ledger = now.ledger();
    positions = Positions.on(now);
    this.standing = standing;
    List<Wanted> ofItem = LookAhead.on(now).ofItem(standing.shortage().item());
    others = others(now, ofItem);
    lacking =
        ofItem.stream()
            .filter(wanted -> !wanted.missing().isNone() || !wanted.toCome().isEmpty())
            .map(Wanted::task)
            .filter(plan::isOpen)
            .distinct()
            .toList();
    otherWork = LookAhead.on(now).ownWorkWithout(standing.shortage().id());
    free = plan.scheduled(plan.network().heldUntil(others).longerBy(otherWork));
  }

  /** The days until which open tasks wait for other things. */
  private Map<String, LocalDate> others(Facts now, List<Wanted> ofItem) {
    Set<String> keys = new LinkedHashSet<>();
    ofItem.forEach(wanted -> keys.add(wanted.thing().key()));
    Map<String, LocalDate> days = new HashMap<>();
    LookAhead.on(now).all().stream()
        .filter(wanted -> !keys.contains(wanted.thing().key()) && plan.isOpen(wanted.task()))
        .forEach(
            wanted ->
                wanted.readyOn().ifPresent(day -> days.merge(wanted.task(), day, Waiting::later)));
    return days;
  }

  private static LocalDate later(LocalDate one, LocalDate other) {
    return one.isAfter(other) ? one : other;
  }

  /** When a way out lets the work go on. */
  Timing timing(Shortage.Option option, Optional<Substitution> substitution) {
    Optional<LocalDate> arrives = arrives(option);
    List<String> tasks = tasks(substitution);
    boolean nothingComes = option.way() == Shortage.Way.DO_WITHOUT;
    Optional<Quantity> rest = substitution.flatMap(each -> rest(option, each));
    if ((arrives.isEmpty() && !nothingComes) || rest.isPresent()) {
      return new Timing(arrives, Optional.empty(), Optional.empty(), rest);
    }
    Map<String, LocalDate> held = new HashMap<>(others);
    arrives.ifPresent(day -> tasks.forEach(task -> held.merge(task, day, Waiting::later)));
    Map<String, Long> longer = new HashMap<>(otherWork);
    long own = Choice.hours(option).multiply(BigDecimal.valueOf(60)).longValue();
    first(tasks).ifPresent(task -> longer.merge(task, own, Long::sum));
    Schedule with = plan.scheduled(plan.network().heldUntil(held).longerBy(longer));
    return new Timing(arrives, held(tasks, with), Optional.of(launch(with)), rest);
  }

  /** What a substitution leaves missing; what it stands for already counts among what comes. */
  private Optional<Quantity> rest(Shortage.Option option, Substitution substitution) {
    boolean counted =
        standing.chosen().filter(option::equals).isPresent()
            || standing.covers().stream().anyMatch(cover -> cover.by().equals(substitution));
    Quantity open = standing.unsupplied();
    Quantity qty = substitution.insteadOf().qty();
    if (!counted && !qty.convertsTo(open)) {
      return Optional.empty();
    }
    return Optional.of(counted ? open : open.less(qty)).filter(rest -> !rest.isNone());
  }

  /** As the shortage stands where the way is chosen or waits for what is sent; else as it says. */
  private Optional<LocalDate> arrives(Shortage.Option option) {
    boolean isChosen = standing.chosen().filter(option::equals).isPresent();
    Optional<LocalDate> stands =
        isChosen
            ? standing.expected().flatMap(day -> last())
            : option.way() == Shortage.Way.WAIT
                ? standing.promisedFor().flatMap(day -> last())
                : Optional.empty();
    return stands.or(() -> Arrival.of(option, positions, ledger, plan.today()));
  }

  /** The day from which the last of it may be counted on. */
  private Optional<LocalDate> last() {
    return standing.coming().stream()
        .flatMap(part -> part.from(plan.today()).stream())
        .max(LocalDate::compareTo);
  }

  private List<String> tasks(Optional<Substitution> substitution) {
    Set<String> tasks = new LinkedHashSet<>(lacking);
    substitution
        .flatMap(Substitution::hold)
        .map(Ref::id)
        .filter(plan::isOpen)
        .ifPresent(tasks::add);
    return List.copyOf(tasks);
  }

  private Optional<String> first(List<String> tasks) {
    return tasks.stream()
        .map(free::of)
        .min(Comparator.comparing(Planned::earliestStart).thenComparing(Planned::id))
        .map(Planned::id);
  }

  private Optional<Timing.Held> held(List<String> tasks, Schedule with) {
    return tasks.stream()
        .map(free::of)
        .sorted(Comparator.comparing(Planned::earliestStart).thenComparing(Planned::id))
        .map(before -> held(before, with.of(before.id())))
        .filter(held -> held.days() > 0)
        .findFirst();
  }

  private Timing.Held held(Planned before, Planned after) {
    long days = ChronoUnit.DAYS.between(day(before), day(after));
    double left = after.total().days();
    return new Timing.Held(
        before.id(), plan.name(before.id()), days, Math.max(0, before.total().days() - left), left);
  }

  /** The day that a delay moves: of work under way, whose rest is held, its end; else its start. */
  private LocalDate day(Planned planned) {
    return (plan.isBegun(planned.id()) ? planned.earliestFinish() : planned.earliestStart())
        .toLocalDate();
  }

  private Timing.LaunchDay launch(Schedule with) {
    LocalDate on = Ends.weathered(with, now).lastDay();
    return new Timing.LaunchDay(on, ChronoUnit.DAYS.between(launchIfHere(), on));
  }

  /**
   * The last day on which the thing may come without moving the end of the plan; empty if none
   * waits.
   */
  Optional<LocalDate> neededBy() {
    return needed.of(lacking).map(OpenMatter.Stop::neededBy);
  }

  /** The end of the build if the thing were here today. */
  LocalDate launchIfHere() {
    return Ends.weathered(free, now).lastDay();
  }

  /** The last day on which a held task can start without moving the end of the plan. */
  Optional<LocalDate> latestStart(Ref task) {
    return needed.of(List.of(task.id())).map(OpenMatter.Stop::neededBy);
  }
}

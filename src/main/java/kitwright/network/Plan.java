package kitwright.network;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Task;
import kitwright.value.Ref;

/**
 * The tasks of a ledger as a network, seen from one day: worked out once and shared by whoever asks
 * when something is needed. Withdrawn tasks are left out, and the links to them.
 */
public final class Plan {
  private static final Facts.Fact<Plan> FACT = day -> of(day.ledger(), day.day(), Headways.on(day));

  private final Ledger ledger;
  private final LocalDate today;
  private final LocalDate morning;
  private final WorkTime time;
  private final Map<String, Task> tasks;
  private final Schedule schedule;
  private final Set<String> inRings;

  /** Worked out once: many ask, some for each tool. */
  private Optional<List<Planned>> ahead = Optional.empty();

  private Plan(
      Ledger ledger,
      LocalDate today,
      LocalDate morning,
      WorkTime time,
      Map<String, Task> tasks,
      Schedule schedule) {
    this.ledger = ledger;
    this.today = today;
    this.morning = morning;
    this.time = time;
    this.tasks = tasks;
    this.schedule = schedule;
    this.inRings =
        schedule.network().faults().stream()
            .filter(fault -> fault.kind() != NetworkFault.Kind.SAME_ID)
            .filter(fault -> fault.kind() != NetworkFault.Kind.UNKNOWN_TASK)
            .flatMap(fault -> fault.ids().stream())
            .collect(Collectors.toSet());
  }

  /**
   * The plan on a day, by what is recorded up to that day. Work goes on that same day, or on the
   * next where the log of the day is written: what was done today is behind us.
   */
  public static Plan on(Facts day) {
    return FACT.on(day);
  }

  /** The same, where nobody else asks. */
  public static Plan of(Ledger ledger, LocalDate today) {
    return of(ledger, today, Headways.of(ledger, today));
  }

  private static Plan of(Ledger ledger, LocalDate today, Headways headways) {
    WorkTime time = WorkTime.of(ledger.build());
    Map<String, Task> tasks = new LinkedHashMap<>();
    ledger.tasks().stream()
        .filter(task -> task.withdrawn().isEmpty())
        .forEach(task -> tasks.putIfAbsent(task.id(), task));
    List<Activity> activities =
        tasks.values().stream()
            .map(
                task ->
                    held(activity(task, time, headways), task, ledger).without(away(task, ledger)))
            .toList();
    Network network = Network.of(activities, links(tasks.values(), ledger, time));
    LocalDate morning = headways.isDayWrittenUp() ? today.plusDays(1) : today;
    Schedule schedule = Schedule.of(network, time.calendar(), morning);
    return new Plan(ledger, today, morning, time, tasks, schedule);
  }

  private static Activity activity(Task task, WorkTime time, Headways headways) {
    return new Activity(
        task.id(),
        task.what(),
        time.estimate(task.takes()),
        task.cure().map(WorkTime::elapsed).orElse(Duration.ZERO),
        headways.of(task),
        Optional.empty(),
        List.of());
  }

  /** The days on which somebody whom a task needs cannot come. */
  private static List<DaysOff> away(Task task, Ledger ledger) {
    return task.who().stream()
        .flatMap(who -> ledger.party(who).stream())
        .flatMap(party -> party.off().stream())
        .map(days -> new DaysOff(days.first(), days.last()))
        .toList();
  }

  private static Activity held(Activity each, Task task, Ledger ledger) {
    return Crates.expected(task, ledger).map(each::heldUntil).orElse(each);
  }

  private static List<Link> links(Collection<Task> tasks, Ledger ledger, WorkTime time) {
    return tasks.stream()
        .flatMap(
            task ->
                task.after().stream()
                    .filter(
                        link ->
                            ledger
                                .task(link.task())
                                .filter(before -> before.withdrawn().isPresent())
                                .isEmpty())
                    .map(
                        link ->
                            new Link(
                                link.task().id(),
                                task.id(),
                                link.lag().map(time::minutes).orElse(0L))))
        .toList();
  }

  public LocalDate today() {
    return today;
  }

  /** The day from which work goes on: today, or tomorrow where today is written up. */
  public LocalDate morning() {
    return morning;
  }

  /** The first working day from that morning on. */
  public LocalDate nextWorkingDay() {
    return calendar().plusWorkingDays(morning, 0);
  }

  /** The last day of the build's horizon: how far ahead missing things are looked for. */
  public LocalDate horizon() {
    return today.plusDays(WorkTime.calendarDays(ledger.build().horizon()));
  }

  public WorkTime time() {
    return time;
  }

  public WorkCalendar calendar() {
    return time.calendar();
  }

  public Network network() {
    return schedule.network();
  }

  /** Dates and floats by work alone, whatever may be missing. */
  public Schedule schedule() {
    return schedule;
  }

  /** The same work with other dates or durations. */
  public Schedule scheduled(Network changed) {
    return Schedule.of(changed, time.calendar(), morning);
  }

  /** Every task that was not withdrawn, in the ledger's order. */
  public List<Task> tasks() {
    return List.copyOf(tasks.values());
  }

  public Optional<Task> task(String id) {
    return Optional.ofNullable(tasks.get(id));
  }

  /** A task with its dates by work alone; empty where there is none of that id. */
  public Optional<Planned> planned(String id) {
    return tasks.containsKey(id) ? Optional.of(schedule.of(id)) : Optional.empty();
  }

  /**
   * The first day on which an open task can be worked at: a working day, today or later, on which
   * everybody can come whom it needs.
   */
  public LocalDate workableOn(String id) {
    LocalDate day = schedule.of(id).goesOn().toLocalDate();
    return calendarOf(id).plusWorkingDays(day.isBefore(morning) ? morning : day, 0);
  }

  /** The first working day on which an open task waits for nothing but people. */
  public LocalDate freedOn(String id) {
    LocalDate day = schedule.freedOn(id);
    return calendar().plusWorkingDays(day.isBefore(morning) ? morning : day, 0);
  }

  /** When a task's work goes on: when work goes on, and everybody can come whom it needs. */
  public WorkCalendar calendarOf(String id) {
    return schedule.of(id).activity().calendar(calendar());
  }

  /**
   * The last day on which an open task must start, or go on where it is under way, so that the end
   * does not move.
   */
  public LocalDate latestOn(String id) {
    Planned planned = schedule.of(id);
    return isBegun(id)
        ? calendarOf(id).plusWorkingDays(workableOn(id), planned.total().wholeDays())
        : planned.latestStart().toLocalDate();
  }

  /** Whether work on it is still ahead. */
  public boolean isOpen(String id) {
    return network().activity(id).filter(each -> !each.isDone()).isPresent();
  }

  /** Whether it has begun, or is finished. */
  public boolean isBegun(String id) {
    return network()
        .activity(id)
        .filter(each -> !(each.headway() instanceof Headway.Waiting))
        .isPresent();
  }

  /** What of the order of work a task still waits for; nothing where it could go on. */
  public List<Wait> waits(Task task) {
    return Wait.of(task, this);
  }

  /** Whether it waits, by way of others, for itself. */
  boolean isInRing(String id) {
    return inRings.contains(id);
  }

  /** Whether a task was given up, so that links to it count for nothing. */
  boolean isGivenUp(Ref task) {
    return ledger.task(task).filter(each -> each.withdrawn().isPresent()).isPresent();
  }

  /** The open tasks that come next after some: their followers, or what follows those. */
  public List<String> nextAfter(Collection<String> ids) {
    Set<String> seen = new LinkedHashSet<>(ids);
    Deque<String> left = new ArrayDeque<>(ids);
    List<String> next = new ArrayList<>();
    while (!left.isEmpty()) {
      for (String follower : network().followers(left.remove())) {
        if (seen.add(follower)) {
          (isOpen(follower) ? next : left).add(follower);
        }
      }
    }
    return next;
  }

  /** The tasks still ahead, by when they can go on; of those alike the least float first. */
  public List<Planned> ahead() {
    List<Planned> known = ahead.orElseGet(this::sorted);
    ahead = Optional.of(known);
    return known;
  }

  private List<Planned> sorted() {
    return schedule.all().stream()
        .filter(planned -> !planned.activity().isDone())
        .sorted(
            Comparator.comparing(Planned::goesOn)
                .thenComparing(Planned::total)
                .thenComparing(Planned::id))
        .toList();
  }

  /** What a task is called; its id where there is no such task. */
  public String name(String id) {
    return task(id).map(Task::what).orElse(id);
  }
}

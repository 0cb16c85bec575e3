package kitwright.network;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
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
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Task;
import kitwright.value.Ref;

/**
 * The tasks of a ledger as a network, seen from one day: worked out once and shared by whoever asks
 * when something is needed. Withdrawn tasks are left out, and the links to them.
 */
public final class Plan {
  private static final Facts.Fact<Plan> FACT = new Work();

  private final Ledger ledger;
  private final LocalDate today;
  private final WorkTime time;
  private final Map<String, Task> tasks;
  private final Schedule schedule;

  private Plan(
      Ledger ledger, LocalDate today, WorkTime time, Map<String, Task> tasks, Schedule schedule) {
    this.ledger = ledger;
    this.today = today;
    this.time = time;
    this.tasks = tasks;
    this.schedule = schedule;
  }

  /** The plan on the morning of the day, by what is recorded up to that day. */
  public static Plan on(Facts day) {
    return FACT.on(day);
  }

  private static final class Work extends Facts.Fact<Plan> {
    @Override
    protected Plan work(Facts day) {
      return of(day.ledger(), day.day());
    }
  }

  /** The plan on the morning of a day, by what is recorded up to that day. */
  public static Plan of(Ledger ledger, LocalDate today) {
    WorkTime time = WorkTime.of(ledger.build());
    Headways headways = new Headways(ledger, today);
    Map<String, Task> tasks = new LinkedHashMap<>();
    ledger.tasks().stream()
        .filter(task -> !isWithdrawn(task, today))
        .forEach(task -> tasks.putIfAbsent(task.id(), task));
    List<Activity> activities =
        tasks.values().stream().map(task -> activity(task, time, headways)).toList();
    Network network = Network.of(activities, links(tasks.values(), ledger, today, time));
    return new Plan(ledger, today, time, tasks, Schedule.of(network, time.calendar(), today));
  }

  static boolean isWithdrawn(Task task, LocalDate today) {
    return task.withdrawn().filter(day -> !day.isAfter(today)).isPresent();
  }

  private static Activity activity(Task task, WorkTime time, Headways headways) {
    return new Activity(
        task.id(),
        task.what(),
        time.estimate(task.takes()),
        task.cure().map(WorkTime::elapsed).orElse(Duration.ZERO),
        headways.of(task),
        Optional.empty());
  }

  private static List<Link> links(
      Collection<Task> tasks, Ledger ledger, LocalDate today, WorkTime time) {
    return tasks.stream()
        .flatMap(
            task ->
                task.after().stream()
                    .filter(
                        link ->
                            ledger
                                .task(link.task())
                                .filter(before -> isWithdrawn(before, today))
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
    return Schedule.of(changed, time.calendar(), today);
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

  /** The same. */
  public Optional<Planned> planned(Ref task) {
    return planned(task.id());
  }

  /** The first day on which an open task can be worked at: a working day, today or later. */
  public LocalDate workableOn(String id) {
    LocalDate start = schedule.of(id).earliestStart().toLocalDate();
    return calendar().plusWorkingDays(start.isBefore(today) ? today : start, 0);
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

  /** Whether everything it waits for is finished and cured by the morning of the day. */
  public boolean isFree(String id) {
    LocalDateTime closing = WorkCalendar.moment(calendar().closing(today));
    return network().waitsFor(id).stream()
        .map(schedule::of)
        .allMatch(before -> before.activity().isDone() && before.ready().isBefore(closing));
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

  /** The tasks still ahead, by earliest start, then by id. */
  public List<Planned> ahead() {
    return schedule.all().stream()
        .filter(planned -> !planned.activity().isDone())
        .sorted(
            Comparator.comparing(Planned::earliestStart)
                .thenComparing(Planned::earliestFinish)
                .thenComparing(Planned::id))
        .toList();
  }

  /** What a task is called; its id where there is no such task. */
  public String name(String id) {
    return task(id).map(Task::what).orElse(id);
  }
}

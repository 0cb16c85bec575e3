package kitwright.network;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.ledger.Build;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.LogDay;
import kitwright.ledger.Task;
import kitwright.value.Place;
import kitwright.value.Ref;

/**
 * How far each task has come by the evening of a day. Everybody who wants to know asks here: the
 * plan, earned value, the week, the signatures that hold a task, the tools it needs.
 *
 * <p>The day a task was finished counts first, unless a later day of the log says that something is
 * left. Then the log, whose entries have days: the latest one up to the evening. The share written
 * in the task itself has no day, so it counts only where the log never names the task. What reached
 * 100 % is finished, on the day on which the log said so first, or, where no day was written, on
 * the last day known of the task.
 */
public final class Headways {
  private static final Facts.Fact<Headways> FACT = day -> of(day.ledger(), day.day());

  /**
   * What the log says of a task.
   *
   * @param first the first day that names it
   * @param at where that day names it
   * @param last the latest day that names it
   * @param share what the latest day says
   * @param whole since when every day has said all of it
   */
  record Logged(
      LocalDate first, Place at, LocalDate last, BigDecimal share, Optional<LocalDate> whole) {
    static Logged first(LocalDate day, Place at, BigDecimal share) {
      return new Logged(day, at, day, share, whole(day, share, Optional.empty()));
    }

    Logged then(LocalDate day, BigDecimal share) {
      return new Logged(first, at, day, share, whole(day, share, whole));
    }

    /** Whether a day later than that says that something is left. */
    boolean leavesAfter(LocalDate day) {
      return last.isAfter(day) && !isAll(share);
    }

    private static Optional<LocalDate> whole(
        LocalDate day, BigDecimal share, Optional<LocalDate> since) {
      return isAll(share) ? since.or(() -> Optional.of(day)) : Optional.empty();
    }
  }

  /**
   * The first sign of work on a task.
   *
   * @param on empty where the task tells progress but no day
   */
  public record Beginning(Optional<LocalDate> on, Place at) {}

  private final Ledger ledger;
  private final LocalDate evening;
  private final Map<String, Logged> logged = new HashMap<>();

  /** Tasks that the log names only later: what they say of themselves is of that later day. */
  private final Map<String, LocalDate> later = new HashMap<>();

  private Headways(Ledger ledger, List<LogDay> log, LocalDate evening) {
    this.ledger = ledger;
    this.evening = evening;
    log.forEach(this::note); // by date
  }

  private void note(LogDay log) {
    log.tasks()
        .forEach(
            (task, share) -> {
              if (log.day().isAfter(evening)) {
                later.putIfAbsent(task.id(), log.day());
              } else {
                Logged before = logged.get(task.id());
                logged.put(
                    task.id(),
                    before == null
                        ? Logged.first(log.day(), task.at(), share)
                        : before.then(log.day(), share));
              }
            });
  }

  /** How far all tasks are on the evening of the facts' day. */
  public static Headways on(Facts day) {
    return FACT.on(day);
  }

  /** How far all tasks are on the evening of a day. */
  public static Headways of(Ledger ledger, LocalDate evening) {
    return of(ledger, ledger.log(), evening);
  }

  /**
   * The same, by some days of the log alone.
   *
   * @param log by date
   */
  public static Headways of(Ledger ledger, List<LogDay> log, LocalDate evening) {
    return new Headways(ledger, log, evening);
  }

  /** Whether that day itself is written up, so that its work is behind us. */
  public boolean isDayWrittenUp() {
    return ledger.log().stream().anyMatch(log -> log.day().equals(evening));
  }

  /** How far a task has come. */
  public Headway of(Task task) {
    Optional<LocalDate> begun = begun(task);
    Optional<LocalDate> end = finished(task);
    if (end.isPresent()) {
      return new Headway.Done(
          begun.filter(day -> !day.isAfter(end.get())).orElse(end.get()), end.get());
    }
    BigDecimal share = said(task);
    return begun
        .or(() -> Optional.of(evening).filter(day -> share.signum() > 0))
        .<Headway>map(day -> new Headway.Begun(day, share.doubleValue()))
        .orElse(Headway.WAITING);
  }

  /** The share done, 0 to 1. */
  public BigDecimal share(Task task) {
    return finished(task).isPresent() ? BigDecimal.ONE : said(task);
  }

  /** The first day known on which it was worked at. */
  public Optional<LocalDate> begun(Task task) {
    return Stream.of(past(task.started()), log(task).map(Logged::first), past(task.finished()))
        .flatMap(Optional::stream)
        .min(LocalDate::compareTo);
  }

  /** Whether a task has ended, by its record or the log. */
  public boolean hasEnded(Task task) {
    return finished(task).isPresent();
  }

  /** The same, by its name; of one that has no record, by the log. */
  public boolean hasEnded(Ref ref) {
    return ledger
        .task(ref)
        .map(this::hasEnded)
        .orElse(Optional.ofNullable(logged.get(ref.id())).flatMap(Logged::whole).isPresent());
  }

  /** The first sign of work on a task, and where it stands; empty where there is none. */
  public Optional<Beginning> beginning(Ref ref) {
    Optional<Beginning> inTask = ledger.task(ref).flatMap(this::recorded);
    Optional<Logged> log = Optional.ofNullable(logged.get(ref.id()));
    Optional<Beginning> inLog =
        log.map(each -> new Beginning(Optional.of(each.first()), each.at()));
    boolean logFirst =
        log.isPresent()
            && inTask
                .flatMap(Beginning::on)
                .filter(day -> !log.get().first().isBefore(day))
                .isEmpty();
    return logFirst ? inLog : inTask;
  }

  private Optional<Beginning> recorded(Task task) {
    Optional<LocalDate> started = past(task.started());
    Optional<LocalDate> finished = past(task.finished());
    if (started.isPresent() && finished.filter(day -> day.isBefore(started.get())).isEmpty()) {
      return Optional.of(new Beginning(started, task.at().of("started")));
    }
    if (finished.isPresent()) {
      return Optional.of(new Beginning(finished, task.at().of("finished")));
    }
    return Optional.of(new Beginning(Optional.empty(), task.at().of("progress")))
        .filter(any -> said(task).signum() > 0 && log(task).isEmpty());
  }

  /** What the log says of a task up to that evening. */
  Optional<Logged> log(Task task) {
    return Optional.ofNullable(logged.get(task.id()));
  }

  /** The share that stands in the task itself, where it is of this evening and counts. */
  Optional<BigDecimal> undated(Task task) {
    boolean counts =
        log(task).isEmpty()
            && !later.containsKey(task.id())
            && task.started().filter(evening::isBefore).isEmpty()
            && task.finished().filter(evening::isBefore).isEmpty();
    return counts ? task.progress() : Optional.empty();
  }

  private BigDecimal said(Task task) {
    return log(task).map(Logged::share).or(() -> undated(task)).orElse(BigDecimal.ZERO);
  }

  /**
   * One that ended before it began is not done by that: one of its days is wrong. Nor is one of
   * which the log of a later day says that something is left.
   */
  private Optional<LocalDate> finished(Task task) {
    return past(task.finished())
        .filter(day -> task.started().filter(day::isBefore).isEmpty())
        .filter(day -> log(task).filter(log -> log.leavesAfter(day)).isEmpty())
        .or(() -> log(task).flatMap(Logged::whole))
        .or(() -> undated(task).filter(Headways::isAll).map(all -> lastKnown(task)));
  }

  /**
   * The last day known of a task that is done, nobody has written when: it began on a day and takes
   * its time. Where not even that day is known, it is this evening.
   */
  LocalDate lastKnown(Task task) {
    Optional<LocalDate> ends = past(task.started()).map(day -> end(task, day));
    return ends.filter(day -> !day.isAfter(evening)).orElse(evening);
  }

  private LocalDate end(Task task, LocalDate started) {
    Build build = ledger.build();
    WorkTime time = WorkTime.of(build);
    long minutes = time.estimate(task.takes()).expected();
    return time.calendar()
        .add(time.calendar().openingOf(started), Duration.ofMinutes(minutes))
        .minusMinutes(minutes == 0 ? 0 : 1)
        .toLocalDate();
  }

  private Optional<LocalDate> past(Optional<LocalDate> day) {
    return day.filter(on -> !on.isAfter(evening));
  }

  static boolean isAll(BigDecimal share) {
    return share.compareTo(BigDecimal.ONE) >= 0;
  }
}

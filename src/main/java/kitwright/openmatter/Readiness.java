package kitwright.openmatter;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Party;
import kitwright.ledger.Substitution;
import kitwright.ledger.Task;
import kitwright.loan.AtHand;
import kitwright.network.Crates;
import kitwright.network.Plan;
import kitwright.network.Planned;
import kitwright.network.Wait;
import kitwright.network.WeatherBound;
import kitwright.network.Weathered;
import kitwright.shortage.LookAhead;
import kitwright.shortage.Wanted;
import kitwright.substitution.Release;
import kitwright.value.Days;

/**
 * Whether a task may start, or go on, on the plan's morning, and what it lacks. Whoever tells that
 * asks here: everything before it finished and cured, the crate it unpacks come, material counted
 * and at hand, every signature that holds it standing today, tools here, people known, weather in
 * sight. What cannot be told is lacking.
 *
 * @param from the first day on which it could go on by the order of work, its crate, its people and
 *     the weather as far as it is known, whatever else it lacks
 * @param to the day on which its work would be finished then
 * @param lacks what stands in the way; empty where it may start
 * @param people to ask, by name; whether they have time nobody but they can say
 */
public record Readiness(
    Task task, LocalDate from, LocalDate to, List<Lack> lacks, List<String> people) {
  /** What a task can lack, in the order in which it is told. */
  public enum Kind {
    WORK,
    CRATE,
    MATERIAL,
    SIGNATURE,
    TOOL,
    PERSON,
    WEATHER
  }

  /** Something that stands in the way, as a clause. */
  public record Lack(Kind kind, String words) {}

  public Readiness {
    lacks = List.copyOf(lacks);
    people = List.copyOf(people);
  }

  /** How an open task stands. */
  public static Readiness of(Task task, Facts now) {
    Optional<WeatherBound> weather = WeatherBound.of(task, now);
    LocalDate from = from(task, now);
    List<Lack> lacks =
        Stream.of(
                clauses(Kind.WORK, work(task, now)),
                clauses(Kind.CRATE, Crates.awaited(task, now).stream()),
                clauses(Kind.MATERIAL, material(task, now)),
                clauses(Kind.SIGNATURE, signatures(task, now)),
                clauses(Kind.TOOL, AtHand.lacking(task, now).stream().map(t -> t + " not here")),
                clauses(Kind.TOOL, goneBy(from, task, now)),
                clauses(Kind.PERSON, unknown(task, now)),
                clauses(Kind.PERSON, Away.of(task, now).stream().map(Away::words)),
                clauses(Kind.WEATHER, weather.stream().flatMap(w -> weather(w, now).stream())))
            .flatMap(Function.identity())
            .toList();
    return new Readiness(task, from, to(from, task, now), lacks, people(task, now));
  }

  /** A task's dates with the weather in sight, its own and that of what comes before. */
  private static Planned planned(Task task, Facts now) {
    return Weathered.on(now).schedule().of(task.id());
  }

  private static LocalDate from(Task task, Facts now) {
    return Weathered.on(now).workableOn(task.id(), now);
  }

  private static LocalDate to(LocalDate from, Task task, Facts now) {
    LocalDate last = planned(task, now).lastDay();
    return last.isBefore(from) ? from : last;
  }

  /** The day on which it is finished, the weather in sight and its own people’s days reckoned. */
  public static LocalDate finish(Task task, Facts now) {
    return to(from(task, now), task, now);
  }

  private static Stream<Lack> clauses(Kind kind, Stream<String> words) {
    return words.map(each -> new Lack(kind, each));
  }

  /** The open tasks that may start or go on, those with least float first. */
  public static List<Readiness> ready(Facts now) {
    Plan plan = Plan.on(now);
    List<Readiness> ready = new ArrayList<>();
    for (Planned planned : plan.ahead()) {
      if (!plan.workableOn(planned.id()).isAfter(plan.nextWorkingDay())) {
        plan.task(planned.id())
            .map(task -> of(task, now))
            .filter(Readiness::isReady)
            .ifPresent(ready::add);
      }
    }
    ready.sort(
        Comparator.comparing((Readiness each) -> plan.schedule().of(each.task().id()).total()));
    return ready;
  }

  /** The indoor ones among them. */
  public static List<Readiness> indoors(Facts now) {
    return ready(now).stream()
        .filter(
            each -> each.task().place().filter(where -> where == Task.Where.INDOORS).isPresent())
        .toList();
  }

  /** The tools that are here when it goes on and shall be back before it can be finished. */
  public List<AtHand.Back> dueWhileAtWork(Facts now) {
    return AtHand.backBefore(to, task, now).stream()
        .filter(back -> lacks.stream().noneMatch(lack -> lack.words().equals(back.words())))
        .toList();
  }

  public boolean isReady() {
    return lacks.isEmpty();
  }

  /** Whether it lacks nothing but what is of one kind, and lacks that. */
  public boolean lacksOnly(Kind kind) {
    return !lacks.isEmpty() && lacks.stream().allMatch(lack -> lack.kind() == kind);
  }

  private static Stream<String> work(Task task, Facts now) {
    return Plan.on(now).waits(task).stream().map(wait -> words(wait, now));
  }

  private static String words(Wait wait, Facts now) {
    String before = "“" + Plan.on(now).name(wait.before()) + "”";
    return switch (wait.kind()) {
      case UNFINISHED -> before + " comes before";
      case CURING ->
          "the wait after " + before + " lasts until " + Days.named(wait.until().orElseThrow());
      case RING -> "it waits for itself by way of other tasks";
      case UNKNOWN ->
          "it waits for “"
              + wait.before()
              + "”, and "
              + now.ledger().noneHasIt(kitwright.ledger.Kind.TASKS, wait.before());
    };
  }

  private static Stream<String> material(Task task, Facts now) {
    LookAhead ahead = LookAhead.on(now);
    return Stream.concat(
        wanting(task, ahead),
        ahead.unreckoned(task).stream().map(unknown -> "it is not known " + unknown));
  }

  private static Stream<String> wanting(Task task, LookAhead ahead) {
    return ahead.ofTask(task.id()).stream()
        .filter(
            wanted ->
                !wanted.missing().isNone()
                    || !wanted.toCome().isEmpty()
                    || !wanted.uncounted().isNone())
        .map(Readiness::material);
  }

  private static String material(Wanted wanted) {
    if (!wanted.missing().isNone()) {
      return wanted.thing().so(wanted.missing());
    }
    return wanted.thing().what() + (wanted.toCome().isEmpty() ? " not counted" : " still to come");
  }

  /** What is here now and shall be back with its lender before the work can go on. */
  private static Stream<String> goneBy(LocalDate from, Task task, Facts now) {
    return from.isAfter(Plan.on(now).nextWorkingDay())
        ? AtHand.backBefore(from, task, now).stream().map(AtHand.Back::words)
        : Stream.empty();
  }

  private static Stream<String> signatures(Task task, Facts now) {
    Release release = Release.on(now);
    return Stream.concat(
        release.holding(task).stream()
            .map(standing -> signature(standing.substitution(), task, now.ledger())),
        release.unread(task).stream().map(each -> each.named() + ", which cannot be read"));
  }

  private static String signature(Substitution substitution, Task task, Ledger ledger) {
    return "signature for "
        + substitution.id()
        + substitution
            .hold()
            .filter(held -> !held.id().equals(task.id()))
            .map(
                held ->
                    ", which may hold it: " + ledger.noSuch(kitwright.ledger.Kind.TASKS, held.id()))
            .orElse("");
  }

  private static Stream<String> unknown(Task task, Facts now) {
    return task.who().stream()
        .filter(who -> now.ledger().party(who).isEmpty())
        .map(who -> now.ledger().noSuch(kitwright.ledger.Kind.PARTIES, who.id()));
  }

  private static List<String> people(Task task, Facts now) {
    return task.who().stream()
        .flatMap(who -> now.ledger().party(who).stream())
        .filter(party -> party.role() != Party.Role.BUILDER)
        .map(Party::name)
        .toList();
  }

  /** What of the weather stands in the way; of days far ahead nobody can say anything yet. */
  private static Optional<String> weather(WeatherBound bound, Facts now) {
    if (bound.isFree()) {
      return Optional.empty();
    }
    if (bound.window().fits()) {
      return Optional.of("weather: none that fits before " + Days.named(bound.window().first()));
    }
    if (bound.isBeyondForecast()) {
      return Optional.of("weather: no forecast for its days")
          .filter(any -> !bound.from().isAfter(Plan.on(now).nextWorkingDay()));
    }
    return Optional.of("weather: none that fits in the forecast");
  }
}

package kitwright.openmatter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import kitwright.ledger.Facts;
import kitwright.ledger.Party;
import kitwright.ledger.Task;
import kitwright.network.Plan;
import kitwright.network.Planned;
import kitwright.network.Wait;
import kitwright.shortage.LookAhead;
import kitwright.shortage.Wanted;
import kitwright.substitution.Release;
import kitwright.value.Ref;

/**
 * Whether a task could go on today: everything before it finished and cured, material counted and
 * at hand, signatures given, tools here, people known.
 *
 * @param lacks what stands in the way, each a clause; empty where it is ready
 * @param people to ask, by name; whether they have time nobody but they can say
 */
public record Readiness(Task task, List<String> lacks, List<String> people) {
  public Readiness {
    lacks = List.copyOf(lacks);
    people = List.copyOf(people);
  }

  /** How a task stands. */
  public static Readiness of(Task task, Facts now) {
    List<String> lacks =
        Stream.of(
                forerunners(task, now),
                material(task, now),
                signatures(task, now),
                tools(task, now))
            .flatMap(Function.identity())
            .toList();
    List<String> people = new ArrayList<>();
    List<String> unknown = new ArrayList<>();
    for (Ref who : task.who()) {
      now.ledger()
          .party(who)
          .ifPresentOrElse(
              party -> {
                if (party.role() != Party.Role.BUILDER) {
                  people.add(party.name());
                }
              },
              () -> unknown.add("nobody knows “" + who.id() + "”"));
    }
    return new Readiness(task, Stream.concat(lacks.stream(), unknown.stream()).toList(), people);
  }

  /** The open indoor tasks that could go on today, those with least float first. */
  public static List<Readiness> indoors(Facts now) {
    return Plan.on(now).ahead().stream()
        .sorted(Comparator.comparing(Planned::total))
        .flatMap(planned -> Plan.on(now).task(planned.id()).stream())
        .filter(task -> task.place().filter(where -> where == Task.Where.INDOORS).isPresent())
        .map(task -> of(task, now))
        .filter(Readiness::isReady)
        .toList();
  }

  public boolean isReady() {
    return lacks.isEmpty();
  }

  private static Stream<String> forerunners(Task task, Facts now) {
    return Plan.on(now).waits(task).stream().map(wait -> words(wait, now));
  }

  private static String words(Wait wait, Facts now) {
    String before = "“" + Plan.on(now).name(wait.before()) + "”";
    return switch (wait.kind()) {
      case UNFINISHED -> before + " comes before";
      case CURING -> "the wait after " + before + " lasts until " + wait.until().orElseThrow();
      case RING -> "it waits for itself by way of other tasks";
      case UNKNOWN -> "it waits for “" + wait.before() + "”, and no task has that id";
    };
  }

  private static Stream<String> material(Task task, Facts now) {
    return LookAhead.on(now).ofTask(task.id()).stream()
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

  private static Stream<String> signatures(Task task, Facts now) {
    return Release.on(now).holding(task).stream()
        .map(standing -> "signature for " + standing.substitution().id());
  }

  private static Stream<String> tools(Task task, Facts now) {
    return task.tools().stream()
        .filter(
            tool ->
                kitwright.loan.Standing.on(now).stream()
                    .noneMatch(loan -> loan.loan().id().equals(tool.id()) && !loan.isBack()))
        .map(
            tool ->
                now.ledger().loan(tool).map(loan -> loan.tool()).orElse(tool.id()) + " not here");
  }

  /** The lacks as one clause. */
  public String because() {
    return String.join("; ", lacks);
  }
}

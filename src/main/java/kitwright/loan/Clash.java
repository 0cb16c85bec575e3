package kitwright.loan;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import kitwright.ledger.Facts;
import kitwright.network.Plan;
import kitwright.network.Planned;

/**
 * Open tasks that the order of work lets go on at the same time though they need the same borrowed
 * tool, and fewer of it are here.
 *
 * @param tasks by id, in the order in which they can go on
 * @param from the day on which the last of them could
 * @param here how many of the tool are here
 */
public record Clash(String tool, List<String> tasks, LocalDate from, int here) {
  private static final Facts.Fact<List<Clash>> FACT = Clash::work;

  public Clash {
    tasks = List.copyOf(tasks);
  }

  /** All of them by the plan of the day, tool by tool, none within another. */
  public static List<Clash> on(Facts day) {
    return FACT.on(day);
  }

  private static List<Clash> work(Facts day) {
    List<Clash> all = new ArrayList<>();
    users(day)
        .forEach(
            (tool, users) -> {
              int here = AtHand.here(tool, day).size();
              if (here > 0 && users.size() > here) {
                clashes(tool, users, here).forEach(clash -> add(clash, all));
              }
            });
    return List.copyOf(all);
  }

  private static Map<String, List<Span>> users(Facts day) {
    Plan plan = Plan.on(day);
    Map<String, List<Span>> users = new LinkedHashMap<>();
    for (Planned planned : plan.ahead()) {
      Span span = Span.of(planned, plan);
      if (span.from().isBefore(span.to())) {
        plan.task(planned.id()).stream()
            .flatMap(task -> AtHand.tools(task, day))
            .forEach(tool -> users.computeIfAbsent(tool, any -> new ArrayList<>()).add(span));
      }
    }
    return users;
  }

  /** Over which time the work of a task goes. */
  private record Span(String task, LocalDateTime from, LocalDateTime to) {
    static Span of(Planned planned, Plan plan) {
      LocalDateTime opens = plan.calendar().openingOf(plan.workableOn(planned.id()));
      LocalDateTime from = planned.goesOn().isBefore(opens) ? opens : planned.goesOn();
      return new Span(planned.id(), from, planned.earliestFinish());
    }

    boolean goesOnAt(LocalDateTime moment) {
      return !from.isAfter(moment) && to.isAfter(moment);
    }
  }

  private static List<Clash> clashes(String tool, List<Span> users, int here) {
    return users.stream()
        .map(Span::from)
        .sorted()
        .distinct() // what begins together is found once
        .map(moment -> users.stream().filter(each -> each.goesOnAt(moment)).toList())
        .filter(together -> together.size() > here)
        .map(together -> of(tool, together, here))
        .toList();
  }

  private static Clash of(String tool, List<Span> together, int here) {
    LocalDateTime from =
        together.stream().map(Span::from).max(Comparator.naturalOrder()).orElseThrow();
    return new Clash(tool, together.stream().map(Span::task).toList(), from.toLocalDate(), here);
  }

  private static void add(Clash clash, List<Clash> all) {
    boolean known =
        all.stream()
            .anyMatch(each -> each.tool.equals(clash.tool) && each.tasks.containsAll(clash.tasks));
    if (!known) {
      all.add(clash);
    }
  }

  /** The tasks and what they need, as a sentence without its full stop. */
  public String words(Facts day) {
    return named(day)
        + (tasks.size() == 2 ? " both need the " : " all need the ")
        + tool
        + " at the same time, and "
        + (here == 1 ? "one is" : here + " are")
        + " here";
  }

  private String named(Facts day) {
    List<String> names = tasks.stream().map(id -> "“" + Plan.on(day).name(id) + "”").toList();
    int last = names.size() - 1;
    return names.subList(0, last).stream().collect(Collectors.joining(", "))
        + " and "
        + names.get(last);
  }
}

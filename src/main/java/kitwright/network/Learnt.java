package kitwright.network;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitwright.ledger.Facts;
import kitwright.ledger.LogDay;
import kitwright.ledger.Task;
import kitwright.value.Ref;

/**
 * What the finished tasks of a phase took, against what was thought likely: offered for the
 * estimates of the rest, never used by itself. A day of the log counts with the hours of whoever
 * worked longest, shared equally among the tasks that it names.
 *
 * @param tasks how many were finished and logged
 * @param low the least ratio of hours taken to hours thought
 * @param likely the middle one
 * @param high the greatest
 */
public record Learnt(String phase, int tasks, double low, double likely, double high) {
  /** Fewer tell nothing. */
  private static final int LEAST = 3;

  /** Each phase of which enough is finished and something is still ahead, in the tasks' order. */
  public static List<Learnt> of(Facts day) {
    Plan plan = Plan.on(day);
    Map<String, Double> taken = taken(day);
    Map<String, List<Double>> ratios = new LinkedHashMap<>();
    for (Task task : plan.tasks()) {
      double thought = plan.time().estimate(task.takes()).likely() / 60.0;
      Double hours = taken.get(task.id());
      if (!plan.isOpen(task.id()) && task.phase().isPresent() && hours != null && thought > 0) {
        ratios.computeIfAbsent(task.phase().get(), any -> new ArrayList<>()).add(hours / thought);
      }
    }
    List<Learnt> all = new ArrayList<>();
    ratios.forEach(
        (phase, each) -> {
          if (each.size() >= LEAST && isAhead(phase, plan)) {
            List<Double> sorted = each.stream().sorted().toList();
            int last = sorted.size() - 1;
            double middle = (sorted.get(last / 2) + sorted.get((last + 1) / 2)) / 2;
            all.add(new Learnt(phase, each.size(), sorted.get(0), middle, sorted.get(last)));
          }
        });
    return all;
  }

  private static boolean isAhead(String phase, Plan plan) {
    return plan.tasks().stream()
        .anyMatch(task -> task.phase().filter(phase::equals).isPresent() && plan.isOpen(task.id()));
  }

  /** Hours by task, as the log tells up to the day. */
  private static Map<String, Double> taken(Facts day) {
    Map<String, Double> taken = new HashMap<>();
    for (LogDay log : day.ledger().log()) {
      double longest =
          log.hours().values().stream().mapToDouble(hours -> hours.doubleValue()).max().orElse(0);
      for (Ref task : log.tasks().keySet()) {
        taken.merge(task.id(), longest / log.tasks().size(), Double::sum);
      }
    }
    taken.values().removeIf(hours -> hours == 0);
    return taken;
  }
}

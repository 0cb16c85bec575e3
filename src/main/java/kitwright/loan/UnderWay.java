package kitwright.loan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kitwright.ledger.Facts;
import kitwright.ledger.Task;
import kitwright.network.Plan;

/** Which tasks are begun and not finished, and which need a tool. */
final class UnderWay {
  private final Plan plan;
  private final Map<String, List<String>> usersOfTool = new HashMap<>();

  UnderWay(Facts day) {
    this.plan = Plan.on(day);
    for (Task task : plan.tasks()) {
      task.tools()
          .forEach(
              tool ->
                  usersOfTool.computeIfAbsent(tool.id(), id -> new ArrayList<>()).add(task.id()));
    }
  }

  /** The tasks that name a tool. */
  List<String> usersOf(String tool) {
    return usersOfTool.getOrDefault(tool, List.of());
  }

  /** Begun and not finished or given up. */
  boolean isUnderWay(Task task) {
    return plan.isOpen(task.id()) && plan.isBegun(task.id());
  }
}

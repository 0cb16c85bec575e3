package kitwright.network;

import java.util.List;
import java.util.stream.Collectors;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Task;
import kitwright.value.Place;

/** Fires where tasks wait for each other in a ring. */
public final class TaskCycle implements Rule {
  /** A ring of more tasks is told by its beginning and its end. */
  private static final int MOST = 8;

  @Override
  public void examine(Facts day, Findings out) {
    Plan plan = Plan.on(day);
    plan.network().faults().stream()
        .filter(fault -> fault.kind() == NetworkFault.Kind.LOOP)
        .forEach(fault -> out.add(finding(fault.ids(), plan)));
  }

  private Finding finding(List<String> loop, Plan plan) {
    String first = loop.get(0);
    String ring =
        loop.size() <= MOST
            ? told(loop, plan) + " → " + quoted(first, plan)
            : told(loop.subList(0, MOST - 1), plan)
                + " → … "
                + (loop.size() - MOST)
                + " more … → "
                + quoted(loop.get(loop.size() - 1), plan)
                + " → "
                + quoted(first, plan);
    return stop(
        closing(first, loop.get(loop.size() - 1), plan),
        "Each of these tasks waits for the one before it, round and round: " + ring + ".",
        "None of them can ever begin; dates are worked out as if this link were not there.",
        "Take out the link that is not true: look which of them can really be done first.",
        loop.stream().limit(MOST).map(id -> "task " + id).toList());
  }

  private static String told(List<String> ids, Plan plan) {
    return ids.stream().map(id -> quoted(id, plan)).collect(Collectors.joining(" → "));
  }

  private static String quoted(String id, Plan plan) {
    return "“" + plan.name(id) + "”";
  }

  /** Where the first task of the ring says that it waits for the last. */
  private static Place closing(String first, String last, Plan plan) {
    Task task = plan.task(first).orElseThrow();
    return task.after().stream()
        .filter(link -> link.task().id().equals(last))
        .map(link -> link.task().at())
        .findFirst()
        .orElse(task.at().record());
  }
}

package kitwright.loan;

import java.util.List;
import java.util.stream.Stream;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Task;
import kitwright.network.Plan;
import kitwright.value.Days;
import kitwright.value.Place;

/** Fires where the plan uses a borrowed tool in more places at once than there are of it. */
public final class ToolWantedTwice implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    Clash.on(day).forEach(clash -> out.add(finding(clash, day)));
  }

  private Finding finding(Clash clash, Facts day) {
    List<Task> tasks =
        clash.tasks().stream().flatMap(id -> Plan.on(day).task(id).stream()).toList();
    return note(
        place(tasks.get(tasks.size() - 1)),
        clash.words(day) + ", by the order of work from " + Days.named(clash.from()) + " on.",
        "They cannot go on side by side as the plan has it: what comes last ends later than it"
            + " says.",
        "Put them in order with “after:”, borrow another, or take the tool out of what can do"
            + " without.",
        Stream.concat(
                tasks.stream().map(Entry::named),
                AtHand.here(clash.tool(), day).stream().map(Entry::named))
            .toList());
  }

  private static Place place(Task task) {
    return task.tools().isEmpty() ? task.at().record() : task.at().of("tools");
  }
}

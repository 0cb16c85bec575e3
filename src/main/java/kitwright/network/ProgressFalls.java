package kitwright.network;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.LogDay;
import kitwright.ledger.Rule;
import kitwright.value.Days;
import kitwright.value.Ref;

/** Fires where a day of the log says that less of a task is done than a day before it said. */
public final class ProgressFalls implements Rule {

  private record Said(LogDay log, BigDecimal share) {}

  @Override
  public void examine(Facts day, Findings out) {
    Map<String, Said> before = new HashMap<>();
    for (LogDay log : day.ledger().log()) {
      log.tasks()
          .forEach(
              (task, share) -> {
                Said last = before.put(task.id(), new Said(log, share));
                if (last != null && share.compareTo(last.share()) < 0) {
                  out.add(finding(task, new Said(log, share), last, day));
                }
              });
    }
  }

  private Finding finding(Ref task, Said now, Said last, Facts day) {
    return note(
        task.at(),
        "“"
            + Plan.on(day).name(task.id())
            + "” is "
            + ProgressImpossible.percent(now.share())
            + " done by the log of "
            + Days.named(now.log().day())
            + ", and was "
            + ProgressImpossible.percent(last.share())
            + " by that of "
            + Days.named(last.log().day())
            + ".",
        "The later day counts: plan, money and week go by it.",
        "Correct whichever is wrong; if work was undone, say so in the log, and nothing is to be"
            + " done.",
        List.of(now.log().named(), last.log().named(), "task " + task.id()));
  }
}

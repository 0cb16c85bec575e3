package kitwright.network;

import java.math.BigDecimal;
import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;
import kitwright.ledger.LogDay;
import kitwright.ledger.Rule;
import kitwright.ledger.Task;
import kitwright.value.Decimal;
import kitwright.value.Place;

/** Fires where a record says that more than all of a task is done. */
public final class ProgressImpossible implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    for (Task task : day.written().tasks()) {
      task.progress()
          .filter(ProgressImpossible::isTooMuch)
          .ifPresent(
              share ->
                  out.add(finding("The task", task.what(), share, task.at().of("progress"), task)));
    }
    for (LogDay log : day.written().log()) {
      log.tasks()
          .forEach(
              (task, share) -> {
                if (isTooMuch(share)) {
                  String what = day.written().task(task).map(Task::what).orElse(task.id());
                  out.add(finding("The log of " + log.day(), what, share, task.at(), log));
                }
              });
    }
  }

  private static boolean isTooMuch(BigDecimal share) {
    return share.compareTo(BigDecimal.ONE) > 0;
  }

  private Finding finding(String who, String what, BigDecimal share, Place at, Entry record) {
    return stop(
        at,
        who + " says that “" + what + "” is " + percent(share) + " done.",
        "More than all of it cannot be done; the task counts as finished.",
        "Write the share done with its %, at most 100 %. More work than planned belongs in"
            + " “takes”.",
        List.of(record.named()));
  }

  static String percent(BigDecimal share) {
    return Decimal.print(share.movePointRight(2)) + " %";
  }
}

package kitwright.network;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Task;
import kitwright.value.Place;
import kitwright.value.Quantity;
import kitwright.value.Unit;

/** Fires where work, a lag or a wait is so long that it must be a slip. */
public final class DurationBeyondReason implements Rule {
  /** Working years: no single task of a boat takes longer. */
  private static final int YEARS = 5;

  private static final long CLOCK_MINUTES = YEARS * 365L * WorkCalendar.CLOCK_DAY;

  @Override
  public void examine(Facts day, Findings out) {
    WorkTime time = WorkTime.of(day.written().build());
    long most = time.minutes(new Quantity(BigDecimal.valueOf(YEARS * 52L), Unit.WEEK));
    for (Task task : day.written().tasks()) {
      if (time.minutes(task.takes().high()) > most) {
        out.add(finding(task, task.at().of("takes"), "takes", task.takes().high()));
      }
      Optional<Quantity> wait =
          task.cure().filter(cure -> WorkTime.elapsed(cure).toMinutes() > CLOCK_MINUTES);
      wait.ifPresent(cure -> out.add(finding(task, task.at().of("wait"), "asks to wait", cure)));
      task.after()
          .forEach(
              link ->
                  link.lag()
                      .filter(lag -> time.minutes(lag) > most)
                      .ifPresent(
                          lag ->
                              out.add(finding(task, link.at().of("lag"), "asks a lag of", lag))));
    }
  }

  private Finding finding(Task task, Place at, String does, Quantity time) {
    return stop(
        at,
        "“" + task.what() + "” " + does + " " + time + ", more than " + YEARS + " years.",
        "Every date behind it lies beyond any plan.",
        "Write the true time with its unit: min, h, d or w.",
        List.of(task.named()));
  }
}

package kitwright.shortage;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.value.Days;

/** Fires where the day for which a missing part was promised has passed and it is still missing. */
public final class PromiseOverdue implements Rule {
  @Override
  public String name() {
    return "promise-overdue";
  }

  @Override
  public void examine(Facts day, Findings out) {
    for (Standing standing : Standings.on(day).open()) {
      standing
          .promisedFor()
          .filter(day.day()::isAfter)
          .ifPresent(promised -> out.add(finding(standing, promised, day.day())));
    }
  }

  private Finding finding(Standing standing, LocalDate day, LocalDate today) {
    long late = ChronoUnit.DAYS.between(day, today);
    return new Finding(
        name(),
        Severity.WARN,
        standing.shortage().at().record(),
        "Promised for "
            + day
            + ", "
            + Days.told(late)
            + " ago, and still missing: "
            + standing.open().told(standing.shortage().item().id())
            + ".",
        "Work that waits for it waits without knowing how long.",
        "Ask again and record the answer; if it has come, count the delivery.",
        List.of(standing.shortage().named()));
  }
}

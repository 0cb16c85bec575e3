package kitwright.shortage;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;
import kitwright.value.Days;

/** Fires where the day for which a missing part was promised has passed and it is still missing. */
public final class PromiseOverdue implements Rule {
  private final Standings shortages;

  public PromiseOverdue(Standings shortages) {
    this.shortages = shortages;
  }

  @Override
  public String name() {
    return "promise-overdue";
  }

  @Override
  public void examine(Ledger ledger, LocalDate today, Findings out) {
    for (Standing standing : shortages.open()) {
      standing
          .promisedFor()
          .filter(today::isAfter)
          .ifPresent(day -> out.add(finding(standing, day, today)));
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

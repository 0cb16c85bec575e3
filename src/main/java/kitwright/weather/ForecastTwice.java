package kitwright.weather;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Facts;
import kitwright.ledger.ForecastDay;
import kitwright.ledger.Rule;

/** Fires where the forecast holds two rows for one day. */
public final class ForecastTwice implements Rule {
  @Override
  public String name() {
    return "forecast-twice";
  }

  @Override
  public void examine(Facts day, Findings out) {
    Map<LocalDate, ForecastDay> seen = new HashMap<>();
    for (ForecastDay row : day.ledger().forecast()) {
      ForecastDay first = seen.putIfAbsent(row.day(), row);
      if (first != null) {
        out.add(finding(row, first));
      }
    }
  }

  private Finding finding(ForecastDay row, ForecastDay first) {
    boolean same = Outlook.sayTheSame(first, row);
    return new Finding(
        name(),
        Severity.WARN,
        row.at().of("day"),
        "The forecast has more than one row for "
            + row.day()
            + (same ? ", and they say the same." : ", and they do not say the same.")
            + " The first is at "
            + first.at().record()
            + ".",
        same
            ? "It counts once."
            : "Nobody knows which is the newer: the day counts as not foretold.",
        same ? "Take one of them out." : "Take out the older row.",
        List.of(row.named()));
  }
}

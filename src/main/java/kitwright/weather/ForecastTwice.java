package kitwright.weather;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
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
    Set<LocalDate> seen = new HashSet<>();
    day.ledger().forecast().stream()
        .filter(row -> !seen.add(row.day()))
        .forEach(row -> out.add(finding(row)));
  }

  private Finding finding(ForecastDay row) {
    return new Finding(
        name(),
        Severity.WARN,
        row.at().of("day"),
        "The forecast has more than one row for " + row.day() + ".",
        "The first one counts, even if this one is newer.",
        "Take out the older row.",
        List.of(row.named()));
  }
}

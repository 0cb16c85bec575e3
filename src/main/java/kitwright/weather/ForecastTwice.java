package kitwright.weather;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Build;
import kitwright.ledger.Facts;
import kitwright.ledger.ForecastDay;
import kitwright.ledger.Rule;
import kitwright.value.Days;

/** Fires where the forecast holds two rows for one day, or the climate two for one month. */
public final class ForecastTwice implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    Map<LocalDate, ForecastDay> seen = new HashMap<>();
    for (ForecastDay row : day.ledger().forecast()) {
      ForecastDay first = seen.putIfAbsent(row.day(), row);
      if (first != null) {
        out.add(finding(row, first));
      }
    }
    Map<Build.Month, Build.Climate> months = new EnumMap<>(Build.Month.class);
    for (Build.Climate row : day.ledger().build().climate()) {
      Build.Climate first = months.putIfAbsent(row.month(), row);
      if (first != null && first.fit().compareTo(row.fit()) != 0) {
        out.add(finding(row, first));
      }
    }
  }

  private Finding finding(Build.Climate row, Build.Climate first) {
    return warn(
        row.at().of("month"),
        "The climate has more than one row for "
            + Days.month(LocalDate.of(2026, row.month().ofYear(), 1))
            + ", and they do not say the same. The first is at "
            + first.at().record()
            + ".",
        "The worse of them counts.",
        "Take one of them out.",
        List.of("build"));
  }

  private Finding finding(ForecastDay row, ForecastDay first) {
    boolean same = Outlook.sayTheSame(first, row);
    return warn(
        row.at().of("day"),
        "The forecast has more than one row for "
            + Days.named(row.day())
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

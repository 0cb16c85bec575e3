package kitwright.weather;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.ForecastDay;
import kitwright.ledger.Rule;
import kitwright.value.Days;

/** Fires where a day is missing between two rows of the forecast. */
public final class ForecastGap implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    TreeMap<LocalDate, ForecastDay> rows = new TreeMap<>();
    day.ledger().forecast().forEach(row -> rows.putIfAbsent(row.day(), row));
    for (ForecastDay row : rows.tailMap(day.day()).values()) {
      LocalDate next = row.day().plusDays(1);
      Map.Entry<LocalDate, ForecastDay> found = rows.higherEntry(row.day());
      if (found != null && !found.getKey().equals(next)) {
        out.add(finding(found.getValue(), next, found.getKey().minusDays(1)));
      }
    }
  }

  private Finding finding(ForecastDay after, LocalDate first, LocalDate last) {
    boolean one = first.equals(last);
    return note(
        after.at().of("day"),
        "The forecast has nothing for " + new Days(first, last).named() + ".",
        "No window for glue, paint or outdoor work can be found across a day without forecast.",
        "Add a row for " + (one ? "that day." : "each of these days."),
        List.of(after.named()));
  }
}

package kitwright.report.week;

import java.util.Set;
import kitwright.daybook.Week;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.LogDay;
import kitwright.report.words.Sheet;

/** The document of a week, as matters stood on the evening of its last day. */
public final class WeekReport {
  private WeekReport() {}

  public static Sheet of(Ledger ledger, Week week, LogDay.Audience audience) {
    Facts evening = Facts.of(ledger, week.last());
    return switch (audience) {
      case CREW -> CrewWeek.of(week, evening).sheet(Set.of());
      case PUBLIC -> PublicWeek.of(week, evening).sheet();
    };
  }
}

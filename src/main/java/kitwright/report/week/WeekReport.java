package kitwright.report.week;

import java.util.Set;
import kitwright.daybook.Week;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.LogDay;
import kitwright.report.words.Say;
import kitwright.report.words.Sheet;

/** The week as a document: for the crew with everything, for the public without what is private. */
public final class WeekReport {
  private WeekReport() {}

  /**
   * The document of a week, as matters stood on the evening of its last day.
   *
   * @param audience the public reads what its authors marked for it, and figures
   */
  public static Sheet of(Ledger ledger, Week week, LogDay.Audience audience) {
    return switch (audience) {
      case CREW -> CrewWeek.of(week, Facts.of(ledger, week.last())).sheet(Set.of());
      case PUBLIC -> PublicWeek.of(week, Facts.of(ledger, week.last())).sheet();
    };
  }

  /** {@code Mon 23 to Sun 29 March 2026}. */
  public static String span(Week week) {
    String first =
        week.first().getMonth() == week.last().getMonth()
            ? Say.weekday(week.first()) + " " + week.first().getDayOfMonth()
            : week.first().getYear() == week.last().getYear()
                ? Say.weekday(week.first()) + " " + Say.dayAndMonth(week.first())
                : Say.day(week.first());
    return week.first().equals(week.last())
        ? Say.day(week.last())
        : first + " to " + Say.day(week.last());
  }
}

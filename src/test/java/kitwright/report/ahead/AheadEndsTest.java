package kitwright.report.ahead;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.report.Told;
import org.junit.jupiter.api.Test;

/** How far the end lies from the launch. */
class AheadEndsTest {
  private static String told(String launch, String off, String takes) {
    Facts now =
        Facts.of(
            Sample.ledger(
                """
                build: {name: S, currency: EUR, started: 2026-01-05, launch: %s, off: [%s]}
                tasks: [{id: a, what: A, takes: %s}]
                """
                    .formatted(launch, off, takes)),
            Sample.TODAY);
    return Told.words(Told.markdown(AheadReport.sheet(Outlook.of(now))));
  }

  /** A year of holidays lies between the launch and the last day of work. */
  @Test
  void daysOffBetweenAreToldBesideTheDaysOfWork() {
    assertThat(told("2026-03-06", "2026-03-07..2027-03-07", "6 d"))
        .contains("on Mon 8 March 2027, 1 working day (367 days by the calendar) after the launch");
    assertThat(told("2027-03-08", "2026-03-07..2027-03-07", "5 d"))
        .contains("with 1 working day (367 days by the calendar) to spare");
    assertThat(told("2026-03-06", "2026-07-01..2026-07-02", "10 d"))
        .as("a weekend is nothing strange")
        .contains(", 5 working days after the launch");
  }

  @Test
  void whatEndsWithTheDayAtMidnightIsReachedThen() {
    Facts now =
        Facts.of(
            Sample.ledger(
                "build: {name: S, currency: EUR, started: 2026-01-05, week: {days: [mon], hours:"
                    + " 24}}\n"
                    + "tasks: [{id: a, what: A, takes: 1 d}, {id: m, what: Done, takes: 0 d, after:"
                    + " [a]}]\n"),
            Sample.TODAY);
    assertThat(Told.words(Told.markdown(AheadReport.sheet(Outlook.of(now)))))
        .contains("2026-03-022026-03-02Done, no work, reached at 24:00");
  }
}

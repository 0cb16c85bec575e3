package kitwright.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import kitwright.Sample;
import kitwright.ledger.Facts;
import org.junit.jupiter.api.Test;

/**
 * Work stands still while somebody whom it needs is away, and every date and float knows it. The
 * days are counted by hand on the calendar. Sample's today is Monday, 2 March 2026, five days a
 * week, eight hours.
 */
class AbsencesTest {
  private static final LocalDate MONDAY = Sample.TODAY;

  private static final String PEOPLE =
      """
      parties:
        - {id: ivo, name: Ivo, role: helper, off: [2026-03-03..2026-03-04, 2026-03-05..2026-03-10]}
        - {id: sunniva, name: Sunniva, role: helper, off: [2026-03-12..2026-03-12]}
      tasks:
      """;

  private static Facts facts(String tasks) {
    return Facts.of(Sample.ledger(PEOPLE + tasks), MONDAY);
  }

  private static Plan plan(String tasks) {
    return Plan.on(facts(tasks));
  }

  @Test
  void whatIsBegunBeforeAnAbsenceIsFinishedAfterIt() {
    Plan plan =
        plan(
            """
              - {id: plank, what: Plank, takes: 2 d, who: [ivo]}
              - {id: fair, what: Fair, takes: 2 d, who: [sunniva], after: [plank]}
              - {id: shop, what: Shop, takes: 1 d}
            """);
    // Monday 2, then Wednesday 11; Thursday 12 without Sunniva, so Friday 13 and Monday 16
    assertThat(plan.schedule().of("plank").earliestFinish()).isEqualTo("2026-03-11T16:00");
    assertThat(plan.schedule().of("fair").earliestStart()).isEqualTo("2026-03-13T08:00");
    assertThat(plan.freedOn("fair")).isEqualTo("2026-03-12");
    assertThat(plan.workableOn("fair")).isEqualTo("2026-03-13");
    assertThat(plan.schedule().lastDay()).isEqualTo("2026-03-16");
    // Tuesday 3 to Monday 16
    assertThat(plan.schedule().of("shop").total().wholeDays()).isEqualTo(10);
  }

  /** It may end on Wednesday 11 and have no day less: the Thursday is Sunniva's. */
  @Test
  void floatIsOnlyTimeInWhichTheWorkCanGoOn() {
    Plan plan =
        plan(
            """
              - {id: long, what: Long, takes: 9 d}
              - {id: plank, what: Plank, takes: 1 d, who: [ivo]}
              - {id: fair, what: Fair, takes: 1 d, who: [sunniva], after: [long]}
            """);
    // long: 2 to 12 March; plank today, else on 11, 12 or 13; the end is on Friday 13
    assertThat(plan.schedule().lastDay()).isEqualTo("2026-03-13");
    Planned plank = plan.schedule().of("plank");
    assertThat(plank.total().wholeDays()).isEqualTo(3);
    assertThat(plank.free().wholeDays()).isEqualTo(3);
    assertThat(plank.latestStart()).isEqualTo("2026-03-13T08:00");
    assertThat(plan.latestOn("plank")).isEqualTo("2026-03-13");
  }

  @Test
  void theLatestStartOfWhatComesBeforeLooksOverTheAbsence() {
    Plan plan =
        plan(
            """
              - {id: long, what: Long, takes: 8 d}
              - {id: cut, what: Cut, takes: 1 d}
              - {id: plank, what: Plank, takes: 2 d, who: [ivo], after: [cut]}
            """);
    // plank needs 11 and 12 March; the cut may be made on Tuesday 10, the eve of Ivo's return
    assertThat(plan.schedule().of("plank").earliestStart()).isEqualTo("2026-03-11T08:00");
    assertThat(plan.schedule().lastDay()).isEqualTo("2026-03-12");
    assertThat(plan.schedule().of("cut").latestStart()).isEqualTo("2026-03-10T08:00");
    assertThat(plan.schedule().of("cut").total().wholeDays()).isEqualTo(6);
    assertThat(plan.schedule().of("cut").critical()).isFalse();
  }

  @Test
  void workUnderWayStandsStillTooAndItsLatestDayIsOneOnWhichTheyCome() {
    Plan plan =
        plan(
            """
              - {id: plank, what: Plank, takes: 4 d, who: [ivo], started: 2026-02-26, progress: 50 %}
              - {id: long, what: Long, takes: 9 d}
            """);
    assertThat(plan.schedule().of("plank").earliestFinish()).isEqualTo("2026-03-11T16:00");
    // one day of float, Thursday 12: it must go on today or on Wednesday 11
    assertThat(plan.latestOn("plank")).isEqualTo("2026-03-11");
  }

  @Test
  void whatTakesNoTimeHappensAsTheyLeaveOrWhenTheyAreBack() {
    Plan plan =
        plan(
            """
              - {id: cut, what: Cut, takes: 1 d}
              - {id: seen, what: Seen, takes: 0 d, who: [ivo], after: [cut]}
              - {id: more, what: More, takes: 1 d, after: [cut]}
              - {id: late, what: Late, takes: 0 d, who: [ivo], after: [more]}
            """);
    assertThat(plan.schedule().of("seen").earliestStart()).isEqualTo("2026-03-02T16:00");
    assertThat(plan.schedule().of("late").earliestStart()).isEqualTo("2026-03-11T08:00");
  }

  @Test
  void whoIsAwayAndHasFinishedHoldsNothing() {
    Plan plan =
        plan(
            """
              - {id: plank, what: Plank, takes: 2 d, who: [ivo], started: 2026-02-26, finished: 2026-02-27}
              - {id: fair, what: Fair, takes: 1 d, after: [plank]}
            """);
    assertThat(plan.schedule().lastDay()).isEqualTo("2026-03-02");
  }

  @Test
  void aWindowInTheWeatherHasAllItsDaysOfWorkWithEverybodyHere() {
    Facts now =
        facts(
            """
              - {id: paint, what: Paint, takes: 2 d, place: outdoors, weather: {dry: 1 d}, who: [sunniva],
                 after: [wait]}
              - {id: wait, what: Wait, takes: 7 d}
            forecast:
              - {day: 2026-03-11, rain: 0 mm, low: 12, high: 18}
              - {day: 2026-03-12, rain: 0 mm, low: 12, high: 18}
              - {day: 2026-03-13, rain: 0 mm, low: 12, high: 18}
            """);
    // begun on Wednesday 11, gone on with on Friday 13
    Weathered weathered = Weathered.of(Plan.on(now).schedule(), now);
    assertThat(weathered.schedule().lastDay()).isEqualTo("2026-03-13");
    assertThat(WeatherBound.of(Plan.on(now).task("paint").orElseThrow(), now).orElseThrow().until())
        .isEqualTo("2026-03-13");
  }

  @Test
  void theClimateStretchesWorkOverTheDaysOnWhichTheyCome() {
    Facts now =
        Facts.of(
            Sample.ledger(
                """
                build: {name: S, currency: EUR, started: 2026-01-05,
                        climate: [{month: mar, fit: 50 %, source: s}]}
                """
                    + PEOPLE
                    + "  - {id: p, what: P, takes: 1 d, place: outdoors, weather: {dry: 1 d}, who:"
                    + " [ivo]}\n"),
            MONDAY);
    // two days for one of work: Monday 2, then Wednesday 11
    Weathered weathered = Weathered.of(Plan.on(now).schedule(), now);
    assertThat(weathered.schedule().lastDay()).isEqualTo("2026-03-11");
  }

  /** What was to be done by an evening: of two days Monday alone, until Ivo is back. */
  @Test
  void whatWasToBeDoneByADayKnowsWhoWasAway() {
    Plan plan = plan("  - {id: plank, what: Plank, takes: 2 d, who: [ivo]}\n");
    assertThat(Baseline.of(plan, MONDAY, LocalDate.of(2026, 3, 6)).share("plank"))
        .isEqualByComparingTo("0.5");
  }
}

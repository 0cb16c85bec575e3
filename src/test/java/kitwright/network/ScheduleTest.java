package kitwright.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A barn open on Monday, Tuesday, Thursday and Saturday from eight to two; today is Monday. */
class ScheduleTest {
  private static final long DAY = 6 * 60;
  private final WorkCalendar barn = Calendars.barn();

  @Test
  void aCureRunsThroughTheNight() {
    Activity glue = Works.curing(Works.of("glue", Estimate.fixed(DAY)), Duration.ofHours(18));
    Schedule schedule = schedule(List.of(glue, task("sand", 1)), Works.link("glue", "sand"));
    assertThat(schedule.of("glue").ready()).isEqualTo("2026-01-06T08:00");
    assertThat(schedule.of("sand").earliestStart()).isEqualTo("2026-01-06T08:00");
  }

  @Test
  void aCureThatEndsOnADayOffWaitsForTheNextWorkingDay() {
    Activity glue = Works.curing(Works.of("glue", Estimate.fixed(2 * DAY)), Duration.ofHours(24));
    Schedule schedule = schedule(List.of(glue, task("sand", 1)), Works.link("glue", "sand"));
    assertThat(schedule.of("glue").ready()).isEqualTo("2026-01-07T14:00");
    assertThat(schedule.of("sand").earliestStart()).isEqualTo("2026-01-08T08:00");
    // Finished on Tuesday by two; Wednesday is no working day, so nothing can slip unseen.
    assertThat(schedule.of("glue").total().minutes()).isZero();
    assertThat(schedule.of("glue").critical()).isTrue();
  }

  @Test
  void aNightThatIsLongerThanTheCureLeavesFloatOnTheCriticalChain() {
    Activity glue = Works.curing(Works.of("glue", Estimate.fixed(DAY - 120)), Duration.ofHours(18));
    Schedule schedule = schedule(List.of(glue, task("sand", 1)), Works.link("glue", "sand"));
    assertThat(schedule.of("glue").earliestFinish()).isEqualTo("2026-01-05T12:00");
    assertThat(schedule.of("sand").earliestStart()).isEqualTo("2026-01-06T08:00");
    assertThat(schedule.of("glue").total().minutes()).isEqualTo(120);
    assertThat(schedule.all())
        .filteredOn(Planned::critical)
        .extracting(Planned::id)
        .containsExactly("glue", "sand");
  }

  @Test
  void theLastCureBelongsToTheBuild() {
    Activity paint = Works.curing(Works.of("paint", Estimate.fixed(DAY)), Duration.ofDays(3));
    assertThat(schedule(List.of(paint)).end()).isEqualTo("2026-01-08T14:00");
  }

  @Test
  void aLagIsWorkingTime() {
    Schedule schedule = schedule(List.of(task("a", 1), task("b", 1)), new Link("a", "b", DAY));
    assertThat(schedule.of("b").earliestStart()).isEqualTo("2026-01-08T08:00");
  }

  @Test
  void aFinishedTaskKeepsItsDays() {
    Activity done =
        Works.at(
            task("a", 3), new Headway.Done(LocalDate.of(2025, 12, 27), LocalDate.of(2025, 12, 30)));
    Schedule schedule = schedule(List.of(done, task("b", 1)), Works.link("a", "b"));
    assertThat(schedule.of("a").earliestStart()).isEqualTo("2025-12-27T08:00");
    assertThat(schedule.of("a").latestFinish()).isEqualTo("2025-12-30T14:00");
    assertThat(schedule.of("a").critical()).isFalse();
    assertThat(schedule.of("b").earliestStart()).isEqualTo("2026-01-05T08:00");
  }

  @Test
  void aCureThatBeganYesterdayIsWaitedFor() {
    Activity done =
        Works.at(
            Works.curing(task("a", 1), Duration.ofDays(3)),
            new Headway.Done(LocalDate.of(2026, 1, 3), LocalDate.of(2026, 1, 4)));
    Schedule schedule = schedule(List.of(done, task("b", 1)), Works.link("a", "b"));
    assertThat(schedule.of("a").ready()).isEqualTo("2026-01-07T14:00");
    assertThat(schedule.of("b").earliestStart()).isEqualTo("2026-01-08T08:00");
  }

  @Test
  void ofABegunTaskOnlyTheRestIsAhead() {
    Activity begun = Works.at(task("a", 4), new Headway.Begun(LocalDate.of(2026, 1, 3), 0.75));
    Planned planned = schedule(List.of(begun)).of("a");
    assertThat(planned.earliestStart()).isEqualTo("2026-01-03T08:00");
    assertThat(planned.earliestFinish()).isEqualTo("2026-01-05T14:00");
  }

  @Test
  void theRestOfATaskBegunOutOfTurnWaitsForItsPredecessor() {
    Activity begun = Works.at(task("b", 2), new Headway.Begun(LocalDate.of(2026, 1, 3), 0.5));
    Schedule schedule = schedule(List.of(task("a", 1), begun), Works.link("a", "b"));
    assertThat(schedule.of("b").earliestFinish()).isEqualTo("2026-01-06T14:00");
  }

  @Test
  void aTaskHeldUntilADayBeginsThen() {
    Schedule schedule =
        Schedule.of(
            Network.of(List.of(task("a", 1), task("b", 1)), List.of(Works.link("a", "b")))
                .heldUntil(Map.of("b", LocalDate.of(2026, 1, 9))),
            barn,
            Calendars.MONDAY);
    assertThat(schedule.of("b").earliestStart()).isEqualTo("2026-01-10T08:00");
    assertThat(schedule.of("a").total().days()).isEqualTo(2);
    assertThat(schedule.all())
        .filteredOn(Planned::critical)
        .extracting(Planned::id)
        .containsExactly("b");
  }

  @Test
  void aTaskWithoutWorkHappensWhenItsPredecessorEnds() {
    Schedule schedule =
        schedule(List.of(task("a", 1), task("launched", 0)), Works.link("a", "launched"));
    assertThat(schedule.of("launched").earliestStart()).isEqualTo("2026-01-05T14:00");
    assertThat(schedule.end()).isEqualTo("2026-01-05T14:00");
  }

  @Test
  void theMarginToAWantedDayIsCountedInWorkingDays() {
    Schedule schedule = schedule(List.of(task("a", 3)));
    assertThat(schedule.end()).isEqualTo("2026-01-08T14:00");
    assertThat(schedule.marginTo(LocalDate.of(2026, 1, 12)).days()).isEqualTo(2);
    assertThat(schedule.marginTo(LocalDate.of(2026, 1, 6)).wholeDays()).isEqualTo(-1);
  }

  @Test
  void nothingLeftToDoEndsToday() {
    assertThat(schedule(List.of()).end()).isEqualTo("2026-01-05T08:00");
  }

  private Schedule schedule(List<Activity> tasks, Link... links) {
    return Schedule.of(Network.of(tasks, List.of(links)), barn, Calendars.MONDAY);
  }

  private static Activity task(String id, int days) {
    return Works.of(id, Estimate.fixed(days * DAY));
  }
}

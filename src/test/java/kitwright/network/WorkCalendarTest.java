package kitwright.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;

class WorkCalendarTest {
  private final WorkCalendar barn = Calendars.barn();

  @Test
  void workRunsOverToTheNextWorkingDay() {
    assertThat(barn.add(at("2026-01-05T12:00"), Duration.ofHours(3))).isEqualTo("2026-01-06T09:00");
    assertThat(barn.add(at("2026-01-06T12:00"), Duration.ofHours(3))).isEqualTo("2026-01-08T09:00");
  }

  @Test
  void workThatEndsWithTheDayEndsThatEvening() {
    assertThat(barn.add(at("2026-01-05T08:00"), Duration.ofHours(6))).isEqualTo("2026-01-05T14:00");
    assertThat(barn.add(at("2026-01-05T20:00"), Duration.ofHours(6))).isEqualTo("2026-01-06T14:00");
  }

  @Test
  void daysOffAreSteppedOver() {
    // 2 April 2026 is a Thursday; Saturday the 4th and Monday the 6th are off.
    assertThat(barn.add(at("2026-04-02T14:00"), Duration.ofHours(1))).isEqualTo("2026-04-07T09:00");
    assertThat(barn.workBetween(at("2026-04-02T00:00"), at("2026-04-08T00:00")))
        .isEqualTo(Duration.ofHours(12));
    assertThat(barn.plusWorkingDays(LocalDate.of(2026, 4, 2), 1)).isEqualTo("2026-04-07");
    assertThat(barn.plusWorkingDays(LocalDate.of(2026, 4, 7), -1)).isEqualTo("2026-04-02");
    assertThat(barn.isWorkingDay(LocalDate.of(2026, 4, 4))).isFalse();
  }

  @Test
  void outsideWorkingHoursTheNextOpeningCounts() {
    assertThat(barn.nextWorking(at("2026-01-06T14:00"))).isEqualTo("2026-01-08T08:00");
    assertThat(barn.nextWorking(at("2026-01-06T09:30"))).isEqualTo("2026-01-06T09:30");
  }

  @Test
  void workBetweenTwoMomentsCountsWorkingHoursOnly() {
    assertThat(barn.workBetween(at("2026-01-05T13:00"), at("2026-01-08T09:00")))
        .isEqualTo(Duration.ofHours(8));
    assertThat(barn.workBetween(at("2026-01-08T09:00"), at("2026-01-05T13:00")))
        .isEqualTo(Duration.ofHours(-8));
  }

  @Test
  void aCalendarWithoutAWorkingDayIsRefused() {
    assertThatThrownBy(
            () -> WorkCalendar.of(EnumSet.noneOf(DayOfWeek.class), Duration.ofHours(6), List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("at least one working day");
  }

  @Test
  void aDayThatRunsPastMidnightIsRefused() {
    assertThatThrownBy(
            () ->
                WorkCalendar.of(
                    EnumSet.allOf(DayOfWeek.class),
                    LocalTime.of(20, 0),
                    Duration.ofHours(5),
                    List.of()))
        .hasMessageContaining("midnight");
    assertThatThrownBy(
            () -> WorkCalendar.of(EnumSet.allOf(DayOfWeek.class), Duration.ZERO, List.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void overlappingDaysOffAreLostOnce() {
    WorkCalendar calendar =
        WorkCalendar.of(
            EnumSet.allOf(DayOfWeek.class),
            Duration.ofHours(8),
            List.of(
                new DaysOff(LocalDate.of(2026, 7, 1), LocalDate.of(2026, 7, 10)),
                new DaysOff(LocalDate.of(2026, 7, 3), LocalDate.of(2026, 7, 5)),
                new DaysOff(LocalDate.of(2026, 7, 9), LocalDate.of(2026, 7, 12))));
    assertThat(calendar.workBetween(at("2026-06-30T00:00"), at("2026-07-14T00:00")).toMinutes())
        .isEqualTo(2L * calendar.minutesADay());
  }

  private static LocalDateTime at(String moment) {
    return LocalDateTime.parse(moment);
  }
}

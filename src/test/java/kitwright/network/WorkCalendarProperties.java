package kitwright.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** The arithmetic of the calendar against walking through it day by day and minute by minute. */
class WorkCalendarProperties {
  private static final LocalDate FIRST = LocalDate.of(2025, 12, 20);

  record Plan(Set<DayOfWeek> week, LocalTime opens, Duration aDay, List<DaysOff> off) {
    WorkCalendar calendar() {
      return WorkCalendar.of(week, opens, aDay, off);
    }

    boolean works(LocalDate day) {
      return week.contains(day.getDayOfWeek())
          && off.stream().noneMatch(o -> !day.isBefore(o.first()) && !day.isAfter(o.last()));
    }
  }

  @Property
  void workingDaysAreThoseThatAWalkCounts(
      @ForAll("plans") Plan plan, @ForAll @IntRange(max = 120) int days) {
    WorkCalendar calendar = plan.calendar();
    long walked = FIRST.datesUntil(FIRST.plusDays(days)).filter(plan::works).count();
    assertThat(
            calendar
                .workBetween(FIRST.atStartOfDay(), FIRST.plusDays(days).atStartOfDay())
                .toMinutes())
        .isEqualTo(walked * calendar.minutesADay());
    assertThat(calendar.isWorkingDay(FIRST.plusDays(days)))
        .isEqualTo(plan.works(FIRST.plusDays(days)));
  }

  @Property
  void addingAndCountingAreInverse(
      @ForAll("plans") Plan plan,
      @ForAll @IntRange(max = 60 * 24 * 40) int start,
      @ForAll @IntRange(min = 1, max = 60 * 24 * 20) int work) {
    WorkCalendar calendar = plan.calendar();
    var from = FIRST.atStartOfDay().plusMinutes(start);
    var end = calendar.add(from, Duration.ofMinutes(work));
    assertThat(calendar.workBetween(from, end)).isEqualTo(Duration.ofMinutes(work));
    assertThat(calendar.workBetween(from, end.minusMinutes(1)))
        .isEqualTo(Duration.ofMinutes(work - 1));
  }

  @Property
  void startAndEndOfACountEncloseTheIdleTime(
      @ForAll("plans") Plan plan, @ForAll @IntRange(max = 60 * 24 * 90) int minute) {
    WorkCalendar calendar = plan.calendar();
    long worked = calendar.worked(WorkCalendar.clock(FIRST.atStartOfDay())) + minute;
    assertThat(calendar.worked(calendar.startAt(worked))).isEqualTo(worked);
    assertThat(calendar.worked(calendar.endAt(worked))).isEqualTo(worked);
    assertThat(calendar.worked(calendar.startAt(worked) + 1)).isEqualTo(worked + 1);
    assertThat(calendar.worked(calendar.endAt(worked) - 1)).isEqualTo(worked - 1);
  }

  @Provide
  Arbitrary<Plan> plans() {
    Arbitrary<DaysOff> off =
        Combinators.combine(
                Arbitraries.integers().between(-20, 120), Arbitraries.integers().between(0, 15))
            .as((from, length) -> new DaysOff(FIRST.plusDays(from), FIRST.plusDays(from + length)));
    return Combinators.combine(
            Arbitraries.of(DayOfWeek.class).set().ofMinSize(1),
            Arbitraries.integers().between(0, 12 * 60),
            Arbitraries.integers().between(1, 12 * 60),
            off.list().ofMaxSize(6))
        .as(
            (week, opens, length, offs) ->
                new Plan(
                    week, LocalTime.ofSecondOfDay(opens * 60L), Duration.ofMinutes(length), offs));
  }
}

package kitwright.daybook;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.IsoFields;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class WeekProperties {
  /** The reference is {@code java.time}, which counts weeks on its own; 1900 to 2199. */
  @Property
  void agreesWithTheJavaLibraryOnEveryDay(@ForAll @IntRange(min = -25567, max = 84005) int epoch) {
    LocalDate day = LocalDate.ofEpochDay(epoch);
    Week week = Week.of(day);
    assertThat(week.number()).isEqualTo(day.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR));
    assertThat(week.year()).isEqualTo(day.get(IsoFields.WEEK_BASED_YEAR));
    assertThat(week.first().getDayOfWeek()).isEqualTo(DayOfWeek.MONDAY);
    assertThat(week.last().getDayOfWeek()).isEqualTo(DayOfWeek.SUNDAY);
    assertThat(week.contains(day)).isTrue();
    assertThat(week.next().first()).isEqualTo(week.last().plusDays(1));
    assertThat(Week.ending(day).first()).isEqualTo(week.first());
    assertThat(Week.ending(day).last()).isEqualTo(day);
  }
}

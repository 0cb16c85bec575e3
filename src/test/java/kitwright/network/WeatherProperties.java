package kitwright.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.weather.Window;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/**
 * Windows in random forecasts on random weeks, against a walk that goes hour by hour: it knows
 * nothing of spells, worked minutes or calendars. Work goes from 8 to 16 on working days.
 */
class WeatherProperties {
  private static final LocalDate FIRST = LocalDate.of(2026, 3, 2);
  private static final int COLD = 10;

  /** Rain in mm and lowest temperature of a day. */
  record Sky(int rain, int low) {}

  @Property(tries = 400)
  void theFirstWindowIsWhatAWalkHourByHourFinds(
      @ForAll @Size(min = 1, max = 7) List<@IntRange(min = 1, max = 7) Integer> week,
      @ForAll @Size(min = 3, max = 14) List<@IntRange(max = 3) Integer> rains,
      @ForAll @Size(14) List<@IntRange(min = 8, max = 13) Integer> lows,
      @ForAll @IntRange(min = 1, max = 30) int hours,
      @ForAll @IntRange(max = 60) int cure,
      @ForAll @IntRange(max = 3) int dry) {
    List<Sky> sky = new ArrayList<>();
    for (int i = 0; i < rains.size(); i++) {
      sky.add(new Sky(Math.max(0, rains.get(i) - 2), lows.get(i)));
    }
    TreeSet<Integer> days = new TreeSet<>(week);
    Facts now = Facts.of(Sample.ledger(yaml(days, sky, hours, cure, dry)), FIRST);
    WeatherBound bound = WeatherBound.of(Plan.on(now).task("p").orElseThrow(), now).orElseThrow();
    Window found = bound.window();
    Optional<LocalDate> walked = walk(days, sky, hours, cure, dry);
    assertThat(found.fits()).isEqualTo(walked.isPresent());
    walked.ifPresent(day -> assertThat(found.first()).isEqualTo(day));
  }

  private static String yaml(SortedSet<Integer> week, List<Sky> sky, int hours, int cure, int dry) {
    StringBuilder text = new StringBuilder();
    List<String> names =
        week.stream()
            .map(d -> DayOfWeek.of(d).name().substring(0, 3).toLowerCase(Locale.ROOT))
            .toList();
    text.append("build: {name: S, currency: EUR, started: 2026-01-05, week: {days: ")
        .append(names)
        .append(", hours: 8}}\n")
        .append("tasks: [{id: p, what: P, place: outdoors, takes: ")
        .append(hours)
        .append(" h, wait: ")
        .append(cure)
        .append(" h, weather: {dry: ")
        .append(dry)
        .append(" d, above: ")
        .append(COLD)
        .append(" C, dew-margin: 0 K}}]\nforecast:\n");
    for (int i = 0; i < sky.size(); i++) {
      text.append(
          "  - {day: %s, rain: %d mm, low: %d, high: 25, dew-point: 1}\n"
              .formatted(FIRST.plusDays(i), sky.get(i).rain(), sky.get(i).low()));
    }
    return text.toString();
  }

  private static Optional<LocalDate> walk(
      SortedSet<Integer> week, List<Sky> sky, int hours, int cure, int dry) {
    for (int start = 0; start < sky.size(); start++) {
      if (works(week, start) && fits(week, sky, start, hours, cure, dry)) {
        return Optional.of(FIRST.plusDays(start));
      }
    }
    return Optional.empty();
  }

  private static boolean works(SortedSet<Integer> week, int day) {
    return week.contains(FIRST.plusDays(day).getDayOfWeek().getValue());
  }

  private static boolean fits(
      SortedSet<Integer> week, List<Sky> sky, int start, int hours, int cure, int dry) {
    for (int day = start; day < start + dry; day++) {
      if (day >= sky.size() || sky.get(day).rain() > 0) {
        return false;
      }
    }
    int left = hours;
    int hour = start * 24 + 8;
    TreeSet<Integer> warm = new TreeSet<>();
    while (left > 0) { // each hour of work asks for warmth on its day
      if (works(week, hour / 24) && hour % 24 >= 8 && hour % 24 < 16) {
        warm.add(hour / 24);
        left--;
      }
      hour++;
    }
    int lastOfWork = (hour - 1) / 24;
    boolean cures = (hour + cure - 1) / 24 > lastOfWork;
    for (int each = start * 24; cures && each < hour + cure; each++) {
      warm.add(each / 24); // what is done cures through every night until the end
    }
    return warm.stream().allMatch(day -> day < sky.size() && sky.get(day).low() >= COLD);
  }
}

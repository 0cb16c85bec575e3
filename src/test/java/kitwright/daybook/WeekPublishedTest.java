package kitwright.daybook;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class WeekPublishedTest {
  @ParameterizedTest
  @CsvFileSource(resources = "iso-weeks.csv", useHeadersInDisplayName = true)
  void agreesWithPublishedWeeks(String source, LocalDate day, String week) {
    assertThat(Week.of(day)).as(source).hasToString(week);
    assertThat(Week.ending(day)).as(source).hasToString(week);
  }
}

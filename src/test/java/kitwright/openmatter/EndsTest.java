package kitwright.openmatter;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.ledger.Facts;
import org.junit.jupiter.api.Test;

/** When the build ends, and what the dates leave out. Sample's today is Monday, 2 March 2026. */
class EndsTest {
  private static final String PAINT =
      "tasks: [{id: p, what: P, takes: 1 d, place: outdoors, weather: {dry: 1 d}}]\n";

  private static Ends ends(String more) {
    return Ends.on(Facts.of(Sample.ledger(PAINT + more), Sample.TODAY));
  }

  private static String rain(String day) {
    return "forecast: [{day: " + day + ", rain: 2 mm, low: 12, high: 18}]\n";
  }

  @Test
  void noDateIsCalledByTheForecastWhereTheForecastIsOver() {
    Ends ends = ends(rain("2026-02-09"));
    assertThat(ends.weather()).isEmpty();
    assertThat(ends.leftOut())
        .containsExactly(
            "weather not reckoned for 1 task, since the forecast ended on 9\u00a0February\u00a02026"
                + " and the build states no “climate” for its months");
  }

  @Test
  void norWhereNothingIsForetold() {
    assertThat(ends("").weather()).isEmpty();
    assertThat(ends("").leftOut())
        .containsExactly(
            "weather not reckoned for 1 task, since nothing is foretold and the build states no"
                + " “climate” for its months");
  }

  @Test
  void aForecastThatReachesItHoldsItUntilItsEnd() {
    Ends ends = ends(rain("2026-03-03"));
    assertThat(ends.weather()).isPresent();
    assertThat(ends.leftOut())
        .containsExactly(
            "weather not reckoned for 1 task beyond the forecast, since the build states no"
                + " “climate” for its months");
  }
}

package kitwright.openmatter;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import kitwright.Sample;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;

/** When the build ends, and what the dates leave out. Sample's today is Monday, 2 March 2026. */
class EndsTest {
  private static final String PAINT =
      "tasks: [{id: p, what: P, takes: 1 d, place: outdoors, weather: {dry: 1 d}}]\n";

  private static Ends ends(String more) {
    return ends(Sample.ledger(PAINT + more));
  }

  @Test
  void whoIsAwayIsInTheDateAndWhatClashesIsNot() {
    String yaml =
        """
        parties: [{id: ivo, name: Ivo, role: helper, off: [2026-03-01..2026-03-03]}]
        borrowed: [{id: saw, tool: saw, from: ivo, on: 2026-02-01, condition: ok}]
        tasks:
          - {id: a, what: A, takes: 1 d, who: [ivo], tools: [saw]}
          - {id: b, what: B, takes: 3 d, tools: [saw]}
        """;
    Ends ends = ends(Sample.ledger(yaml));
    assertThat(ends.alone().of("a").goesOn()).isEqualTo("2026-03-04T08:00");
    assertThat(ends.leftOut())
        .containsExactly("“B” and “A” both need the saw at the same time, and one is here");
  }

  @Test
  void whatNobodySendsAndNobodyCanOrderIsInNoDate() {
    String use = ", takes: 1 d, uses: [{item: k, qty: 2}]}";
    String kit = "kit: [{id: k, what: k, qty: 1}]\ntasks: [";
    String lacks = " something that nobody sends and whose time to get it nobody has written down";
    assertThat(ends(Sample.ledger(kit + "{id: t, what: T" + use + "]\n")).leftOut())
        .containsExactly("1 task lacks" + lacks);
    String two = kit + "{id: t, what: T" + use + ", {id: u, what: U" + use + "]\n";
    assertThat(ends(Sample.ledger(two)).leftOut()).containsExactly("2 tasks lack" + lacks);
  }

  private static Ends ends(Ledger ledger) {
    return Ends.on(Facts.of(ledger, Sample.TODAY));
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

  /** One is overdue, one has no day, of one nobody has a record, one comes on its day. */
  @Test
  void aCrateOfWhichNobodyKnowsTheDayIsInNoDate() {
    String yaml =
        """
        deliveries:
          - {id: late, from: kit, expected: 2026-03-01}
          - {id: some-day, from: kit}
          - {id: coming, from: kit, expected: 2026-03-02}
        tasks:
          - {id: a, what: A, takes: 1 d, unpacks: [late]}
          - {id: b, what: B, takes: 1 d, unpacks: [some-day]}
          - {id: d, what: D, takes: 1 d, unpacks: [coming]}
        """;
    assertThat(ends(Sample.ledger(yaml)).leftOut())
        .containsExactly("2 tasks unpack a delivery of which nobody says when it comes");
  }

  /**
   * Rain until Wednesday: one day of outdoor work is done on Thursday, in these and other dates.
   */
  @Test
  void theWeatherIsInTheLastDatesAndLaidOverOthers() {
    String rows =
        """
        tasks: [{id: t, what: T, takes: 1 d%s}]
        forecast:
          - {day: 2026-03-02, rain: 2 mm, low: 6, high: 12}
          - {day: 2026-03-03, rain: 2 mm, low: 6, high: 12}
          - {day: 2026-03-04, rain: 2 mm, low: 6, high: 12}
          - {day: 2026-03-05, rain: 0 mm, low: 6, high: 12}
        """;
    Facts wet =
        Facts.of(
            Sample.ledger(rows.formatted(", place: outdoors, weather: {dry: 1 d}")), Sample.TODAY);
    LocalDate monday = Sample.TODAY;
    assertThat(Ends.on(wet).alone().lastDay()).isEqualTo(monday);
    assertThat(Ends.on(wet).last().lastDay()).isEqualTo(monday.plusDays(3));
    assertThat(Ends.weathered(Ends.on(wet).alone(), wet).lastDay()).isEqualTo(monday.plusDays(3));
    Facts indoors = Facts.of(Sample.ledger(rows.formatted("")), Sample.TODAY);
    assertThat(Ends.on(indoors).last().lastDay()).isEqualTo(monday);
    assertThat(Ends.weathered(Ends.on(indoors).alone(), indoors).lastDay()).isEqualTo(monday);
  }

  @Test
  void workThatNobodyCanReadIsInNoDate() {
    String task = "tasks: [{id: t, what: T, takes: lots}]\n";
    String stock = "stock: [{id: s, what: S, qty: lots}]\n";
    String stretch = "taskss: [{id: t, what: T, takes: 1 d}]\n";
    assertThat(unread(task)).containsExactly("task t cannot be read");
    assertThat(unread(stock)).isEmpty();
    assertThat(unread(stretch))
        .singleElement()
        .asString()
        .startsWith("“taskss” in sample.yaml on line 1 cannot be read, and may hold");
  }

  private static List<String> unread(String yaml) {
    return Ends.unread(Facts.of(Sample.read(yaml, new Findings()).orElseThrow(), Sample.TODAY));
  }
}

package kitwright.openmatter;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import kitwright.Sample;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.network.Plan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whether a task may start and what it lacks. Sample's today is Monday, 2 March 2026. */
class ReadinessTest {
  private static Readiness of(String task, String yaml, LocalDate today) {
    Facts now = Facts.of(Sample.ledger(yaml), today);
    return Readiness.of(Plan.on(now).task(task).orElseThrow(), now);
  }

  private static List<String> lacks(String task, String yaml) {
    return of(task, yaml, Sample.TODAY).lacks().stream().map(Readiness.Lack::words).toList();
  }

  private static final String CRATE =
      """
      tasks: [{id: unpack, what: Unpack, takes: 1 d, unpacks: d-1}]
      deliveries: [{id: d-1, from: kit-maker, packed: [], %s}]
      """;

  @Test
  void aTaskWaitsForTheCrateThatItUnpacks() {
    Readiness expected = of("unpack", CRATE.formatted("expected: 2026-03-12"), Sample.TODAY);
    assertThat(expected.lacks())
        .extracting(Readiness.Lack::words)
        .containsExactly("delivery d-1 not here, expected on 12\u00a0March\u00a02026");
    assertThat(expected.lacksOnly(Readiness.Kind.CRATE)).isTrue();
    assertThat(expected.from()).isEqualTo("2026-03-12");
    assertThat(lacks("unpack", CRATE.formatted("received: 2026-03-02"))).isEmpty();
    assertThat(lacks("unpack", CRATE.formatted("expected: 2026-02-20"))).hasSize(1);
    assertThat(lacks("unpack", CRATE.formatted("note: PL 1")))
        .containsExactly("delivery d-1 not here, and nobody says when it comes");
  }

  @Test
  void aCrateNobodyKnowsIsNotHereEither() {
    Facts now =
        Facts.of(
            Sample.read("tasks: [{id: unpack, what: U, takes: 1 d, unpacks: d-9}]", new Findings())
                .orElseThrow(),
            Sample.TODAY);
    assertThat(Readiness.of(Plan.on(now).tasks().get(0), now).isReady()).isFalse();
  }

  private static List<String> lacksOfFaulty(String yaml) {
    Facts now = Facts.of(Sample.read(yaml, new Findings()).orElseThrow(), Sample.TODAY);
    return Readiness.of(Plan.on(now).tasks().get(0), now).lacks().stream()
        .map(Readiness.Lack::words)
        .toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "stock: ash | stock: [{id: ash, size: 2 x 0.1 x 0.02 m, pieces: 2}]", // says not what
        "stock: oak | stock: [{id: ash, what: ash, size: 2000 x 100 x 20 mm, pieces: 2}]",
        "item: ash | kit: [{id: ash, what: ash, qty: 2 m}]" // a piece is no metre
      })
  void materialOfWhichNothingIsKnownIsLacking(String use, String records) {
    String task = "tasks: [{id: bend, what: Bend, takes: 1 d, uses: [{" + use + ", qty: 1 each}]}]";
    String named = use.substring(use.indexOf(' ') + 1);
    assertThat(lacksOfFaulty(task + "\n" + records))
        .containsExactly("it is not known how much of “" + named + "” is here");
  }

  @Test
  void aSectionThatLeavesSomethingOutLetsNothingStart() {
    String skin =
        """
        tasks: [{id: skin, what: Sheathe, takes: 1 d, uses: [{section: %s, area: 4 m2}]}]
        materials: [{id: cloth, kind: cloth, areal-weight: 200 g/m2, source: label}]
        sections: [{id: skin, width: 1 m, layers: [{material: cloth%s}]}]
        """;
    assertThat(lacksOfFaulty(skin.formatted("skin", "")))
        .contains("it is not known how many plies of cloth there are");
    assertThat(lacksOfFaulty(skin.formatted("skin", ", plies: 2")))
        .contains("it is not known how much resin cloth takes");
    assertThat(lacksOfFaulty(skin.formatted("skim", ", plies: 2")))
        .containsExactly(
            "it is not known what “skim” is, since no section of that name can be read");
  }

  private static final String PAINT =
      """
      tasks: [{id: paint, what: Paint, takes: 1 d, place: outdoors, weather: {dry: 1 d}}]
      """;

  private static String row(String day, int rain) {
    return "  - {day: " + day + ", rain: " + rain + " mm, low: 12, high: 18}\n";
  }

  /** What is used of it in kilograms, or by a day that cannot be read, may be all there is. */
  @Test
  void whatNobodyCanSayIsLeftLetsNothingStart() {
    String shelf =
        """
        stock: [{id: oak, what: oak, qty: 5 m}]
        tasks: [{id: trim, what: Trim, takes: 1 d, uses: [{stock: oak, qty: 2 m}]}]
        ---
        day: 2026-02-20
        used: [{stock: oak, qty: %s}]
        ---
        """;
    assertThat(lacksOfFaulty(shelf.formatted("1 m"))).isEmpty();
    assertThat(lacksOfFaulty(shelf.formatted("1 kg")))
        .containsExactly(
            "it is not known how much of “oak” is here, since log day 2026-02-20 takes 1 kg of it,"
                + " which does not convert");
    assertThat(lacksOfFaulty(shelf.formatted("some")))
        .containsExactly(
            "it is not known how much of “oak” is here, since log day 2026-02-20, which names it,"
                + " cannot be read");
    assertThat(lacksOfFaulty(shelf.formatted("1 m}")))
        .as("front matter that breaks off")
        .hasSize(1);
  }

  @Test
  void aMaterialOfWhichAnUnknownAmountIsUsedLetsNothingStart() {
    String glue =
        """
        materials: [{id: glue, kind: glue, source: label}]
        stock: [{id: tin, what: tin, qty: 5 kg, material: glue}]
        tasks: [{id: trim, what: Trim, takes: 1 d, uses: [{material: glue, qty: 2 kg}]}]
        ---
        day: 2026-02-20
        used: [{%s}]
        ---
        """;
    assertThat(lacksOfFaulty(glue.formatted("material: glue, qty: 1 kg"))).isEmpty();
    assertThat(lacksOfFaulty(glue.formatted("material: glue, qty: 1 m"))).hasSize(1);
    assertThat(lacksOfFaulty(glue.formatted("material: glue, qty: some"))).hasSize(1);
    assertThat(lacksOfFaulty(glue.formatted("stock: tin, qty: some"))).hasSize(1);
  }

  @Test
  void outdoorWorkWaitsForItsWeather() {
    String wet = PAINT + "forecast:\n" + row("2026-03-02", 3) + row("2026-03-03", 0);
    assertThat(lacks("paint", wet))
        .containsExactly("weather: none that fits before 3\u00a0March\u00a02026");
    assertThat(of("paint", wet, Sample.TODAY).from()).isEqualTo("2026-03-03");
    assertThat(lacks("paint", PAINT + "forecast:\n" + row("2026-03-02", 0))).isEmpty();
    assertThat(lacks("paint", PAINT + "forecast:\n" + row("2026-03-02", 1)))
        .containsExactly("weather: none that fits in the forecast");
  }

  @Test
  void withoutAForecastNobodyCanTellThatItMayStart() {
    assertThat(lacks("paint", PAINT)).containsExactly("weather: no forecast for its days");
    String later =
        """
        tasks:
          - {id: first, what: First, takes: 1 d}
          - {id: later, what: Later, takes: 1 d, after: [first], place: outdoors, weather: {dry: 1 d}}
        """;
    assertThat(lacks("later", later)).containsExactly("“First” comes before");
  }

  private static final String TOOLS =
      """
      tasks: [{id: plane, what: Plane, takes: 1 d%s}]
      borrowed:
        - {id: p1, tool: planer, from: pell, on: 2026-02-01, condition: good, needed-for: [plane]%s}
        - {id: p2, tool: planer, from: pell, on: %s, condition: good}
      """;

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "2026-03-02;'';2026-04-01;true", // p1 is here
        "2026-03-02;', returned: 2026-03-01';2026-04-01;false",
        "2026-03-02;', returned: 2026-03-03';2026-04-01;true",
        "2026-03-02;', returned: 2026-03-01';2026-03-02;true", // p2 is here
      })
  void aToolIsHereIfAnyOfItsKindIs(String today, String back, String second, boolean ready) {
    for (String named : List.of("", ", tools: [p1]")) {
      String yaml = TOOLS.formatted(named, back, second);
      assertThat(of("plane", yaml, LocalDate.parse(today)).isReady()).as(yaml).isEqualTo(ready);
    }
  }

  @Test
  void aToolThatShallBeBackBeforeTheWorkCanGoOnIsLacking() {
    String yaml =
        """
        parties:
          - {id: pell, name: Pell, role: lender}
          - {id: ivo, name: Ivo, role: helper, off: [2026-03-01..%s]}
        tasks: [{id: lift, what: Lift, takes: 2 d, who: [ivo], tools: [hoist]}]
        borrowed:
          - {id: hoist, tool: hoist, from: pell, on: 2026-02-01, due: 2026-03-04, condition: good}
        """;
    assertThat(lacks("lift", yaml.formatted("2026-03-04")))
        .containsExactly(
            "hoist due back on 4\u00a0March\u00a02026", "Ivo is away until 4\u00a0March\u00a02026");
    assertThat(lacks("lift", yaml.formatted("2026-03-03")))
        .as("it goes back in the middle of the work, which the row tells")
        .containsExactly("Ivo is away until 3\u00a0March\u00a02026");
    Facts now = Facts.of(Sample.ledger(yaml.formatted("2026-03-03")), Sample.TODAY);
    Readiness lift = Readiness.of(Plan.on(now).task("lift").orElseThrow(), now);
    assertThat(lift.dueWhileAtWork(now)).hasSize(1);
    assertThat(lift.to()).isEqualTo("2026-03-05");
  }

  /**
   * Rain today; the paint goes on tomorrow, and the rig waits for it, not for the plan without
   * rain.
   */
  @Test
  void whatFollowsOutdoorWorkWaitsForItsWeatherToo() {
    String yaml =
        """
        tasks:
          - {id: p, what: P, takes: 1 d, place: outdoors, weather: {dry: 1 d}}
          - {id: rig, what: Rig, takes: 2 d, after: [p]}
        forecast:
        """
            + row("2026-03-02", 1)
            + row("2026-03-03", 0);
    assertThat(of("p", yaml, Sample.TODAY).from()).isEqualTo("2026-03-03");
    assertThat(of("rig", yaml, Sample.TODAY).from()).isEqualTo("2026-03-04");
    assertThat(of("rig", yaml, Sample.TODAY).to()).isEqualTo("2026-03-05");
  }

  @Test
  void aWindowInTheWeatherCountsWhereEverybodyIsHere() {
    String yaml =
        """
        parties: [{id: ivo, name: Ivo, role: helper, off: [2026-03-01..%s]}]
        tasks:
          - {id: p, what: P, takes: 1 d, place: outdoors, weather: {dry: 1 d}, who: [ivo]}
        forecast:
        """;
    String rows = row("2026-03-02", 0) + row("2026-03-03", 1) + row("2026-03-04", 0);
    assertThat(of("p", yaml.formatted("2026-03-02") + rows, Sample.TODAY).from())
        .isEqualTo("2026-03-04");
    assertThat(of("p", yaml.formatted("2026-03-05") + rows, Sample.TODAY).from())
        .isEqualTo("2026-03-06");
    assertThat(of("p", yaml.formatted("2026-03-05") + rows, Sample.TODAY).to())
        .isEqualTo("2026-03-06");
  }

  @Test
  void aSignatureThatHoldsItIsLackingAlone() {
    Readiness held =
        of(
            "close",
            """
            tasks: [{id: close, what: Close, takes: 1 d}]
            substitutions:
              - {id: thin, instead-of: {what: thick, qty: 1}, grade: finish, why: here, hold: close}
            """,
            Sample.TODAY);
    assertThat(held.lacks())
        .extracting(Readiness.Lack::words)
        .containsExactly("signature for thin");
    assertThat(held.lacksOnly(Readiness.Kind.SIGNATURE)).isTrue();
    assertThat(held.lacksOnly(Readiness.Kind.TOOL)).isFalse();
  }

  @Test
  void aSignatureForATaskThatNobodyKnowsIsLackingEverywhere() {
    assertThat(
            lacksOfFaulty(
                """
                tasks: [{id: close, what: Close, takes: 1 d}]
                substitutions:
                  - {id: thin, instead-of: {what: thick, qty: 1}, grade: finish, why: here, hold: clsoe}
                """))
        .containsExactly("signature for thin, which may hold it: there is no task “clsoe”");
  }

  @Test
  void aPersonNobodyKnowsIsToldAndOthersAreAsked() {
    String yaml = "tasks: [{id: lift, what: Lift, takes: 1 d, who: [nora, pell]}]";
    assertThat(of("lift", yaml, Sample.TODAY).people()).containsExactly("Pell");
    assertThat(lacks("lift", yaml)).isEmpty();
  }

  private static final String AWAY =
      """
      parties: [{id: ivo, name: Ivo, role: helper, off: [2026-03-01..2026-03-03, 2026-03-04]}]
      tasks: [{id: lift, what: Lift, takes: 1 d, who: [ivo]}]
      """;

  @Test
  void aTaskWaitsForWhoeverIsAway() {
    Readiness lift = of("lift", AWAY, Sample.TODAY);
    assertThat(lift.lacks())
        .extracting(Readiness.Lack::words)
        .containsExactly("Ivo is away until 4\u00a0March\u00a02026");
    assertThat(lift.lacksOnly(Readiness.Kind.PERSON)).isTrue();
    assertThat(lift.from()).isEqualTo("2026-03-05");
    assertThat(lift.to()).isEqualTo("2026-03-05");
    assertThat(of("lift", AWAY, LocalDate.of(2026, 3, 5)).isReady()).isTrue();
    assertThat(of("lift", AWAY, LocalDate.of(2026, 3, 4)).isReady()).isFalse();
  }

  @Test
  void whatIsReadyComesWithTheLeastFloatFirst() {
    Facts now =
        Facts.of(
            Sample.ledger(
                """
                tasks:
                  - {id: a, what: A, takes: 1 d}
                  - {id: b, what: B, takes: 9 d, place: indoors}
                  - {id: c, what: C, takes: 1 d, after: [b]}
                  - {id: d, what: D, takes: 1 d, finished: 2026-02-27}
                """),
            Sample.TODAY);
    assertThat(Readiness.ready(now)).extracting(r -> r.task().id()).containsExactly("b", "a");
    assertThat(Readiness.indoors(now)).extracting(r -> r.task().id()).containsExactly("b");
  }
}

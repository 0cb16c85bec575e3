package kitwright.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How the records of a ledger become a network. Sample's today is Monday, 2 March 2026. */
class PlanTest {
  private static final LocalDate MONDAY = Sample.TODAY;

  private static Plan plan(String tasks) {
    return Plan.on(Facts.of(Sample.ledger(tasks), MONDAY));
  }

  private static LocalDate starts(Plan plan, String task) {
    return plan.schedule().of(task).earliestStart().toLocalDate();
  }

  @Test
  void aDayIsAWorkingDayAndAWeekTheWorkingDaysOfAWeek() {
    Plan plan =
        plan(
            """
            build: {name: S, currency: EUR, started: 2026-01-05, week: {days: [mon, tue, sat], hours: 6}}
            tasks:
              - {id: a, what: A, takes: 2 d}
              - {id: b, what: B, takes: 1 w}
              - {id: c, what: C, takes: 90 min}
            """);
    assertThat(plan.schedule().of("a").earliestFinish()).isEqualTo("2026-03-03T14:00");
    assertThat(plan.schedule().of("b").earliestFinish()).isEqualTo("2026-03-07T14:00");
    assertThat(plan.schedule().of("c").earliestFinish()).isEqualTo("2026-03-02T09:30");
  }

  @Test
  void aLagIsWorkingTimeAndACureRunsThroughNightsAndSundays() {
    Plan plan =
        plan(
            """
            tasks:
              - {id: glue, what: Glue, takes: 5 d, wait: 48 h}
              - {id: cured, what: Cured, takes: 1 d, after: [glue]}
              - {id: lagged, what: Lagged, takes: 1 d, after: [{task: glue, lag: 2 d}]}
            """);
    // glued on Friday evening; cured by Sunday evening, so that Monday is free
    assertThat(starts(plan, "cured")).isEqualTo("2026-03-09");
    assertThat(starts(plan, "lagged")).isEqualTo("2026-03-11");
  }

  @Test
  void daysOffAndOtherDaysOfTheWeekAreNotWorked() {
    Plan plan =
        plan(
            """
            build: {name: S, currency: EUR, started: 2026-01-05, off: [2026-03-03..2026-03-05]}
            tasks: [{id: a, what: A, takes: 2 d}]
            """);
    assertThat(plan.schedule().of("a").earliestFinish().toLocalDate()).isEqualTo("2026-03-06");
    Plan named =
        plan(
            """
            build: {name: S, currency: EUR, started: 2026-01-05, off: [{days: 2026-03-03..2026-03-05, name: Fair}, 2026-03-06]}
            tasks: [{id: a, what: A, takes: 2 d}]
            """);
    assertThat(named.schedule().of("a").earliestFinish().toLocalDate()).isEqualTo("2026-03-09");
  }

  @Test
  void aDayOfSixteenHoursOrMoreEndsOnItsOwnDay() {
    for (int hours : new int[] {15, 16, 23, 24}) {
      Plan plan =
          plan(
              ("build: {name: S, currency: EUR, started: 2026-01-05, week: {days: [mon, tue],"
                      + " hours: %d}}\n"
                      + "tasks: [{id: a, what: A, takes: 1 d}, {id: b, what: B, takes: 1 d, after:"
                      + " [a]}]\n")
                  .formatted(hours));
      assertThat(plan.planned("a").orElseThrow().lastDay()).isEqualTo(MONDAY);
      assertThat(plan.workableOn("b")).isEqualTo(MONDAY.plusDays(1));
      assertThat(plan.schedule().lastDay()).isEqualTo(MONDAY.plusDays(1));
    }
  }

  /** It was told on Tuesday: work that ends on Monday at midnight. */
  @Test
  void whatTakesNoTimeHappensOnTheDayThatEndsAtMidnight() {
    for (int hours : new int[] {15, 16, 23, 24}) {
      Plan plan =
          plan(
              ("build: {name: S, currency: EUR, started: 2026-01-05, week: {days: [mon, tue],"
                      + " hours: %d}}\n"
                      + "tasks: [{id: a, what: A, takes: 1 d}, {id: m, what: M, takes: 0 d, after:"
                      + " [a]}, {id: n, what: N, takes: 0 d, after: [m]}, {id: o, what: O, takes: 0"
                      + " d}, {id: z, what: Z, takes: 2 d}]\n")
                  .formatted(hours));
      for (String each : List.of("m", "n")) {
        Planned planned = plan.planned(each).orElseThrow();
        assertThat(planned.earliestStart().toLocalDate()).as(each + hours).isEqualTo(MONDAY);
        assertThat(planned.lastDay()).isEqualTo(MONDAY);
        assertThat(planned.latestStart().toLocalDate()).isEqualTo(MONDAY.plusDays(1));
        assertThat(planned.lastDayAtLatest()).isEqualTo(MONDAY.plusDays(1));
      }
      assertThat(plan.planned("o").orElseThrow().lastDay()).as("at once").isEqualTo(MONDAY);
    }
  }

  @Test
  void aWithdrawnTaskIsNoPartOfThePlanNorAreLinksToIt() {
    Plan plan =
        plan(
            """
            tasks:
              - {id: a, what: A, takes: 9 d, withdrawn: 2026-02-20}
              - {id: b, what: B, takes: 1 d, after: [a]}
            """);
    assertThat(plan.tasks()).extracting(task -> task.id()).containsExactly("b");
    assertThat(plan.network().faults()).isEmpty();
    assertThat(starts(plan, "b")).isEqualTo(MONDAY);
  }

  private static Plan logged(String task, String... log) {
    var files = new java.util.HashMap<String, String>();
    files.put("build.yaml", "build: {name: S, currency: EUR, started: 2026-01-05}\n");
    files.put("tasks.yaml", "tasks:\n  - " + task + "\n");
    for (String day : log) {
      files.put("log/" + day.substring(0, 10) + ".md", "---\nday: " + day + "\n---\n");
    }
    Findings faults = new Findings();
    Ledger ledger = Sample.read(Map.copyOf(files), faults).orElseThrow();
    assertThat(faults.inOrder()).isEmpty();
    return Plan.on(Facts.of(ledger, MONDAY));
  }

  @Test
  void theLatestDayOfTheLogTellsTheProgress() {
    Plan plan =
        logged(
            "{id: a, what: A, takes: 10 d}",
            "2026-02-10\ntasks: {a: 60 %}",
            "2026-02-20\ntasks: {a: 40 %}",
            "2026-03-09\ntasks: {a: 90 %}");
    assertThat(plan.network().activity("a").orElseThrow().headway())
        .isEqualTo(new Headway.Begun(LocalDate.of(2026, 2, 10), 0.4));
    assertThat(plan.schedule().of("a").earliestFinish().toLocalDate()).isEqualTo("2026-03-09");
  }

  @Test
  void aShareInTheTaskItselfHoldsOnlyWhereTheLogNeverNamesIt() {
    String task = "{id: a, what: A, takes: 10 d, progress: 80 %}";
    assertThat(logged(task, "2026-02-20\ntasks: {a: 40 %}").planned("a").orElseThrow().lastDay())
        .isEqualTo("2026-03-09");
    assertThat(logged(task, "2026-02-20\ntasks: {}").planned("a").orElseThrow().lastDay())
        .isEqualTo("2026-03-03");
  }

  @Test
  void workGoesOnTomorrowWhereTodayIsWrittenUp() {
    Plan plan = logged("{id: a, what: A, takes: 2 d}", "2026-03-02\ntasks: {a: 50 %}");
    assertThat(plan.morning()).isEqualTo(MONDAY.plusDays(1));
    assertThat(plan.workableOn("a")).isEqualTo(MONDAY.plusDays(1));
    assertThat(plan.schedule().lastDay()).isEqualTo(MONDAY.plusDays(1));
  }

  @Test
  void whatIsLeftOfATaskBegunTooEarlyWaitsForWhatComesBefore() {
    Plan plan =
        plan(
            """
            tasks:
              - {id: a, what: A, takes: 5 d}
              - {id: b, what: B, takes: 4 d, after: [a], started: 2026-02-23, progress: 50 %}
            """);
    assertThat(plan.workableOn("b")).isEqualTo("2026-03-09");
    assertThat(plan.schedule().of("b").earliestStart().toLocalDate()).isEqualTo("2026-02-23");
    assertThat(plan.waits(plan.task("b").orElseThrow()))
        .containsExactly(
            new Wait(Wait.Kind.UNFINISHED, "a", Optional.of(LocalDate.of(2026, 3, 9))));
  }

  @Test
  void aTaskWaitsForALagForAnUnknownTaskAndForItself() {
    Plan plan =
        plan(
            """
            tasks:
              - {id: done, what: Done, takes: 1 d, started: 2026-02-27, finished: 2026-02-27}
              - {id: lag, what: Lag, takes: 1 d, after: [{task: done, lag: 2 d}]}
              - {id: over, what: Over, takes: 1 d, after: [{task: done, lag: 0 d}]}
              - {id: lost, what: Lost, takes: 1 d, after: [nowhere]}
              - {id: up, what: Up, takes: 1 d, withdrawn: 2026-02-20}
              - {id: gone, what: Gone, takes: 1 d, after: [up]}
              - {id: self, what: Self, takes: 1 d, after: [self]}
              - {id: r, what: R, takes: 1 d, after: [s]}
              - {id: s, what: S, takes: 1 d, after: [r]}
            """);
    assertThat(kinds(plan, "lag")).containsExactly(Wait.Kind.CURING);
    assertThat(plan.waits(plan.task("lag").orElseThrow()).get(0).until())
        .contains(LocalDate.of(2026, 3, 4));
    assertThat(kinds(plan, "over")).isEmpty();
    assertThat(kinds(plan, "lost")).containsExactly(Wait.Kind.UNKNOWN);
    assertThat(kinds(plan, "gone")).as("what was given up is waited for no more").isEmpty();
    assertThat(kinds(plan, "self")).containsExactly(Wait.Kind.RING);
    assertThat(kinds(plan, "r")).contains(Wait.Kind.RING);
    assertThat(kinds(plan, "s")).contains(Wait.Kind.RING);
  }

  private static List<Wait.Kind> kinds(Plan plan, String task) {
    return plan.waits(plan.task(task).orElseThrow()).stream().map(Wait::kind).toList();
  }

  @Test
  void aMilestoneAfterACureHappensWhenTheCureEndsNotOnTheEveningBeforeTheWeekend() {
    Plan plan =
        plan(
            """
            tasks:
              - {id: glue, what: Glue, takes: 5 d, wait: 40 h}
              - {id: hard, what: Hard, takes: 0 d, after: [glue]}
              - {id: next, what: Next, takes: 0 d, after: [hard]}
            """);
    // glued on Friday at 16:00; cured on Sunday at 8:00
    assertThat(plan.schedule().of("hard").earliestStart()).isEqualTo("2026-03-08T08:00");
    assertThat(plan.schedule().of("next").earliestStart()).isEqualTo("2026-03-08T08:00");
  }

  @Test
  void allOfItDoneIsFinishedOnThatDay() {
    Plan plan = logged("{id: a, what: A, takes: 3 d}", "2026-02-20\ntasks: {a: 100 %}");
    assertThat(plan.isOpen("a")).isFalse();
    assertThat(plan.schedule().of("a").earliestFinish().toLocalDate()).isEqualTo("2026-02-20");
  }

  @Test
  void whatIsWrittenForLaterDaysIsNotKnownYet() {
    Plan plan =
        plan("tasks: [{id: a, what: A, takes: 1 d, started: 2026-03-01, finished: 2026-03-05}]");
    assertThat(plan.isOpen("a")).isTrue();
    assertThat(plan.isBegun("a")).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "'9 h, 3 h, 4 h', 180, 180, 180",
    "'2 h, 5 h, 4 h', 300, 300, 300",
    "'2 h, 3 h, 4 h', 120, 180, 240",
    "'3 h, 3 h, 4 h', 180, 180, 240",
    "'2 h, 3 h, 3 h', 120, 180, 180"
  })
  void ofAnEstimateThatDoesNotRiseOnlyTheMiddleCounts(
      String takes, long low, long likely, long high) {
    Plan plan = plan("tasks: [{id: a, what: A, takes: [" + takes + "]}]");
    assertThat(plan.network().activity("a").orElseThrow().takes())
        .isEqualTo(new Estimate(low, likely, high));
  }

  @Test
  void aTaskOfACenturyIsCappedAndNotRefused() {
    Plan plan = plan("tasks: [{id: a, what: A, takes: 999999999999 d}]");
    assertThat(plan.network().activity("a").orElseThrow().takes().high()).isEqualTo(Estimate.MOST);
  }

  @Test
  void freeIsWhatHasNothingUnfinishedOrCuringBeforeIt() {
    Plan plan =
        plan(
            """
            tasks:
              - {id: done, what: Done, takes: 1 d, started: 2026-02-20, finished: 2026-02-20}
              - {id: fresh, what: Fresh, takes: 1 d, wait: 90 h, started: 2026-02-27, finished: 2026-02-27}
              - {id: open, what: Open, takes: 1 d}
              - {id: a, what: A, takes: 1 d, after: [done]}
              - {id: b, what: B, takes: 1 d, after: [fresh]}
              - {id: c, what: C, takes: 1 d, after: [open]}
            """);
    assertThat(plan.waits(plan.task("a").orElseThrow())).isEmpty();
    assertThat(plan.waits(plan.task("b").orElseThrow())).isNotEmpty();
    assertThat(plan.waits(plan.task("c").orElseThrow())).isNotEmpty();
    assertThat(plan.schedule().of("b").earliestStart())
        .isEqualTo(LocalDateTime.of(2026, 3, 3, 10, 0));
  }

  @Test
  void aRingIsToldByTheNamesOfItsTasks() {
    String ring =
        """
        tasks:
          - {id: a, what: Bevel, takes: 1 d, after: [c]}
          - {id: b, what: Plank, takes: 1 d, after: [a]}
          - {id: c, what: Fair, takes: 1 d, after: [b]}
        """;
    assertThat(Sample.findings(new TaskCycle(), ring))
        .singleElement()
        .satisfies(
            finding -> assertThat(finding.what()).contains("“Bevel” → “Plank” → “Fair” → “Bevel”"));
  }

  @Test
  void aLongRingIsToldByItsBeginningAndItsEnd() {
    StringBuilder tasks = new StringBuilder("tasks:\n");
    for (int i = 0; i < 1000; i++) {
      tasks.append(
          "  - {id: t%03d, what: T%d, takes: 1 h, after: [t%03d]}\n"
              .formatted(i, i, (i + 999) % 1000));
    }
    List<Finding> found = Sample.findings(new TaskCycle(), tasks.toString());
    assertThat(found).hasSize(1);
    assertThat(found.get(0).what())
        .endsWith("“T0” → “T1” → “T2” → “T3” → “T4” → “T5” → “T6” → … 992 more … → “T999” → “T0”.");
    assertThat(found.get(0).records()).hasSize(8);
  }

  @Test
  void whatComesNextIsWhatFollowsOrFollowsThat() {
    Plan plan =
        plan(
            """
            tasks:
              - {id: a, what: A, takes: 1 d}
              - {id: over, what: Over, takes: 1 d, after: [a], finished: 2026-02-27}
              - {id: next, what: Next, takes: 1 d, after: [over]}
              - {id: last, what: Last, takes: 1 d, after: [next]}
            """);
    assertThat(plan.nextAfter(List.of("over"))).containsExactly("next");
    assertThat(plan.nextAfter(List.of("a"))).containsExactly("next");
    assertThat(plan.nextAfter(List.of("last"))).isEmpty();
    assertThat(plan.nextAfter(List.of("a", "over"))).as("once").containsExactly("next");
  }

  @Test
  void whatIsAheadComesByItsDayThenByItsFloat() {
    Plan plan =
        plan(
            """
            tasks:
              - {id: short, what: Short, takes: 1 d}
              - {id: long, what: Long, takes: 3 d}
              - {id: done, what: Done, takes: 1 d, finished: 2026-02-27}
              - {id: after, what: After, takes: 1 d, after: [short]}
            """);
    assertThat(plan.ahead()).extracting(Planned::id).containsExactly("long", "short", "after");
    assertThat(plan.latestOn("short")).isEqualTo("2026-03-03");
    assertThat(plan.latestOn("after")).isEqualTo("2026-03-04");
    assertThat(plan.horizon()).isEqualTo("2026-04-13");
  }

  /** Ten days, four of them left: it may go on as late as Friday, 13 March, six days from today. */
  @Test
  void workUnderWayMayGoOnAsLateAsItsFloatLets() {
    Plan plan =
        plan(
            """
            tasks:
              - {id: begun, what: Begun, takes: 10 d, started: 2026-02-20, progress: 60 %}
              - {id: long, what: Long, takes: 13 d}
            """);
    assertThat(plan.isBegun("begun")).isTrue();
    assertThat(plan.isBegun("long")).isFalse();
    assertThat(plan.latestOn("begun")).isEqualTo("2026-03-13");
  }
}

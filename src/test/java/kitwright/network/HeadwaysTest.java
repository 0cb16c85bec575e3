package kitwright.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import kitwright.Sample;
import kitwright.finding.Findings;
import kitwright.ledger.Ledger;
import kitwright.ledger.Task;
import kitwright.value.Place;
import kitwright.value.Ref;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far a task has come by an evening. Sample's days lie around Monday, 2 March 2026. */
class HeadwaysTest {
  private static final String LOG =
      """
      tasks: [{id: a, what: A, takes: 5 d%s}]
      ---
      day: 2026-02-10
      tasks: {a: 30 %%}
      ---
      ---
      day: 2026-02-20
      tasks: {a: 100 %%}
      ---
      ---
      day: 2026-02-23
      tasks: {a: 100 %%}
      ---
      """;

  private static Headway headway(String yaml, String evening) {
    Ledger ledger = Sample.ledger(yaml);
    return Headways.of(ledger, LocalDate.parse(evening)).of(task(ledger));
  }

  private static BigDecimal share(String yaml, String evening) {
    Ledger ledger = Sample.ledger(yaml);
    return Headways.of(ledger, LocalDate.parse(evening)).share(task(ledger));
  }

  private static Task task(Ledger ledger) {
    return ledger.tasks().get(0);
  }

  private static String alone(String more) {
    return "tasks: [{id: a, what: A, takes: 5 d" + more + "}]";
  }

  private static Headway done(String from, String to) {
    return new Headway.Done(LocalDate.parse(from), LocalDate.parse(to));
  }

  /** A later word says that something is left: what follows must not begin on the older one. */
  @Test
  void whatTheLogReopensIsNotFinished() {
    String yaml =
        alone(", started: 2026-02-09, finished: 2026-02-12")
            + "\n---\nday: 2026-02-13\ntasks: {a: 80 %}\n---\n";
    assertThat(headway(yaml, "2026-02-12")).isEqualTo(done("2026-02-09", "2026-02-12"));
    assertThat(headway(yaml, "2026-02-13"))
        .isEqualTo(new Headway.Begun(LocalDate.parse("2026-02-09"), 0.8));
    String sameDay = yaml.replace("day: 2026-02-13", "day: 2026-02-12");
    assertThat(headway(sameDay, "2026-02-13")).isEqualTo(done("2026-02-09", "2026-02-12"));
    String all = yaml.replace("80 %", "100 %");
    assertThat(headway(all, "2026-02-13")).isEqualTo(done("2026-02-09", "2026-02-12"));
  }

  /** One of its days is wrong, and nobody knows which: it is begun, and not done by that. */
  @Test
  void whatEndedBeforeItBeganIsNotDone() {
    String yaml = alone(", started: 2026-02-20, finished: 2026-02-10");
    assertThat(headway(yaml, "2026-02-27")).isInstanceOf(Headway.Begun.class);
    assertThat(share(yaml, "2026-02-27")).isZero();
    String oneDay = alone(", started: 2026-02-20, finished: 2026-02-20");
    assertThat(headway(oneDay, "2026-02-27")).isEqualTo(done("2026-02-20", "2026-02-20"));
  }

  @Test
  void theLatestDayOfTheLogUpToTheEveningCounts() {
    String yaml = LOG.formatted(", progress: 70 %");
    assertThat(headway(yaml, "2026-02-09")).isEqualTo(Headway.WAITING);
    assertThat(headway(yaml, "2026-02-10"))
        .isEqualTo(new Headway.Begun(LocalDate.of(2026, 2, 10), 0.3));
    assertThat(share(yaml, "2026-02-19")).isEqualByComparingTo("0.3");
  }

  @ParameterizedTest
  @CsvSource({"2026-02-20", "2026-02-22", "2026-02-23", "2026-03-30"})
  void allOfItIsFinishedOnTheDayOnWhichTheLogSaidSoFirst(String evening) {
    assertThat(headway(LOG.formatted(""), evening)).isEqualTo(done("2026-02-10", "2026-02-20"));
  }

  @Test
  void theDayWrittenAsFinishedCountsBeforeTheLog() {
    assertThat(headway(LOG.formatted(", finished: 2026-02-25"), "2026-03-02"))
        .isEqualTo(done("2026-02-10", "2026-02-25"));
    assertThat(headway(LOG.formatted(", finished: 2026-02-12"), "2026-03-02"))
        .isEqualTo(done("2026-02-10", "2026-02-12"));
  }

  /** Began on Monday 2 March and takes five working days: by Friday, whenever one asks. */
  @ParameterizedTest
  @CsvSource({
    "2026-03-02, 2026-03-02", // done sooner than it takes, since it is done
    "2026-03-05, 2026-03-05",
    "2026-03-06, 2026-03-06",
    "2026-03-09, 2026-03-06",
    "2026-12-30, 2026-03-06"
  })
  void allDoneWithoutADayTakesTheLastDayKnown(String evening, String finished) {
    assertThat(headway(alone(", started: 2026-03-02, progress: 100 %"), evening))
        .isEqualTo(done("2026-03-02", finished));
  }

  @Test
  void allDoneWithoutAnyDayIsFinishedWhenOneAsks() {
    String yaml = alone(", progress: 100 %");
    assertThat(headway(yaml, "2026-03-02")).isEqualTo(done("2026-03-02", "2026-03-02"));
    assertThat(headway(yaml, "2026-03-09")).isEqualTo(done("2026-03-09", "2026-03-09"));
  }

  @Test
  void aShareWithoutADayIsNotOfADayBeforeTheWorkBeganNorBeforeItEnded() {
    String yaml = alone(", started: 2026-03-02, finished: 2026-03-06, progress: 100 %");
    assertThat(headway(yaml, "2026-03-01")).isEqualTo(Headway.WAITING);
    assertThat(headway(yaml, "2026-03-05"))
        .isEqualTo(new Headway.Begun(LocalDate.of(2026, 3, 2), 0));
    assertThat(share(yaml, "2026-03-05")).isZero();
    assertThat(share(yaml, "2026-03-06")).isOne();
  }

  @Test
  void moreThanAllIsAll() {
    assertThat(share(alone(", progress: 140 %"), "2026-03-02")).isOne();
  }

  @Test
  void theFirstSignOfWorkIsTheEarlierOfTaskAndLogAndStandsWhereItIsWritten() {
    Ledger ledger = Sample.ledger(LOG.formatted(", started: 2026-02-05"));
    Headways headways = Headways.of(ledger, LocalDate.of(2026, 3, 2));
    Ref a = new Ref("a", task(ledger).at().record());
    assertThat(headways.beginning(a))
        .contains(
            new Headways.Beginning(
                Optional.of(LocalDate.of(2026, 2, 5)), task(ledger).at().of("started")));
    Ledger later = Sample.ledger(LOG.formatted(", started: 2026-02-15"));
    assertThat(Headways.of(later, LocalDate.of(2026, 3, 2)).beginning(a).orElseThrow().on())
        .contains(LocalDate.of(2026, 2, 10));
    assertThat(Headways.of(later, LocalDate.of(2026, 2, 9)).beginning(a)).isEmpty();
  }

  private static Headways on(String yaml) {
    return Headways.of(Sample.ledger(yaml), LocalDate.of(2026, 3, 2));
  }

  @Test
  void workHasEndedByItsRecordOrWhereItHasNoneByTheLog() {
    Ref a = new Ref("a", new Place("x.yaml", 1, 1, 1, 1));
    assertThat(on(alone(", started: 2026-02-20")).hasEnded(a)).isFalse();
    assertThat(on(alone(", finished: 2026-02-20")).hasEnded(a)).isTrue();
    assertThat(on(LOG.formatted("")).hasEnded(a)).as("all of it by the log").isTrue();
    String log = LOG.formatted("").substring(LOG.formatted("").indexOf("---"));
    assertThat(lost(log).hasEnded(a)).isTrue();
    assertThat(lost(log.replace("100 %", "90 %")).hasEnded(a)).isFalse();
    assertThat(on("tasks: []\n").hasEnded(a)).as("nobody tells of it").isFalse();
  }

  /** The log of a task that has no record. */
  private static Headways lost(String log) {
    Ledger ledger = Sample.read("tasks: []\n" + log, new Findings()).orElseThrow();
    return Headways.of(ledger, LocalDate.of(2026, 3, 2));
  }

  /** Where work is finished and nobody wrote when it began, that is its first sign. */
  @ParameterizedTest
  @CsvSource({
    "'started: 2026-02-05', started, 2026-02-05",
    "'started: 2026-02-05, finished: 2026-02-05', started, 2026-02-05",
    "'started: 2026-02-05, finished: 2026-02-09', started, 2026-02-05",
    "'started: 2026-02-09, finished: 2026-02-05', finished, 2026-02-05",
    "'finished: 2026-02-09', finished, 2026-02-09"
  })
  void theFirstSignOfWorkStandsUnderTheKeyThatTellsIt(String days, String key, LocalDate on) {
    Ledger ledger = Sample.ledger(alone(", " + days));
    Ref a = new Ref("a", task(ledger).at().record());
    assertThat(Headways.of(ledger, LocalDate.of(2026, 3, 2)).beginning(a))
        .contains(new Headways.Beginning(Optional.of(on), task(ledger).at().of(key)));
  }

  /** Its log began on the 10th, and its record says that it was finished on the 8th. */
  @Test
  void workDoesNotBeginAfterItsEnd() {
    String yaml = LOG.formatted(", finished: 2026-02-25").replace("2026-02-25", "2026-02-08");
    assertThat(headway(yaml, "2026-03-02")).isEqualTo(done("2026-02-08", "2026-02-08"));
  }

  /** What it says of itself is of a day on which it had begun, or had ended. */
  @Test
  void aShareWithoutADayIsNotOfADayBeforeTheLogNamesItOrItBegins() {
    assertThat(share(alone(", started: 2026-03-02, progress: 40 %"), "2026-03-01")).isZero();
    assertThat(share(alone(", started: 2026-03-02, progress: 40 %"), "2026-03-02"))
        .isEqualByComparingTo("0.4");
    assertThat(share(alone(", finished: 2026-03-02, progress: 40 %"), "2026-03-01")).isZero();
    assertThat(share(LOG.formatted(", progress: 70 %"), "2026-02-10")).isEqualByComparingTo("0.3");
  }

  @Test
  void progressWithoutADayIsASignOfWorkWithoutADay() {
    Ledger ledger = Sample.ledger(alone(", progress: 10 %"));
    Headways headways = Headways.of(ledger, LocalDate.of(2026, 3, 2));
    Ref a = new Ref("a", task(ledger).at().record());
    assertThat(headways.beginning(a))
        .contains(new Headways.Beginning(Optional.empty(), task(ledger).at().of("progress")));
    assertThat(headways.begun(task(ledger))).isEmpty();
  }

  @Test
  void aDayIsWrittenUpWhereItsLogIsThere() {
    Ledger ledger = Sample.ledger(LOG.formatted(""));
    assertThat(Headways.of(ledger, LocalDate.of(2026, 2, 20)).isDayWrittenUp()).isTrue();
    assertThat(Headways.of(ledger, LocalDate.of(2026, 2, 21)).isDayWrittenUp()).isFalse();
  }
}

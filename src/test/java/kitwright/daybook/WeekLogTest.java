package kitwright.daybook;

import static java.math.BigDecimal.ONE;
import static java.math.BigDecimal.ZERO;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import java.math.BigDecimal;
import kitwright.ledger.Evidence;
import kitwright.ledger.LogDay;
import org.junit.jupiter.api.Test;

class WeekLogTest {
  private static final String TASKS =
      """
      tasks:
        - {id: planking, what: Plank the hull, phase: hull, takes: 10 d}
        - {id: fairing, what: Fair the hull, phase: hull, takes: 3 d}
        - {id: mast, what: Glue the mast, phase: spars, takes: 2 d, started: 2026-02-24, finished: 2026-02-28}
        - {id: sweeping, what: Sweep the barn, takes: 1 d}
      """;

  @Test
  void holdsTheDaysFromMondayToSunday() {
    WeekLog log =
        LoggedWeek.log(
            TASKS,
            "---\nday: 2026-02-22\n---\nSunday before",
            "---\nday: 2026-02-23\n---\n",
            "---\nday: 2026-03-01\n---\n",
            "---\nday: 2026-03-02\n---\nMonday after");
    assertThat(log.days()).extracting(LogDay::id).containsExactly("2026-02-23", "2026-03-01");
  }

  @Test
  void sharesADaysHoursEquallyAmongItsTasks() {
    WeekLog log =
        LoggedWeek.log(
            TASKS,
            """
            ---
            day: 2026-02-23
            hours: {nora: 6, pell: 2}
            tasks: {planking: 10 %, mast: 50 %}
            ---
            """,
            "---\nday: 2026-02-24\nhours: {nora: 1.5}\ntasks: {sweeping: 100 %}\n---\n",
            "---\nday: 2026-02-25\nhours: {nora: 0.5}\n---\n");
    assertThat(log.hours().total()).isEqualByComparingTo("10");
    assertThat(log.hours().byPerson())
        .containsExactly(entry("nora", new BigDecimal("8.0")), entry("pell", new BigDecimal("2")));
    assertThat(log.hours().byPhase().keySet()).containsExactly("hull", "spars", "other work");
    assertThat(log.hours().byPhase().values().stream().map(BigDecimal::stripTrailingZeros))
        .containsExactly(new BigDecimal("4"), new BigDecimal("4"), new BigDecimal("2"));
  }

  @Test
  void losesNothingWhereHoursDoNotDivide() {
    WeekLog log =
        LoggedWeek.log(
            TASKS,
            """
            ---
            day: 2026-02-23
            hours: {nora: 10}
            tasks: {planking: 1 %, mast: 2 %, sweeping: 3 %}
            ---
            """);
    assertThat(log.hours().byPhase().values().stream().reduce(ZERO, BigDecimal::add))
        .isEqualByComparingTo("10");
  }

  @Test
  void tellsHowFarEachTaskCame() {
    WeekLog log =
        LoggedWeek.log(
            TASKS,
            "---\nday: 2026-02-20\ntasks: {planking: 20 %}\n---\n",
            "---\nday: 2026-02-23\ntasks: {planking: 30 %}\n---\n",
            "---\nday: 2026-02-26\ntasks: {planking: 45 %, fairing: 5 %}\n---\n",
            "---\nday: 2026-03-04\ntasks: {planking: 90 %}\n---\n");
    assertThat(log.progress())
        .extracting(p -> p.task().id(), p -> p.before().done(), p -> p.after().done())
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(
                "planking", new BigDecimal("0.2"), new BigDecimal("0.45")),
            org.assertj.core.groups.Tuple.tuple("fairing", ZERO, new BigDecimal("0.05")),
            org.assertj.core.groups.Tuple.tuple("mast", ZERO, ONE));
    assertThat(log.finished()).extracting(p -> p.task().id()).containsExactly("mast");
  }

  @Test
  void drawsTogetherWhatWasUsedAcrossUnits() {
    WeekLog log =
        LoggedWeek.log(
            "stock: [{id: epoxy, what: epoxy, qty: 20 kg}]",
            "---\nday: 2026-02-23\nused: [{stock: epoxy, qty: 1.2 kg}]\n---\n",
            "---\nday: 2026-02-24\nused: [{stock: epoxy, qty: 300 g}]\n---\n");
    assertThat(log.used()).extracting(Consumed::what).containsExactly("epoxy");
    assertThat(log.used()).extracting(each -> each.qty().toString()).containsExactly("1.5 kg");
  }

  @Test
  void callsWhatWasUsedByItsName() {
    WeekLog log =
        LoggedWeek.log(
            """
            kit: [{id: bolt, what: bronze bolt, qty: 4}]
            materials: [{id: filler, what: light filler, kind: other, density: 400 kg/m3}]
            """,
            """
            ---
            day: 2026-02-23
            used: [{item: bolt, qty: 2}, {material: filler, qty: 1 kg}, {item: bolt, qty: 1 kg}]
            ---
            """);
    assertThat(log.used())
        .as("pieces and a weight of one thing do not add up")
        .extracting(each -> each.what() + " " + each.qty())
        .containsExactly("bronze bolt 2 each", "bronze bolt 1 kg", "light filler 1 kg");
  }

  /** Whoever did nothing, and a phase that nobody worked on, is not named. */
  @Test
  void tellsNoHoursOfNobody() {
    WeekLog log =
        LoggedWeek.log(TASKS, "---\nday: 2026-02-23\nhours: {nora: 2}\ntasks: {mast: 50 %}\n---\n");
    assertThat(log.hours().byPerson()).containsOnlyKeys("nora");
    assertThat(log.hours().byPhase()).containsOnlyKeys("spars");
  }

  /** Begun or finished by its own days, without a word in the log; done before is not done now. */
  @Test
  void aTaskIsTouchedByItsOwnDaysToo() {
    String tasks =
        """
        tasks:
          - {id: begun, what: A, takes: 9 d, started: 2026-02-24}
          - {id: ended, what: B, takes: 9 d, started: 2026-02-02, finished: 2026-02-25}
          - {id: before, what: C, takes: 9 d, started: 2026-02-02, finished: 2026-02-20}
          - {id: again, what: D, takes: 9 d, started: 2026-02-02, finished: 2026-02-20}
        """;
    WeekLog log = LoggedWeek.log(tasks, "---\nday: 2026-02-24\ntasks: {again: 100 %}\n---\n");
    assertThat(log.progress())
        .extracting(each -> each.task().id())
        .containsExactly("begun", "ended", "again");
    assertThat(log.finished()).extracting(each -> each.task().id()).containsExactly("ended");
    assertThat(log.progress())
        .filteredOn(Progress::begun)
        .singleElement()
        .satisfies(each -> assertThat(each.task().id()).isEqualTo("begun"));
  }

  @Test
  void listsPhotos() {
    WeekLog log =
        LoggedWeek.log(
            TASKS, "---\nday: 2026-02-23\nphotos: [{file: evidence/a.png, says: staves}]\n---\n");
    assertThat(log.photos()).extracting(Evidence::file).containsExactly("evidence/a.png");
  }

  @Test
  void isEmptyForAWeekThatNobodyWroteUp() {
    WeekLog log =
        LoggedWeek.log(
            TASKS.replaceAll("started.*(?=})", "takes: 1 d").replace("takes: 2 d, takes", "takes"));
    assertThat(log.days()).isEmpty();
    assertThat(log.progress()).isEmpty();
    assertThat(log.hours().total()).isZero();
  }
}

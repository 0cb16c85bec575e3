package kitwright.openmatter;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;

/**
 * Signatures, tools and weather, reminders and the next working day, in the words in which they are
 * told. Sample's today is Monday, 2 March 2026.
 */
class ToldDaysTest {

  @Test
  void aSubstitutionIsSignedBeforeItsHeldWork() {
    assertThat(told(work("") + substitution(", grade: finish, hold: side")))
        .containsExactly(
            "signature substitution thin | nobody has signed | A. Osterlund or Nora | have signed"
                + " what “kitwright fingerprint thin --statement” prints | stops side, needed by"
                + " 2026-03-20");
    assertThat(told(work("") + substitution(", grade: finish")))
        .containsExactly(
            "signature substitution thin | nobody has signed | A. Osterlund or Nora | have signed"
                + " what “kitwright fingerprint thin --statement” prints");
    assertThat(
            told(
                work("")
                    + substitution(
                        ", grade: structural, hold: side, proposed: {by: nora, on: 2026-02-20}")))
        .containsExactly(
            "assessment substitution thin | no assessment; nobody has signed | you | have it"
                + " assessed | stops side, needed by 2026-03-20");
    assertThat(told(work(", started: 2026-02-27") + substitution(", grade: finish, hold: side")))
        .containsExactly(
            "signature substitution thin | nobody has signed; and the held work has begun | A."
                + " Osterlund or Nora | stop the held work, and have signed what “kitwright"
                + " fingerprint thin --statement” prints | by 2026-03-02 | stops side, needed by"
                + " 2026-03-20");
    assertThat(
            told(
                work(", started: 2026-02-26, finished: 2026-02-27")
                    + substitution(", grade: finish, hold: side")))
        .containsExactly(
            "signature substitution thin | nobody has signed; and the held work has begun | A."
                + " Osterlund or Nora | have signed what “kitwright fingerprint thin --statement”"
                + " prints | by 2026-03-02");
    assertThat(
            told(
                work("")
                    + substitution(
                        ", grade: finish, hold: side, proposed: {by: nora, on: 2026-02-20},"
                            + " sign-offs: [{by: office, on: 2026-02-24, conditions: [{text: glue"
                            + " it twice}]}]")))
        .isEmpty();
    assertThat(
            told(
                work("")
                    + substitution(
                        ", grade: finish, hold: side, proposed: {by: nora, on: 2026-02-20},"
                            + " sign-offs: [{by: office, on: 2026-02-24}]")))
        .isEmpty();
    assertThat(told(work("") + substitution(", grade: finish, hold: side, withdrawn: 2026-02-24")))
        .isEmpty();
  }

  @Test
  void aToolIsAskedForLongerOrGivenBack() {
    assertThat(told(work(", tools: [saw]") + loan("2026-03-01")))
        .containsExactly(
            "tool loan saw | band saw: due 1\u00a0March\u00a02026, overdue, needed until"
                + " 2\u00a0March\u00a02026 at the earliest | Pell | ask Pell to leave it with you"
                + " until 2\u00a0March\u00a02026, or do the work sooner | by 2026-03-02 | stops"
                + " side, needed by 2026-03-20");
    assertThat(told(work("") + loan("2026-03-01")))
        .containsExactly(
            "tool loan saw | band saw: due 1\u00a0March\u00a02026, overdue | you | give it back |"
                + " by 2026-03-02");
    assertThat(told(work(", tools: [saw]") + loan("2026-03-05"))).isEmpty();
    assertThat(told(work(", tools: [saw]") + loan("2026-03-02"))).isEmpty();
    assertThat(
            told(
                work("")
                    + loan("2026-03-09, repair: {found: 2026-02-20, what: blade bent, cost: 20}")))
        .containsExactly(
            "tool loan saw | band saw: blade bent, owed to Pell | you | make it good, about 20.00"
                + " EUR, and write the day under “done” | by 2026-03-09");
    assertThat(
            told(
                work("")
                    + loan(
                        "2026-03-09, repair: {found: 2026-02-20, what: blade bent, by:"
                            + " 2026-03-06}")))
        .containsExactly(
            "tool loan saw | band saw: blade bent, owed to Pell | you | make it good, and write the"
                + " day under “done” | by 2026-03-06");
    assertThat(
            told(
                work("")
                    + loan(
                        "2026-03-09, repair: {found: 2026-02-20, what: blade bent, done:"
                            + " 2026-02-27}")))
        .isEmpty();
  }

  @Test
  void outdoorWorkWaitsForDryDays() {
    assertThat(told(work(", place: outdoors, weather: {dry: 2 d}") + forecast(6, 3, 0, 0, 0)))
        .containsExactly(
            "weather task side | no weather for it before 3\u00a0March\u00a02026 | the weather |"
                + " keep 3\u00a0March\u00a02026 to 4\u00a0March\u00a02026 free for it | expected"
                + " 2026-03-03 | stops side, needed by 2026-03-20");
    assertThat(told(work(", place: outdoors, weather: {dry: 2 d}") + forecast(6, 3, 0, 3, 0, 4)))
        .containsExactly(
            "weather task side | no weather for it in the forecast; the best window lacks 1 day |"
                + " the weather | do indoor work, and look at the next forecast | stops side,"
                + " needed by 2026-03-20");
    assertThat(told(work(", place: outdoors, weather: {dry: 2 d}") + forecast(6, 0, 0, 0)))
        .isEmpty();
    assertThat(told(work(", place: outdoors, weather: {dry: 2 d}") + forecast(-2, 3, 0, 0)))
        .containsExactly(
            "weather task side | no weather for it before 3\u00a0March\u00a02026 | the weather |"
                + " keep 3\u00a0March\u00a02026 to 4\u00a0March\u00a02026 free for it | expected"
                + " 2026-03-03 | stops side, needed by 2026-03-20");
  }

  @Test
  void aPhoneIsRemindedOfEachDay() {
    assertThat(reminders(work("") + substitution(", grade: finish, hold: side")))
        .containsExactly(
            "2026-03-20 to 2026-03-20 | act substitution thin | Last day: A. Osterlund or Nora:"
                + " have signed what “kitwright fingerprint thin --statement” prints (substitution"
                + " thin) | nobody has signed. Next: have signed what “kitwright fingerprint thin"
                + " --statement” prints. Waits for A. Osterlund or Nora. It stops “Side work”.",
            "2026-09-26 to 2026-09-26 | launch | Launch: Sample | The day she shall be in the"
                + " water.");
    assertThat(reminders(work("") + loan("2026-03-09")))
        .containsExactly(
            "2026-03-09 to 2026-03-09 | due loan saw | Give back: band saw | To Pell, due on"
                + " 9\u00a0March\u00a02026.",
            "2026-09-26 to 2026-09-26 | launch | Launch: Sample | The day she shall be in the"
                + " water.");
    assertThat(reminders(work("") + loan("2026-03-01")))
        .containsExactly(
            "2026-03-02 to 2026-03-02 | act loan saw | Last day: give it back (loan saw) | band"
                + " saw: due 1\u00a0March\u00a02026, overdue. Next: give it back. Waits for you.",
            "2026-09-26 to 2026-09-26 | launch | Launch: Sample | The day she shall be in the"
                + " water.");
    assertThat(reminders(work(", place: outdoors, weather: {dry: 2 d}") + forecast(6, 3, 0, 0, 0)))
        .containsExactly(
            "2026-03-03 to 2026-03-03 | weather task side | Weather for: Side work | The first"
                + " window in the forecast; look at the forecast again before you begin.",
            "2026-09-26 to 2026-09-26 | launch | Launch: Sample | The day she shall be in the"
                + " water.");
    assertThat(
            reminders(
                "deliveries: [{id: d, from: kit-maker, expected: 2026-03-09},{id: e, from:"
                    + " kit-maker, expected: 2026-03-01},{id: f, from: kit-maker, received:"
                    + " 2026-02-27}]\n"))
        .containsExactly(
            "2026-03-09 to 2026-03-09 | expected delivery d | Delivery expected: d | Be there, and"
                + " count it the same day.",
            "2026-09-26 to 2026-09-26 | launch | Launch: Sample | The day she shall be in the"
                + " water.");
    assertThat(
            reminders(
                "build: {name: Sample, currency: EUR, started: 2026-01-05, off: [{days:"
                    + " 2026-02-27..2026-03-02, name: fair},2026-03-06,{days: 2026-02-20, name:"
                    + " over}]}\n"))
        .containsExactly(
            "2026-02-27 to 2026-03-02 | off 2026-02-27 | No work: fair | Nothing is planned on"
                + " these days.");
  }

  @Test
  void aHeldTaskThatCanStartSoonIsTold() {
    assertThat(near(work("") + substitution(", grade: finish, hold: side")))
        .containsExactly(
            "Finding[rule=hold-point-near, severity=WARN, at=sample.yaml:4:95, what=“Side work” can"
                + " start on 2\u00a0March\u00a02026, and what it closes up is not released: nobody"
                + " has signed., follows=The work stops there; from 20\u00a0March\u00a02026 on the"
                + " end of the plan moves with it., mend=Have it signed before, or plan"
                + " other work., records=[substitution thin, task side]]");
    assertThat(near(work(", after: [long]") + substitution(", grade: finish, hold: side")))
        .containsExactly(
            "Finding[rule=hold-point-near, severity=WARN, at=sample.yaml:4:95, what=“Side work” can"
                + " start on 23\u00a0March\u00a02026, and what it closes up is not released: nobody"
                + " has signed., follows=The work stops there; from 23\u00a0March\u00a02026 on the"
                + " end of the plan moves with it., mend=Have it signed before, or plan"
                + " other work., records=[substitution thin, task side]]");
    assertThat(
            near(
                work(", after: [{task: long, lag: 200 d}]")
                    + substitution(", grade: finish, hold: side")))
        .isEmpty();
    assertThat(
            near(
                work(", started: 2026-02-26, finished: 2026-02-27")
                    + substitution(", grade: finish, hold: side")))
        .isEmpty();
    assertThat(near(work("") + substitution(", grade: finish"))).isEmpty();
  }

  @Test
  void whatCanGoOnTomorrow() {
    assertThat(next(work("") + substitution(", grade: finish, hold: side")))
        .containsExactly("ready [long]", "waiting [side]", "acts []", "comes []", "due []");
    assertThat(next(work(", after: [long]")))
        .containsExactly("ready [long]", "waiting []", "acts []", "comes []", "due []");
    assertThat(next(work(", tools: [saw]") + loan("2026-03-03")))
        .containsExactly("ready [long, side]", "waiting []", "acts []", "comes []", "due [saw]");
    assertThat(next(work("") + loan("2026-03-04")))
        .containsExactly("ready [long, side]", "waiting []", "acts []", "comes []", "due []");
    assertThat(next(work("") + loan("2026-03-03, returned: 2026-03-01, back: fine")))
        .containsExactly("ready [long, side]", "waiting []", "acts []", "comes []", "due []");
    assertThat(
            next(
                "deliveries: [{id: d, from: kit-maker, expected: 2026-03-03},{id: e, from:"
                    + " kit-maker, expected: 2026-03-04},{id: f, from: kit-maker, expected:"
                    + " 2026-03-03, received: 2026-03-01, counted: []}]\n"))
        .containsExactly("ready []", "waiting []", "acts []", "comes [d]", "due []");
  }

  /** By hand: 10 K colder takes twice as long, 20 K four times; below 5 C it may stop. */
  @Test
  void aResinGoesOffSlowerInTheCold() {
    ResinPace even = pace("outdoors", 15, 35).get(0);
    assertThat(even.cureThen()).isEqualTo(Duration.ofHours(24));
    ResinPace cool = pace("outdoors", 10, 20).get(0);
    assertThat(cool.actual()).isEqualTo(15);
    assertThat(cool.cureThen()).isEqualTo(Duration.ofDays(2));
    assertThat(cool.potLifeThen()).contains(Duration.ofHours(1));
    assertThat(cool.mayStop()).isFalse();
    ResinPace cold = pace("outdoors", 0, 8).get(0);
    assertThat(cold.mayStop()).isTrue();
    assertThat(pace("outdoors", -8, -2)).as("30 K off and no farther").hasSize(1);
    assertThat(pace("outdoors", -9, -2)).isEmpty();
  }

  /** Indoors the warmth that the task asks for is kept, whatever it is outside. */
  @Test
  void indoorsTheResinHasTheWarmthThatIsAskedFor() {
    assertThat(pace("indoors, weather: {above: 5 C}", 20, 30).get(0).actual()).isEqualTo(5);
    assertThat(pace("indoors", 20, 30).get(0).actual()).isEqualTo(25);
    assertThat(pace("outdoors, weather: {above: 5 C}", 20, 30).get(0).actual()).isEqualTo(25);
  }

  private static List<ResinPace> pace(String place, int low, int high) {
    Ledger ledger =
        Sample.ledger(
            """
            materials: [{id: epoxy, what: epoxy, kind: resin, at-temperature: 25 C, cure: 24 h, pot-life: 30 min, source: x}, {id: oak, what: oak, kind: timber, source: x}]
            tasks: [{id: t, what: T, takes: 1 d, place: %s, uses: [{material: epoxy, qty: 1 kg}, {material: oak, qty: 1 m}]}]
            forecast: [{day: 2026-03-03, rain: 0 mm, low: %d C, high: %d C}]
            """
                .formatted(place, low, high));
    Facts now = Facts.of(ledger, Sample.TODAY);
    return ResinPace.of(ledger.tasks().get(0), Sample.TODAY.plusDays(1), now);
  }

  /** What one may do besides stands in the note, not in the title. */
  @Test
  void aPhoneShowsTheFirstThingToDoOnly() {
    String yaml =
        """
        kit: [{id: cleat, what: cleat, qty: 2}]
        tasks: [{id: side, what: Side work, takes: 1 d, uses: [{item: cleat, qty: 2}]}]
        deliveries: [{id: d, received: 2026-02-20, from: kit-maker, counted: [{item: cleat, qty: 1}]}]
        shortages: [{id: s, item: cleat, qty: 1, found: 2026-02-20, cause: not-packed}]
        """;
    Facts day = Facts.of(Sample.ledger(yaml), Sample.TODAY);
    Reminder reminder = Reminder.all(day).get(0);
    assertThat(reminder.title()).isEqualTo("Last day: claim it from the supplier (shortage s)");
    assertThat(reminder.says()).contains("bought it instead?");
  }

  private static String work(String keys) {
    return "tasks:\n  - {id: long, what: Long work, takes: 15 d}\n"
        + "  - {id: side, what: Side work, takes: 1 d"
        + keys
        + "}\n";
  }

  private static String substitution(String keys) {
    return "substitutions: [{id: thin, instead-of: {what: thick, qty: 1}, why: here"
        + keys
        + "}]\n";
  }

  private static String loan(String due) {
    return "borrowed: [{id: saw, tool: band saw, from: pell, on: 2026-02-01, condition: fine, due: "
        + due
        + "}]\n";
  }

  /** From today on, so much rain each day. */
  private static String forecast(int low, int... rain) {
    StringBuilder rows = new StringBuilder("forecast:\n");
    for (int i = 0; i < rain.length; i++) {
      rows.append("  - {day: ").append(Sample.TODAY.plusDays(i)).append(", rain: ").append(rain[i]);
      rows.append(" mm, low: ").append(low).append(" C, high: 12 C}\n");
    }
    return rows.toString();
  }

  private static List<String> told(String yaml) {
    Facts day = Facts.of(Sample.ledger(yaml), Sample.TODAY);
    return OpenMatters.on(day).all().stream()
        .map(
            matter ->
                matter.sort().word()
                    + " "
                    + matter.record()
                    + " | "
                    + matter.what()
                    + " | "
                    + matter.waitsFor()
                    + " | "
                    + matter.next()
                    + matter.actBy().map(by -> " | by " + by).orElse("")
                    + matter.expected().map(on -> " | expected " + on).orElse("")
                    + matter
                        .stop()
                        .map(stop -> " | stops " + stop.task() + ", needed by " + stop.neededBy())
                        .orElse(""))
        .toList();
  }

  private static List<String> reminders(String yaml) {
    return Reminder.all(Facts.of(Sample.ledger(yaml), Sample.TODAY)).stream()
        .map(
            each ->
                each.first()
                    + " to "
                    + each.last()
                    + " | "
                    + each.key()
                    + " | "
                    + each.title()
                    + " | "
                    + each.says())
        .toList();
  }

  private static List<String> near(String yaml) {
    return Sample.findings(new HoldPointNear(), Sample.ledger(yaml), Sample.TODAY).stream()
        .map(Finding::toString)
        .toList();
  }

  private static List<String> next(String yaml) {
    Ledger ledger = Sample.ledger(yaml);
    WorkDay day = WorkDay.of(Sample.TODAY.plusDays(1), Facts.of(ledger, Sample.TODAY));
    return List.of(
        "ready " + day.ready().stream().map(each -> each.task().id()).toList(),
        "waiting " + day.waiting().stream().map(each -> each.task().id()).toList(),
        "acts " + day.acts().stream().map(OpenMatter::record).toList(),
        "comes " + day.deliveries().stream().map(each -> each.id()).toList(),
        "due " + day.due().stream().map(each -> each.loan().id()).toList());
  }
}

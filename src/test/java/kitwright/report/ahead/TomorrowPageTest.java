package kitwright.report.ahead;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitwright.Golden;
import kitwright.Sample;
import kitwright.document.Templates;
import kitwright.ledger.Facts;
import kitwright.openmatter.WorkDay;
import kitwright.report.Told;
import kitwright.report.words.Sheet;
import kitwright.report.writing.PackagedTemplates;
import org.junit.jupiter.api.Test;

/** One page for a working day. */
class TomorrowPageTest {
  private static String page(Facts now) {
    Sheet sheet = TomorrowPage.of(WorkDay.of(WorkDay.after(now), now));
    return sheet
        .fill(new Templates(name -> Optional.empty(), PackagedTemplates::text))
        .<String>match(
            filled -> filled.text(88),
            unfit -> {
              throw new AssertionError(unfit.toString());
            });
  }

  private static String page(String yaml, String today) {
    return page(Facts.of(Sample.ledger(yaml), LocalDate.parse(today)));
  }

  /** A Sunday, a Monday that a Tuesday follows, and the day before a crate is expected. */
  @Test
  void aTiredPersonReadsAtMostFortyLines() {
    Set<String> names = new HashSet<>();
    for (String today : List.of("2026-03-29", "2026-03-30", "2026-04-15")) {
      String page = page(Facts.of(Told.demonstration(), LocalDate.parse(today)));
      assertThat(page.lines().count()).isLessThanOrEqualTo(40);
      String name = "tomorrow/" + today + ".txt";
      Golden.check(name, page);
      names.add(name);
    }
    Golden.checkFolder("tomorrow", names);
  }

  /** A page is short for a tired person; a program is not tired. */
  @Test
  void otherProgramsReadAllOfIt() {
    Facts now = Facts.of(Told.demonstration(), LocalDate.parse("2026-03-29"));
    WorkDay day = WorkDay.of(WorkDay.after(now), now);
    assertThat(page(now)).contains("- and 5 more");
    assertThat(TomorrowPage.of(day).slots().json())
        .contains("Shape the rudder blade")
        .doesNotContain("more\"");
    assertThat(day.ready()).hasSize(8);
  }

  /** Two ash boards take the place of two oak ones: nobody shall look for six of oak. */
  @Test
  void whoTakesSomethingElseInPlaceTakesNoMoreOfTheThingItself() {
    String yaml =
        """
        parties: [{id: kit-maker, name: Maker, role: supplier}, {id: me, name: I, role: builder, may-sign: [finish]}, {id: ivo, name: Ivo, role: helper}]
        kit: [{id: oak, what: oak board, qty: 6, crate: C1}, {id: elm, what: elm board, qty: 2}]
        stock: [{id: ash, what: ash board, qty: 2 each}]
        deliveries: [{id: d, received: 2026-02-09, from: kit-maker, counted: [{item: oak, qty: 4}, {item: elm, qty: 0}]}]
        shortages:
          - {id: s, item: oak, qty: 2, found: 2026-02-09, cause: not-packed}
          - {id: s-elm, item: elm, qty: 2, found: 2026-02-09, cause: not-packed, options: [{kind: do-without}], decided: {option: do-without, on: 2026-02-10, by: me}}
        substitutions: [{id: sub, for: s, instead-of: {item: oak, qty: 2}, use: [{stock: ash, qty: 2}], grade: finish, why: w, proposed: {by: ivo, on: 2026-02-10}, hold: sole, sign-offs: [{by: me, on: 2026-02-11}]}]
        tasks: [{id: sole, what: Lay the sole, takes: 2 d, uses: [{item: oak, qty: 6}, {item: elm, qty: 2}]}]
        """;
    assertThat(page(yaml, "2026-03-02"))
        .contains("Lay the sole: take 4 × oak board (crate C1), 2 × ash\nboard.")
        .doesNotContain("elm");
  }

  @Test
  void itIsOfTheNextWorkingDay() {
    String tasks = "tasks: [{id: a, what: Plane, takes: 2 d}]";
    assertThat(page(tasks, "2026-03-06")).startsWith("Sample: Mon 9 March 2026");
    assertThat(page(tasks, "2026-03-09")).startsWith("Sample: Tue 10 March 2026");
  }

  @Test
  void whereNothingCanGoOnItSaysWhatIsLacking() {
    String page =
        page("tasks: [{id: a, what: Paint, takes: 1 d, weather: {dry: 1 d}}]", "2026-03-02");
    assertThat(page).contains("First: nothing can go on");
    assertThat(page).contains("Paint: weather: no forecast for its days");
  }

  @Test
  void whoeverMustBeRungIsThereWithHowToReachThem() {
    String page =
        page(
            """
            parties:
              - {id: pell, name: Pell, role: lender, contact: 555 0147}
              - {id: ivo, name: Ivo, role: helper, contact: 555 0199}
            tasks: [{id: lift, what: Lift her, takes: 1 d, who: [ivo]}]
            borrowed: [{id: saw, tool: bandsaw, from: pell, on: 2026-02-01, due: 2026-03-03, condition: good}]
            """,
            "2026-03-02");
    assertThat(page.replaceAll("\\s+", " "))
        .contains("First: Lift her: with Ivo, 555 0199. Each day it loses moves the end.");
    assertThat(page).contains("Pell, 555 0147: give back the bandsaw, due 3 March");
  }

  @Test
  void resinIsToldAtTheTemperatureExpected() {
    String page =
        page(
            """
            tasks:
              - {id: glue, what: Glue, takes: 1 d, place: indoors, weather: {above: 15 C}, wait: 24 h, uses: [{material: epoxy, qty: 1 kg}]}
            materials: [{id: epoxy, what: epoxy, kind: resin, at-temperature: 25 C, cure: 24 h, pot-life: 30 min, source: invented}]
            stock: [{id: can, what: epoxy, material: epoxy, qty: 5 kg}]
            """,
            "2026-03-02");
    assertThat(page.replaceAll("\\s+", " "))
        .contains("keep it at 15 °C or warmer, nights too; then 24 h to cure")
        .contains("Epoxy at 15 °C: pot life about 60 min, cure about 48 h.")
        .contains("The product’s own data sheet rules.");
  }
}

package kitwright.report.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitwright.Sample;
import kitwright.daybook.Week;
import kitwright.finding.Findings;
import kitwright.ledger.Ledger;
import kitwright.ledger.LogDay.Audience;
import kitwright.report.Told;
import kitwright.report.words.Sheet;
import org.junit.jupiter.api.Test;

class WeekReportTest {
  private static final Week WEEK = Week.of(LocalDate.of(2026, 3, 1));

  private static final String YAML =
      """
      build: {name: Sample, currency: EUR, started: 2026-01-05}
      parties:
        - {id: kit-maker, name: Redshank Kit Boats, role: supplier}
        - {id: office, name: A. Osterlund, role: designer, may-sign: [structural]}
        - {id: nora, name: Nora, role: builder}
        - {id: pell, name: Pell, role: lender}
      budget: [{line: spars, title: Spars, amount: 100}]
      kit: [{id: stave, what: spruce stave, qty: 4}]
      stock: [{id: larch, what: larch board, qty: 9}]
      deliveries: [{id: d1, received: 2026-02-23, from: kit-maker, note: PL 9, counted: [{item: stave, qty: 2}]}]
      shortages:
        - {id: s1, item: stave, qty: 2, found: 2026-02-24, cause: not-packed, options: [{kind: wait}],
           decided: {option: wait, on: 2026-02-28, by: nora, why: no hurry}}
      claims:
        - {id: c1, against: kit-maker, shortages: [s1], sent: 2026-02-10, remedy: replacement, reply-by: 2026-02-27,
           events: [{on: 2026-02-26, what: acknowledged, text: will look}]}
      substitutions:
        - id: u1
          instead-of: {item: stave, qty: 1}
          use: [{stock: larch, qty: 1}]
          grade: structural
          why: larch for spruce
          hold: close
          proposed: {by: nora, on: 2026-02-25}
      spending:
        - {id: p1, on: 2026-02-24, line: spars, what: glue, amount: 25, state: paid}
        - {id: p0, on: 2026-02-02, line: spars, what: wood, amount: 30, state: paid}
        - {id: o1, on: 2026-02-26, line: spars, what: sail, amount: 40, state: ordered, to: sailmaker, expected: 2026-03-04}
      borrowed: [{id: saw, tool: bandsaw, from: pell, on: 2026-02-01, due: 2026-02-27, condition: good}]
      tasks:
        - {id: plank, what: Plank the hull, public: Planking, phase: hull, takes: 9 d}
        - {id: close, what: Close the spar, phase: spars, takes: 1 d}
      """;

  private static final Ledger LEDGER = ledger();

  private static Ledger ledger() {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("sample.yaml", YAML);
    files.put(
        "log/1.md",
        """
        ---
        day: 2026-02-23
        audience: public
        hours: {nora: 6, pell: 2}
        tasks: {plank: 40 %}
        used: [{stock: larch, qty: 2, task: plank}]
        photos: [{file: a.png, says: first plank, audience: public}, {file: b.png, says: the mess, audience: crew}]
        ---
        Planked until dark.

        audience: crew

        Pell lent a hand.
        """);
    files.put(
        "log/2.md",
        """
        ---
        day: 2026-02-25
        hours: {nora: 3}
        tasks: {plank: 70 %}
        audience: crew
        ---
        Swore all day.
        """);
    Findings faults = new Findings();
    Ledger ledger = Sample.read(files, faults).orElseThrow();
    assertThat(faults.inOrder()).isEmpty();
    return ledger;
  }

  private static String words(Audience audience) {
    return Told.words(markdown(audience));
  }

  private static String markdown(Audience audience) {
    return Told.markdown(WeekReport.of(LEDGER, WEEK, audience));
  }

  @Test
  void tellsTheCrewAllThatHappened() {
    assertThat(words(Audience.CREW))
        .contains(
            "Mon 23 February to Sun 1 March 2026.",
            "11 hours of work on 2 days.",
            "1 delivery came and 1 thing was found missing.",
            "Paid 25.00 EUR and ordered 40.00 EUR.",
            "Hours by phase: hull 11. By person: Nora 9 and Pell 2.",
            "Used: 2 × larch board.",
            "Swore all day.",
            "Mon, from Redshank Kit Boats, note PL 9: 1 line counted.",
            "2 × spruce stave, not packed s1",
            "Nora chose for spruce stave: wait, since no hurry.",
            "Nora proposed u1: larch for spruce.",
            "c1: acknowledged, will look.",
            "In all: spent 55.00 EUR, ordered 40.00 EUR;",
            "Overdue since Fri 27 February 2026: bandsaw, to Pell.",
            "b.png, the mess",
            "In progress: “Plank the hull”.",
            "Expected on Wed 4 March 2026: sail.");
  }

  @Test
  void tellsTheCrewWhichWorkNeedsOneToolAtTheSameTime() {
    String tool = "  - {id: %s, what: %s, takes: 2 d, tools: [bandsaw]}\n";
    String yaml =
        "borrowed: [{id: saw, tool: bandsaw, from: pell, on: 2026-02-01, condition: good}]\n"
            + "tasks:\n"
            + tool.formatted("rib", "Saw the ribs")
            + tool.formatted("rail", "Saw the rail");
    assertThat(Told.words(Told.markdown(WeekReport.of(Sample.ledger(yaml), WEEK, Audience.CREW))))
        .contains(
            "May start: “Saw the ribs” and “Saw the rail”.",
            "“Saw the rail” and “Saw the ribs” both need the bandsaw at the same time, and one is"
                + " here.");
    String after = yaml.replace("rail, what", "rail, after: [rib], what");
    assertThat(Told.words(Told.markdown(WeekReport.of(Sample.ledger(after), WEEK, Audience.CREW))))
        .contains("May start: “Saw the ribs”.")
        .doesNotContain("at the same time");
  }

  @Test
  void tellsTheCrewWhoWaitsForWhom() {
    List<List<String>> waits =
        Told.tables(markdown(Audience.CREW)).stream()
            .filter(table -> table.get(0).get(0).equals("What waits"))
            .findFirst()
            .orElseThrow();
    assertThat(waits.get(0))
        .containsExactly("What waits", "For whom", "For what", "Act by", "Float, days");
    assertThat(waits).anyMatch(row -> row.get(1).equals("Redshank Kit Boats"));
    assertThat(waits)
        .anyMatch(row -> row.get(0).equals("Close the spar") && row.get(1).equals("Nora"));
  }

  @Test
  void tellsThePublicWhatItsAuthorsLetItReadAndFigures() {
    assertThat(words(Audience.PUBLIC))
        .contains(
            "11 hours of work on 2 days by 2 people. 1 delivery came. 1 thing is still missing",
            "Planked until dark.",
            "Hours: hull 11.",
            "A delivery of 1 kind of part, all good.",
            "2 × spruce stave: not packed.",
            "first plank")
        .doesNotContain("Swore", "a.png", "b.png", "the mess", "Pell", "Nora", "Redshank", "25.00")
        .doesNotContain("c1", "Plank the hull", "audience", "bandsaw", "larch", "no hurry");
    assertThat(Told.tables(markdown(Audience.PUBLIC)).get(0).get(1))
        .containsExactly("Planking", "–", "70 %", "started");
  }

  @Test
  void theCrewReadsEveryPartOfADay() {
    assertThat(words(Audience.CREW)).contains("Pell lent a hand.").doesNotContain("audience: crew");
  }

  @Test
  void standsAsItDidOnTheWeeksLastEvening() {
    Sheet early = WeekReport.of(LEDGER, Week.ending(LocalDate.of(2026, 2, 24)), Audience.CREW);
    assertThat(Told.words(Told.markdown(early)))
        .contains("Mon 23 to Tue 24 February 2026.")
        .doesNotContain("Nora chose", "acknowledged", "late");
  }

  @Test
  void saysSoWhereNobodyWroteTheWeekUp() {
    Sheet sheet = WeekReport.of(LEDGER, Week.of(LocalDate.of(2026, 4, 1)), Audience.PUBLIC);
    assertThat(Told.words(Told.markdown(sheet))).contains("No day of this week is written up");
  }

  /**
   * Detours, signs that no file system takes, and names that this machine may be unable to write.
   */
  @Test
  void aPictureInTheTextMayBeCalledAnything() {
    for (String address :
        List.of("../x/./../a.png", "/a.png", "..\\a.png", "a%00.png", "caf%C3%A9%E2%80%94.png")) {
      Map<String, String> files = new LinkedHashMap<>();
      files.put("sample.yaml", YAML);
      files.put(
          "log/1.md",
          "---\nday: 2026-02-23\nphotos: [{file: a.png, says: first plank}]\n---\n![here](%s)\n"
              .formatted(address));
      Ledger ledger = Sample.read(files, new Findings()).orElseThrow();
      String week = Told.markdown(WeekReport.of(ledger, WEEK, Audience.CREW));
      assertThat(week).as(address).contains("here");
    }
  }
}

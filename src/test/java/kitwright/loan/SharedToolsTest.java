package kitwright.loan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.util.List;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.finding.Severity;
import kitwright.ledger.Facts;
import kitwright.network.Plan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One tool for several tasks, and tools that go back too soon. Today is Monday, 2 March 2026. */
class SharedToolsTest {
  private static final String SAW =
      "  - {id: saw, tool: saw, from: pell, on: 2026-02-01, condition: ok%s}\n";

  private static Facts day(String loans, String tasks) {
    String yaml = "borrowed:\n" + loans + "tasks:\n" + tasks;
    return Facts.of(Sample.ledger(yaml), Sample.TODAY);
  }

  private static String task(String id, String takes, String more) {
    return "  - {id: %s, what: %s, takes: %s, tools: [saw]%s}\n"
        .formatted(id, id.toUpperCase(java.util.Locale.ROOT), takes, more);
  }

  private static List<Clash> clashes(String loans, String... tasks) {
    return Clash.on(day(loans, String.join("", tasks)));
  }

  private static final String ONE = SAW.formatted("");

  @Test
  void oneToolServesOneTaskAtATime() {
    assertThat(clashes(ONE, task("a", "1 d", ""), task("b", "2 d", "")))
        .containsExactly(new Clash("saw", List.of("b", "a"), Sample.TODAY, 1));
    assertThat(clashes(ONE, task("a", "1 d", ""))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "', after: [a]'", // one after the other
        "', finished: 2026-02-20, started: 2026-02-20'",
        "', withdrawn: 2026-02-20'"
      })
  void workThatDoesNotGoOnBesideItDoesNotClash(String b) {
    assertThat(clashes(ONE, task("a", "1 d", ""), task("b", "2 d", b))).isEmpty();
  }

  @Test
  void aClashIsToldByHowManyNeedItAndHowManyAreHere() {
    String tasks = task("a", "1 d", "") + task("b", "2 d", "");
    Facts two = day(ONE, tasks);
    assertThat(Clash.on(two).get(0).words(two))
        .isEqualTo("“B” and “A” both need the saw at the same time, and one is here");
    Facts three = day(ONE + ONE.replace("id: saw", "id: other"), tasks + task("c", "3 d", ""));
    assertThat(Clash.on(three).get(0).words(three))
        .endsWith(" all need the saw at the same time, and 2 are here");
  }

  @Test
  void whatBeginsWhereTheOtherEndsDoesNotClash() {
    // a goes on until Tuesday’s closing, c from Wednesday’s opening
    String other = "  - {id: b, what: B, takes: 2 d}\n";
    assertThat(clashes(ONE, task("a", "2 d", ""), other, task("c", "1 d", ", after: [b]")))
        .isEmpty();
    assertThat(clashes(ONE, task("a", "3 d", ""), other, task("c", "1 d", ", after: [b]")))
        .containsExactly(new Clash("saw", List.of("a", "c"), LocalDate.of(2026, 3, 4), 1));
  }

  @Test
  void asManyAsAreHereServeAsManyTasks() {
    String second = "  - {id: saw2, tool: saw, from: pell, on: 2026-02-01, condition: ok%s}\n";
    String a = task("a", "1 d", "");
    String b = task("b", "1 d", "");
    assertThat(clashes(ONE + second.formatted(""), a, b)).isEmpty();
    assertThat(clashes(ONE + second.formatted(", returned: 2026-02-20"), a, b)).hasSize(1);
    assertThat(clashes(ONE + second.formatted(""), a, b, task("c", "1 d", "")))
        .extracting(Clash::here)
        .containsExactly(2);
    assertThat(clashes(SAW.formatted(", returned: 2026-02-20"), a, b)).as("lacking").isEmpty();
  }

  @Test
  void aClashIsToldWithItsTasks() {
    assertThat(
            Sample.findings(
                new ToolWantedTwice(),
                "borrowed:\n" + ONE + "tasks:\n" + task("a", "1 d", "") + task("b", "1 d", "")))
        .extracting(Finding::what)
        .containsExactly(
            "“A” and “B” both need the saw at the same time, and one is here, by the order of"
                + " work from 2\u00a0March\u00a02026 on.");
  }

  private static List<AtHand.Back> back(String by, String loans) {
    Facts day = day(loans, task("a", "4 d", ""));
    return AtHand.backBefore(LocalDate.parse(by), Plan.on(day).task("a").orElseThrow(), day);
  }

  @Test
  void aToolGoesBackWhenTheLastOfItsKindDoes() {
    String due = SAW.formatted(", due: 2026-03-04");
    String other = "  - {id: s2, tool: saw, from: pell, on: 2026-02-01, condition: ok%s}\n";
    assertThat(back("2026-03-05", due))
        .extracting(AtHand.Back::words)
        .containsExactly("saw due back on 4\u00a0March\u00a02026");
    assertThat(back("2026-03-04", due)).isEmpty();
    assertThat(back("2026-03-05", ONE)).isEmpty();
    assertThat(back("2026-03-05", due + other.formatted(""))).isEmpty();
    assertThat(back("2026-03-05", due + other.formatted(", due: 2026-03-03"))).hasSize(1);
    assertThat(back("2026-03-05", due + other.formatted(", due: 2026-03-06"))).isEmpty();
    assertThat(back("2026-03-05", due + other.formatted(", returned: 2026-03-01"))).hasSize(1);
    assertThat(back("2026-03-05", SAW.formatted(", returned: 2026-03-01"))).isEmpty();
  }

  private static List<Finding> tooSoon(String due, String takes) {
    return Sample.findings(
        new ToolDueTooSoon(),
        "borrowed:\n" + SAW.formatted(due) + "tasks:\n" + task("a", takes, ""));
  }

  @Test
  void workThatEndsAfterTheDueDayIsTold() {
    assertThat(tooSoon(", due: 2026-03-03", "4 d"))
        .extracting(Finding::severity, Finding::what)
        .containsExactly(
            tuple(
                Severity.WARN,
                "The saw is due back with Pell on 3\u00a0March\u00a02026, and “A” needs it until"
                    + " 5\u00a0March\u00a02026 at the earliest."));
    assertThat(tooSoon(", due: 2026-03-05", "4 d")).isEmpty();
    assertThat(tooSoon(", due: 2026-02-28", "4 d")).as("overdue has a rule of its own").isEmpty();
    assertThat(tooSoon("", "4 d")).isEmpty();
    assertThat(tooSoon(", due: 2026-06-03", "90 d"))
        .extracting(Finding::severity)
        .containsExactly(Severity.NOTE);
  }
}

package kitwright.openmatter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.ledger.Facts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What nobody has recorded as short and is lacking all the same, who sends what is short, and what
 * holds a tool or a signature. Sample's today is Monday, 2 March 2026; side work must start by 20
 * March.
 */
class LackingMattersTest {
  private static List<OpenMatter> matters(String yaml) {
    return OpenMatters.on(Facts.of(Sample.ledger(yaml), Sample.TODAY)).all();
  }

  private static List<String> told(String yaml) {
    return matters(yaml).stream()
        .map(
            each ->
                each.record()
                    + " | "
                    + each.what()
                    + " | "
                    + each.waitsFor()
                    + " | "
                    + each.next()
                    + each.actBy().map(day -> " | by " + day).orElse(""))
        .map(words -> words.replace('\u00a0', ' '))
        .toList();
  }

  private static final String WORK =
      """
      tasks:
        - {id: long, what: Long work, takes: 15 d}
        - {id: side, what: Side work, takes: 1 d, uses: [{item: cleat, qty: 4}]}
      deliveries: [{id: d, received: 2026-02-20, from: kit-maker, counted: [{item: cleat, qty: %d}]}]
      kit: [{id: cleat, what: cleat, qty: %d%s}]
      """;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'' | get it, and write down how long that takes (“lead”) | none",
        "', lead: 10 d' | order it by 10 March 2026 | by 2026-03-10",
        "', lead: 18 d' | order it by 2 March 2026 | by 2026-03-02",
        "', lead: 19 d' | order it today; it comes about 21 March 2026, too late | by 2026-03-01",
      })
  void whatTheKitNeverPromisedIsToBeGotInTime(String lead, String next, String by) {
    assertThat(told(WORK.formatted(2, 2, lead)))
        .containsExactly(
            "kit item cleat | 2 × cleat: none left, none on order | you | "
                + next
                + (by.equals("none") ? "" : " | " + by));
    assertThat(told(WORK.formatted(4, 4, lead))).as("all of it is here").isEmpty();
  }

  /** Of four that are wanted two were never promised and one is recorded as short. */
  @Test
  void whatIsRecordedAsShortIsNotToldOnceMore() {
    String yaml =
        WORK.formatted(1, 2, "")
            + "shortages: [{id: s, item: cleat, qty: 1, found: 2026-02-20, cause: not-packed}]\n";
    assertThat(told(yaml))
        .extracting(each -> each.substring(0, each.indexOf(" | you")))
        .containsExactlyInAnyOrder(
            "shortage s | 1 × cleat: not packed",
            "kit item cleat | 2 × cleat: none left, none on order");
  }

  @Test
  void whatIsToComeOnNoDayIsNotOnOrderForADayThatHolds() {
    String order =
        "budget: [{line: l, title: l, amount: 9}]\n"
            + "spending: [{id: o, on: 2026-02-20, line: l, what: cleats, amount: 5, state: ordered,"
            + " item: cleat, qty: 2%s}]\n";
    assertThat(told(WORK.formatted(2, 2, "") + order.formatted("")))
        .anyMatch(
            each ->
                each.startsWith(
                    "kit item cleat | 2 × cleat: none left, none on order for a day that holds |"));
    assertThat(told(WORK.formatted(2, 2, "") + order.formatted(", expected: 2026-03-06")))
        .noneMatch(each -> each.startsWith("kit item cleat"));
  }

  /** Found, claimed and answered: a way out that is chosen goes before what the claim asks. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "events: [{on: 2026-02-24, what: promised, expect: 2026-03-09}] | Redshank Kit Boats",
        "events: [] | Redshank Kit Boats",
      })
  void whoeverIsAskedForItIsWaitedFor(String events, String name) {
    String yaml =
        WORK.formatted(2, 4, "")
            + "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause: not-packed}]\n"
            + "claims: [{id: c, against: kit-maker, shortages: [s], remedy: replacement, sent:"
            + " 2026-02-21, "
            + events
            + "}]\n";
    assertThat(matters(yaml))
        .filteredOn(each -> each.record().equals("shortage s"))
        .extracting(OpenMatter::waitsFor)
        .containsExactly(name);
  }

  @ParameterizedTest
  @CsvSource({"', to: shop', Chandler", "'', the seller"})
  void ofAnOrderItIsTheSellerWhoSendsIt(String to, String name) {
    String yaml =
        """
        parties: [{id: kit-maker, name: Redshank Kit Boats, role: supplier}, {id: shop, name: Chandler, role: supplier}]
        budget: [{line: l, title: l, amount: 9}]
        shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause: not-packed}]
        spending: [{id: o, on: 2026-02-22, line: l, what: cleats, amount: 5, state: ordered, replaces: s, qty: 2, expected: 2026-03-09%s}]
        """
            .formatted(to);
    assertThat(matters(WORK.formatted(2, 4, "") + yaml))
        .filteredOn(each -> each.record().equals("shortage s"))
        .extracting(OpenMatter::waitsFor)
        .containsExactly(name);
  }

  private static final String TOOL =
      """
      tasks: [{id: long, what: Long work, takes: 5 d, tools: [saw]}]
      borrowed: [{id: saw, tool: band saw, from: pell, on: 2026-02-01, condition: fine, due: %s}]
      """;

  /** The work goes on until Friday, 6 March. */
  @Test
  void aToolThatIsNeededLongerThanItMayStayIsAskedForWhileItIsNotOverdue() {
    String ask = "Pell | ask Pell to leave it with you until 6 March 2026, or do the work sooner";
    assertThat(told(TOOL.formatted("2026-03-04")))
        .containsExactly(
            "loan saw | band saw: due 4 March 2026, needed until 6 March 2026 at the earliest | "
                + ask
                + " | by 2026-03-04");
    assertThat(told(TOOL.formatted("2026-03-02")))
        .as("today it is not overdue")
        .containsExactly(
            "loan saw | band saw: due 2 March 2026, needed until 6 March 2026 at the earliest | "
                + ask
                + " | by 2026-03-02");
    assertThat(told(TOOL.formatted("2026-03-01")))
        .containsExactly(
            "loan saw | band saw: due 1 March 2026, overdue, needed until 6 March 2026 at the"
                + " earliest | "
                + ask
                + " | by 2026-03-02");
    assertThat(told(TOOL.formatted("2026-03-06"))).isEmpty();
  }

  private static List<String> reminded(String yaml) {
    return Reminder.all(Facts.of(Sample.ledger(yaml), Sample.TODAY)).stream()
        .map(each -> each.first() + " " + each.key() + ": " + each.title())
        .map(words -> words.replace('\u00a0', ' '))
        .toList();
  }

  @Test
  void remindersComeByTheirDaysAndWhatIsOverdueIsForToday() {
    String yaml =
        """
        parties: [{id: kit-maker, name: Redshank Kit Boats, role: supplier, notice: 7 d}, {id: pell, name: Pell, role: lender, contact: pell@sund.example}]
        build: {name: Sample, currency: EUR, started: 2026-01-05, launch: 2026-03-20}
        kit: [{id: cleat, what: cleat, qty: 4}]
        deliveries:
          - {id: late, received: 2026-02-20, from: kit-maker, packed: [{item: cleat, qty: 2}]}
          - {id: new, received: 2026-02-27, from: kit-maker, packed: [{item: cleat, qty: 2}]}
          - {id: came, received: 2026-02-27, expected: 2026-03-08, from: kit-maker, counted: [{item: cleat, qty: 4}]}
          - {id: next, expected: 2026-03-05, from: kit-maker}
          - {id: today, expected: 2026-03-02, from: kit-maker}
        borrowed:
          - {id: saw, tool: band saw, from: pell, on: 2026-02-01, condition: fine, due: 2026-03-04}
          - {id: jig, tool: jig, from: pell, on: 2026-02-01, condition: fine, due: 2026-03-03, returned: 2026-02-20}
        """;
    assertThat(reminded(yaml))
        .containsExactly(
            "2026-03-02 count delivery late: Overdue: count it, and record what is missing while"
                + " the notice runs (delivery late)",
            "2026-03-02 expected delivery today: Delivery expected: today",
            "2026-03-04 due loan saw: Give back: band saw",
            "2026-03-05 expected delivery next: Delivery expected: next",
            "2026-03-06 count delivery new: Last day: count it, and record what is missing while"
                + " the notice runs (delivery new)",
            "2026-03-20 launch: Launch: Sample");
    assertThat(Reminder.all(Facts.of(Sample.ledger(yaml), Sample.TODAY)))
        .filteredOn(each -> each.key().equals("due loan saw"))
        .extracting(each -> each.says().replace('\u00a0', ' '))
        .containsExactly("To Pell, pell@sund.example, due on 4 March 2026.");
  }

  @Test
  void noWindowIsRemindedOfThatDoesNotFit() {
    String yaml =
        """
        tasks: [{id: t, what: T, takes: 1 d, place: outdoors, weather: {dry: 1 d}}]
        forecast: [{day: 2026-03-02, rain: %1$d mm, low: 6, high: 12}, {day: 2026-03-03, rain: %1$d mm, low: 6, high: 12}]
        """;
    assertThat(reminded(yaml.formatted(0))).anyMatch(each -> each.contains("weather task t"));
    assertThat(reminded(yaml.formatted(4))).noneMatch(each -> each.contains("weather task t"));
  }
}

package kitwright.shortage;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import kitwright.Sample;
import kitwright.kit.Positions;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** On which day a way out brings what is missing. Today is Monday, 2 March 2026. */
class ArrivalTest {
  private static final String YARD =
      """
      budget: [{line: l, title: L, amount: 900}]
      kit: [{id: oak, what: oak cleat, qty: 4}, {id: peg, what: peg, qty: 9}]
      deliveries: [{id: d, received: 2026-02-01, from: kit-maker, counted: [{item: peg, qty: 4}]}]
      stock: [{id: ash, what: ash cleat, qty: 5}]
      tasks:
        - {id: deck, what: Deck, takes: 9 d}
        - {id: other, what: Other, takes: 9 d}
      shortages: [{id: s, item: oak, qty: 4, found: 2026-02-02, cause: not-packed, options: [%s]}]
      substitutions: [{id: sub, instead-of: {item: oak, qty: 4}, use: [%s], hold: deck, why: w, grade: finish}]
      spending:
        - {id: soon, on: 2026-02-05, line: l, what: w, amount: 9, state: ordered, qty: 4, expected: 2026-03-10}
        - {id: later, on: 2026-02-05, line: l, what: w, amount: 9, state: ordered, qty: 4, expected: 2026-03-20}
        - {id: today, on: 2026-02-05, line: l, what: w, amount: 9, state: ordered, qty: 4, expected: 2026-03-02}
        - {id: overdue, on: 2026-02-05, line: l, what: w, amount: 9, state: ordered, qty: 4, expected: 2026-03-01}
        - {id: some-day, on: 2026-02-05, line: l, what: w, amount: 9, state: ordered, qty: 4}
        - {id: given-up, on: 2026-02-05, line: l, what: w, amount: 9, state: ordered, qty: 4, expected: 2026-03-10, withdrawn: 2026-02-20}
        - {id: come, on: 2026-02-05, line: l, what: w, amount: 9, state: ordered, qty: 4, expected: 2026-02-19, came: 2026-02-20}
        - {id: paid, on: 2026-02-06, line: l, what: w, amount: 2, state: paid, pays: later}
      """;

  private static String day(String option, String use, String used) {
    String log = used.isEmpty() ? "" : "---\nday: 2026-02-20\nused: [" + used + "]\n---\n";
    Ledger ledger = Sample.ledger(YARD.formatted(option, use) + log);
    Facts now = Facts.of(ledger, Sample.TODAY);
    return Arrival.of(
            ledger.shortages().get(0).options().get(0), Positions.on(now), ledger, now.day())
        .map(LocalDate::toString)
        .orElse("nobody knows");
  }

  private static final String SUB = "{kind: substitute, substitution: sub}";

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "{kind: buy, arrives: 2026-03-20}; 2026-03-20",
        "{kind: buy, arrives: 2026-03-02}; 2026-03-02",
        "{kind: buy, arrives: 2026-03-01}; nobody knows", // its day has passed
        "{kind: buy}; nobody knows",
        "{kind: do-without}; nobody knows", // nothing has to come
        "{kind: do-without, arrives: 2026-03-20}; nobody knows",
        "'{kind: substitute, substitution: sub, arrives: 2026-03-16}'; 2026-03-16",
        "'{kind: substitute, substitution: sub, arrives: 2026-03-01}'; 2026-03-02" // it is here
      })
  void itIsTheDayThatTheWayOutSaysAsLongAsItHolds(String option, String day) {
    assertThat(day(option, "{stock: ash, qty: 4}", "")).isEqualTo(day);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "{stock: ash, qty: 5}; ''; 2026-03-02",
        "{stock: ash, qty: 6}; ''; nobody knows", // five are there
        "'{stock: ash, qty: 3}, {stock: ash, qty: 3}'; ''; nobody knows",
        "{stock: ash, qty: 4}; '{stock: ash, qty: 1, task: other}'; 2026-03-02",
        "{stock: ash, qty: 4}; '{stock: ash, qty: 2, task: other}'; nobody knows",
        "{stock: ash, qty: 4}; '{stock: ash, qty: 2, task: deck}'; 2026-03-02", // its own work
        "{stock: ash, qty: 4}; '{stock: ash, qty: 1 kg}'; nobody knows", // how many are left?
        "{item: peg, qty: 4}; ''; 2026-03-02",
        "{item: peg, qty: 4}; '{item: peg, qty: 1, task: other}'; nobody knows",
        "{item: peg, qty: 4}; '{item: peg, qty: 1 kg}'; nobody knows",
        "'{stock: ash, qty: 3}, {item: peg, qty: 1}'; ''; 2026-03-02",
        "'{stock: ash, qty: 3}, {item: peg, qty: 5}'; ''; nobody knows"
      })
  void whatIsHereAndLeftForItComesToday(String use, String used, String day) {
    assertThat(day(SUB, use, used)).isEqualTo(day);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "{spend: soon, qty: 4}; 2026-03-10",
        "'{spend: soon, qty: 2}, {spend: later, qty: 2}'; 2026-03-20", // the last of them
        "'{spend: soon, qty: 2}, {spend: some-day, qty: 2}'; nobody knows",
        "{spend: today, qty: 4}; 2026-03-02",
        "{spend: overdue, qty: 4}; nobody knows",
        "{spend: given-up, qty: 4}; nobody knows", // nobody sends it
        "{spend: paid, qty: 4}; 2026-03-20", // by its order
        "{spend: come, qty: 4}; 2026-03-02", // it is here
        "{spend: come, qty: 5}; nobody knows"
      })
  void whatIsOrderedComesOnTheLastOfItsDays(String use, String day) {
    assertThat(day(SUB, use, "")).isEqualTo(day);
  }

  @Test
  void whatMayNotBeBuiltBringsNothing() {
    String sub = "{stock: ash, qty: 4}";
    String decided = SUB + "], decided: {option: substitute, on: 2026-02-12, by: nora";
    String yaml = YARD.formatted(decided, sub).replace("by: nora]", "by: nora}");
    assertThat(coming(yaml)).isEqualTo("[2026-03-02]");
    assertThat(coming(yaml.replace("grade: finish}", "grade: finish, withdrawn: 2026-02-20}")))
        .isEqualTo("[]");
  }

  private static String coming(String yaml) {
    Facts now = Facts.of(Sample.ledger(yaml), Sample.TODAY);
    return ShortageStandings.on(now).all().get(0).coming().stream()
        .flatMap(each -> each.on().stream())
        .toList()
        .toString();
  }
}

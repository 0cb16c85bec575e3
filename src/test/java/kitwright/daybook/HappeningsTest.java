package kitwright.daybook;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import kitwright.Sample;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;

class HappeningsTest {
  private static final Ledger LEDGER =
      Sample.ledger(
          """
          budget: [{line: spars, title: Spars, amount: 100}]
          kit: [{id: stave, what: spruce stave, qty: 4}, {id: pin, what: pin, qty: 9}]
          deliveries:
            - {id: d1, received: 2026-02-23, from: kit-maker}
            - {id: d2, expected: 2026-03-10, from: kit-maker}
            - {id: d3, received: 2026-02-22, from: kit-maker}
          shortages:
            - {id: s1, item: stave, qty: 1, found: 2026-02-24, cause: not-packed, decided: {option: wait, on: 2026-03-01, by: nora}}
            - {id: s2, item: pin, qty: 1, found: 2026-02-02, cause: not-packed}
          claims:
            - {id: c1, against: kit-maker, shortages: [s1], sent: 2026-02-25, remedy: replacement, reply-by: 2026-03-11,
               events: [{on: 2026-02-27, what: answered, text: will look}]}
            - {id: c2, against: kit-maker, shortages: [s2], sent: 2026-02-03, remedy: credit, settled: {on: 2026-02-28, how: credited, amount: 3}}
          substitutions:
            - id: u1
              instead-of: {item: pin, qty: 1}
              use: [{item: stave, qty: 1}]
              grade: finish
              why: sample
              proposed: {by: nora, on: 2026-02-23}
              sign-offs: [{by: office, on: 2026-02-26}]
          spending:
            - {id: p2, on: 2026-03-01, line: spars, what: glue, amount: 9, state: paid}
            - {id: p1, on: 2026-02-23, line: spars, what: brush, amount: 4, state: paid}
            - {id: o1, on: 2026-02-23, line: spars, what: sail, amount: 40, state: ordered, expected: 2026-03-05}
          borrowed:
            - {id: saw, tool: saw, from: pell, on: 2026-02-23, due: 2026-03-06, condition: good}
            - {id: plane, tool: plane, from: pell, on: 2026-02-01, returned: 2026-02-27, due: 2026-02-28, condition: good}
          tasks:
            - {id: a, what: first, takes: 1 d, started: 2026-02-02, finished: 2026-02-27}
            - {id: b, what: second, takes: 1 d, after: [a]}
            - {id: c, what: third, takes: 1 d, after: [b]}
            - {id: d, what: under way, takes: 5 d, started: 2026-02-25}
          """);

  private static Ahead after(LocalDate sunday) {
    Facts later = Facts.of(LEDGER, LocalDate.of(2026, 3, 9));
    return Ahead.after(Week.of(sunday), later, LEDGER.log());
  }

  @Test
  void gathersTheRecordsDatedInTheWeek() {
    Happenings week = Happenings.in(Week.of(LocalDate.of(2026, 3, 1)), LEDGER);
    assertThat(week.arrived()).extracting(Entry::id).containsExactly("d1");
    assertThat(week.found()).extracting(Entry::id).containsExactly("s1");
    assertThat(week.decided()).extracting(Entry::id).containsExactly("s1");
    assertThat(week.proposed()).extracting(Entry::id).containsExactly("u1");
    assertThat(week.signed()).extracting(s -> s.signOff().by().id()).containsExactly("office");
    assertThat(week.claimsSent()).extracting(Entry::id).containsExactly("c1");
    assertThat(week.letters()).extracting(l -> l.event().text()).hasSize(1);
    assertThat(week.claimsSettled()).extracting(Entry::id).containsExactly("c2");
    assertThat(week.money()).extracting(Entry::id).containsExactly("p1", "o1", "p2");
    assertThat(week.borrowed()).extracting(Entry::id).containsExactly("saw");
    assertThat(week.returned()).extracting(Entry::id).containsExactly("plane");
  }

  @Test
  void seesAheadAsItStandsOnThatEvening() {
    Ahead ahead = after(LocalDate.of(2026, 3, 1));
    assertThat(ahead.underWay()).extracting(Entry::id).containsExactly("d");
    assertThat(ahead.ready()).extracting(Entry::id).containsExactly("b");
    assertThat(ahead.deliveries()).extracting(Entry::id).containsExactly("d2");
    assertThat(ahead.orders()).extracting(Entry::id).containsExactly("o1");
    assertThat(ahead.tools()).extracting(Entry::id).containsExactly("saw");
  }

  @Test
  void doesNotKnowOnAnEveningWhatCameLater() {
    Ahead ahead = after(LocalDate.of(2026, 2, 22));
    assertThat(ahead.underWay()).extracting(Entry::id).containsExactly("a");
    assertThat(ahead.ready()).extracting(Entry::id).containsExactly("d");
    assertThat(ahead.deliveries()).extracting(Entry::id).containsExactly("d2", "d1");
    assertThat(ahead.tools()).extracting(Entry::id).containsExactly("plane");
  }

  /** Of what may go on only weeks later nobody is told for the week to come. */
  @Test
  void whileNobodyWorksNothingMayStart() {
    String yaml =
        """
        build: {name: S, currency: EUR, started: 2026-01-05,
          week: {days: [mon, tue, wed, thu, fri], hours: 8}, off: [2026-03-02..%s]}
        tasks: [{id: a, what: A, takes: 1 d}]
        """;
    assertThat(ahead(yaml.formatted("2026-03-05")).ready()).hasSize(1);
    assertThat(ahead(yaml.formatted("2026-03-08")).ready()).isEmpty();
  }

  private static Ahead ahead(String yaml) {
    LocalDate sunday = LocalDate.of(2026, 3, 1);
    return Ahead.after(Week.of(sunday), Facts.of(Sample.ledger(yaml), sunday), List.of());
  }

  /** In the middle of a week only what stands by today is known. */
  @Test
  void aWeekThatIsNotOverIsToldAsOfToday() {
    LocalDate wednesday = LocalDate.of(2026, 2, 25);
    Facts now = Facts.of(LEDGER, wednesday);
    assertThat(Ahead.evening(Week.of(wednesday), now).day()).isEqualTo(wednesday);
    Facts later = Facts.of(LEDGER, LocalDate.of(2026, 3, 9));
    assertThat(Ahead.evening(Week.of(wednesday), later).day()).isEqualTo(LocalDate.of(2026, 3, 1));
    assertThat(Week.of(wednesday).next().first()).isEqualTo(LocalDate.of(2026, 3, 2));
  }

  /** A mast is structural: nobody may glue it before the signature. */
  @Test
  void whatLacksNothingButASignatureIsHeld() {
    String yaml =
        """
        build: {name: S, currency: EUR, started: 2026-01-05}
        kit: [{id: stave, what: stave, qty: 1}, {id: plank, what: plank, qty: 1}]
        substitutions: [{id: u, why: split, instead-of: {item: stave, qty: 1}, use: [{item: plank, qty: 1}], grade: structural, hold: mast}]
        tasks:
          - {id: mast, what: Glue the mast, takes: 1 d%s}
          - {id: after, what: Varnish it, takes: 1 d, after: [mast]}
        """;
    assertThat(ahead(yaml.formatted("")).held()).extracting(Entry::id).containsExactly("mast");
    assertThat(ahead(yaml.formatted("")).breached()).isEmpty();
    Ahead begun = ahead(yaml.formatted(", started: 2026-02-25"));
    assertThat(begun.held()).isEmpty();
    assertThat(begun.breached()).extracting(Entry::id).containsExactly("mast");
  }
}

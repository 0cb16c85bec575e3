package kitwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.assessment.Assessments;
import kitwright.assessment.Judging;
import kitwright.choice.Choice;
import kitwright.ledger.Ledger;
import kitwright.money.Spent;
import kitwright.network.Plan;
import kitwright.openmatter.Bearings;
import kitwright.value.Place;
import kitwright.value.Ref;
import org.junit.jupiter.api.Test;

class WaysToldTest {
  private static final String SPARS =
      """
      budget: [{line: spars, title: Spars, amount: 1450, remaining: 200}]
      kit: [{id: stave, what: stave, qty: 14 m, price: 12}]
      stock: [{id: larch-a, what: larch, size: 2450 x 110 x 32 mm, pieces: 5, keep-for: [lockers]}]
      tasks:
        - {id: plane, what: Plane the staves, takes: 2 d, budget: spars, uses: [{item: stave, qty: 14 m}]}
        - {id: close, what: Close the bowsprit, takes: 1 d, after: [plane]}
        - {id: lockers, what: Locker fronts, takes: 1 d}
      shortages:
        - id: short
          item: stave
          qty: 10 m
          found: 2026-01-24
          cause: not-packed
          options:
            - {kind: wait}
            - {kind: buy, cost: [280, 310, 360], arrives: 2026-03-16, hours: 2, note: the yard will plane them}
            - {kind: substitute, substitution: sub, hours: 16}
            - {id: dear, kind: buy, cost: 400, arrives: 2026-03-20, hours: 2}
      substitutions:
        - {id: sub, for: short, instead-of: {item: stave, qty: 10 m}, use: [{stock: larch-a, qty: 4 each}], grade: structural, why: larch is here, hold: close}
      """;

  private static WaysTold told(String yaml) {
    Ledger ledger = Sample.ledger(yaml);
    Assessments assessments = Assessments.of(ledger);
    Bearings now =
        Bearings.of(
            ledger, Sample.TODAY, Plan.of(ledger, Sample.TODAY), Judging.of(ledger, assessments));
    return WaysTold.of(
        Choice.of(
                now,
                Spent.asOf(ledger, Sample.TODAY, now.shortages()),
                assessments,
                new Ref("short", Place.wholeFile("test")))
            .orElseThrow());
  }

  private static List<String> row(String name) {
    return told(SPARS).lines().stream()
        .filter(line -> line.name().equals(name))
        .map(WaysTold.Line::cells)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyWayHasACellInEveryRow() {
    assertThat(told(SPARS).lines()).allSatisfy(line -> assertThat(line.cells()).hasSize(4));
    assertThat(row("cash now")).containsExactly("0.00 EUR", "310.00 EUR", "0.00 EUR", "400.00 EUR");
    assertThat(row("cost in all")).contains("280.00–360.00 EUR");
  }

  @Test
  void whatNobodyKnowsIsNotMadeUp() {
    assertThat(row("here on").get(0)).isEqualTo("not known");
    assertThat(row("holds the work by").get(0)).isEqualTo("not known");
    assertThat(row("worth of them").get(1)).isEqualTo("no value of an hour");
    assertThat(row("strength").get(2)).isEqualTo("not assessed");
    assertThat(row("strength").get(1)).isEqualTo("as drawn");
  }

  @Test
  void aSubstitutionOfAnotherShortageIsNotToldAsDrawn() {
    String other =
        SPARS
            .replace("for: short,", "for: other,")
            .replace(
                "shortages:\n",
                "shortages:\n  - {id: other, item: stave, qty: 1 m, found: 2026-01-24, cause: wrong}\n");
    assertThat(
            told(other).lines().stream()
                .filter(line -> line.name().equals("strength"))
                .findFirst()
                .orElseThrow()
                .cells()
                .get(2))
        .isEqualTo("not known");
  }

  @Test
  void aCostThatDoesNotRiseIsItsMiddle() {
    assertThat(told(SPARS.replace("[280, 310, 360]", "[360, 310, 280]")).lines().get(1).cells())
        .contains("310.00 EUR");
  }

  @Test
  void notesNameTheWayTheyAreOf() {
    List<String> notes =
        told(SPARS).notes().stream().map(note -> note.replace('\u00a0', ' ')).toList();
    assertThat(notes).contains("buy: the yard will plane them.");
    assertThat(notes)
        .contains("dear is beaten by buy, which is nowhere worse and cheaper, here sooner.");
    assertThat(notes)
        .anySatisfy(
            note ->
                assertThat(note)
                    .startsWith("substitute: takes 4 × larch")
                    .contains("it was meant for “Locker fronts”"));
  }

  @Test
  void undecidedItSaysHowToDecideAndDecidedWhoDid() {
    assertThat(told(SPARS).decision()).startsWith("Not decided. The builder decides");
    String decided =
        SPARS.replace(
            "substitutions:\n",
            "    decided: {option: buy, on: 2026-02-28, by: nora, why: it comes in time}\nsubstitutions:\n");
    assertThat(told(decided).decision())
        .isEqualTo("Decided on 2026-02-28 by nora: buy, since it comes in time.");
  }
}

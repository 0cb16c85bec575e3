package kitwright.report.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.choice.Choice;
import kitwright.choice.Spars;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.value.Place;
import kitwright.value.Ref;
import org.junit.jupiter.api.Test;

class WaysToldTest {
  /** No promised day, no value of an hour, and a word of the seller's. */
  private static final String SPARS =
      Spars.LEDGER
          .replace("kind: wait, arrives: 2026-04-20", "kind: wait")
          .replace(", own-hour: 14", "")
          .replace("2026-03-16, hours: 2", "2026-03-16, hours: 2, note: the yard will plane them");

  private static WaysTold told(String yaml) {
    Ledger ledger = Sample.ledger(yaml);
    Ref shortage = new Ref("short", Place.wholeFile("test"));
    return WaysTold.of(Choice.of(Facts.of(ledger, Sample.TODAY), shortage).orElseThrow(), ledger);
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
    assertThat(row("cash now")).containsExactly("0.00 EUR", "310.00 EUR", "0.00 EUR", "400.00 EUR");
    assertThat(row("cost in all")).contains("280.00–360.00 EUR");
  }

  @Test
  void whatNobodyKnowsIsNotMadeUp() {
    assertThat(row("arrives").get(0)).isEqualTo("not known");
    assertThat(row("delays the work by").get(0)).isEqualTo("not known");
    assertThat(row("own hours valued at").get(1)).isEqualTo("no value of an hour");
    assertThat(row("strength").get(2)).isEqualTo("not assessed");
    assertThat(row("strength").get(1)).isEqualTo("as drawn");
  }

  /** A mast without its staves is not as strong as drawn, nor is yesterday’s promise today’s. */
  @Test
  void doingWithoutIsNotAsDrawnAndADayThatHasPassedIsSaid() {
    WaysTold ways =
        told(
            SPARS
                .replace("kind: wait}", "kind: do-without}")
                .replace("arrives: 2026-03-20", "arrives: 2026-02-20"));
    List<String> strength =
        ways.lines().stream()
            .filter(line -> line.name().equals("strength"))
            .findFirst()
            .orElseThrow()
            .cells();
    assertThat(strength.get(0)).isEqualTo("nothing in its place");
    assertThat(strength.get(3)).isEqualTo("as drawn");
    assertThat(ways.notes())
        .filteredOn(note -> note.contains("has passed"))
        .containsExactly(
            "dear: the day that it says, Fri\u00a020\u00a0February\u00a02026, has passed; ask for a"
                + " new one.");
  }

  @Test
  void aSubstitutionOfAnotherShortageIsNotToldAsDrawn() {
    String other = Spars.substitutionForAnother(SPARS);
    assertThat(
            told(other).lines().stream()
                .filter(line -> line.name().equals("strength"))
                .findFirst()
                .orElseThrow()
                .cells()
                .get(2))
        .isEqualTo("not assessed");
  }

  /** By hand 545·32·56 / (425·30·60) = 1.27665, which leaves 1.796 % of 1.3: not printed as 1.8. */
  @Test
  void aMarginIsRoundedDownAsOnTheSheet() {
    String assessed =
        SPARS.replace("    hold: close\n", "    hold: close\n    assessment: beam\n")
            + """
            sections:
              - {id: drawn, width: 30 mm, layers: [{material: sitka-spruce, thickness: 60 mm, grain: along}]}
              - {id: built, width: 32 mm, layers: [{material: douglas-fir, thickness: 56 mm, grain: along}]}
            assessments:
              - {id: beam, method: timber, on: 2026-02-01, designed: drawn, built: built, require: {stiffness: 1.0}, allow: {mass: 1.3}, sources: [invented]}
            """;
    assertThat(
            told(assessed).lines().stream()
                .filter(line -> line.name().equals("strength"))
                .findFirst()
                .orElseThrow()
                .cells())
        .contains("passes +1.7 %");
  }

  @Test
  void aCostThatDoesNotRiseIsItsMiddle() {
    assertThat(told(SPARS.replace("[280, 310, 360]", "[360, 310, 280]")).lines().get(1).cells())
        .contains("310.00 EUR");
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
    assertThat(told(Spars.decided(SPARS)).decision())
        .isEqualTo("Decided on Sat 28 February 2026 by nora: buy, since it comes in time.");
  }
}

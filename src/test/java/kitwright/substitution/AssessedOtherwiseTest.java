package kitwright.substitution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;

/** An assessment is of what is taken and what is replaced, or it does not count. */
class AssessedOtherwiseTest {
  private static final String RECORDS =
      """
      materials:
        - {id: larch, kind: timber, source: test}
        - {id: pine, kind: timber, source: test}
        - {id: board, kind: plywood, source: test}
        - {id: foam, kind: core, source: test}
        - {id: steel-x, kind: metal, source: test}
      kit:
        - {id: sheet, what: plywood 9 mm, qty: 2 sheet, material: board, size: 2440 x 1220 x 9 mm}
        - {id: plank, what: pine plank, qty: 2 each, material: pine, size: 2000 x 120 x 22 mm}
      stock:
        - {id: larch-18, what: larch, material: larch, size: 3000 x 120 x 18 mm, pieces: 2}
        - {id: larch-25, what: larch, material: larch, size: 3000 x 120 x 25 mm, pieces: 2}
        - {id: pine-25, what: pine, material: pine, size: 3000 x 120 x 25 mm, pieces: 2}
        - {id: ply-6, what: sheet, material: board, size: 2440 x 1220 x 6 mm, pieces: 2}
        - {id: some, what: something, size: 2440 x 1220 x 6 mm, pieces: 2}
        - {id: strap, what: strap, material: steel-x, size: 500 x 40 x 4 mm, pieces: 2}
      sections:
        - {id: drawn, width: 120 mm, layers: [{material: pine, thickness: 22 mm, grain: along}]}
        - {id: of-sheet, width: 1 m, layers: [{material: board, thickness: 9 mm, grain: along}]}
        - {id: of-thin, width: 1 m, layers: [{material: board, thickness: 6 mm, grain: along}]}
        - {id: flat, width: 120 mm, layers: [{material: larch, thickness: 22 mm, grain: along}]}
        - {id: up, width: 18 mm, layers: [{material: larch, thickness: 120 mm, grain: along}]}
        - {id: two, width: 90 mm, layers: [{material: larch, thickness: 12 mm, grain: along}, {material: larch, thickness: 12 mm, grain: along}]}
        - {id: box, width: 90 mm, layers: [{thickness: 60 mm, strips: [{material: larch, width: 18 mm}, {void: 54 mm}, {material: larch, width: 18 mm}]}]}
        - {id: bar, shape: rectangle, material: larch, dimensions: {width: 30 mm, height: 40 mm}}
        - {id: pole, shape: round, material: larch, dimensions: {diameter: 40 mm}}
        - {id: pipe, shape: tube, material: larch, dimensions: {diameter: 90 mm, wall: 20 mm}}
      assessments:
        - {id: a, method: %s, on: 2026-02-01, designed: %s, built: %s, require: {stiffness: 1, strength: 1}}
      substitutions:
        - {id: s, instead-of: {%s, qty: 2 each}, use: [{stock: %s, qty: 2 each}], grade: structural, why: here, proposed: {by: nora, on: 2026-01-30}, assessment: a}
      """;

  private static List<String> faults(
      String method, String drawn, String built, String item, String stock) {
    Ledger ledger = Sample.ledger(RECORDS.formatted(method, drawn, built, item, stock));
    List<String> faults =
        OtherStuff.of(ledger.substitutions().get(0), ledger).stream()
            .map(OtherStuff.Fault::what)
            .toList();
    boolean lacks =
        SubstitutionStandings.on(Facts.of(ledger, Sample.TODAY))
            .all()
            .get(0)
            .lacks(Lack.ASSESSED_OTHERWISE);
    assertThat(lacks).isEqualTo(!faults.isEmpty());
    return faults;
  }

  private static List<String> taking(String built, String stock) {
    return faults("section", "drawn", built, "what: pine", stock);
  }

  @Test
  void anotherWoodIsNotAssessed() {
    assertThat(taking("flat", "pine-25"))
        .containsExactly(
            "it takes stock pine-25, which is of pine, and the section as built, flat, is of"
                + " larch");
    assertThat(taking("flat", "ply-6"))
        .containsExactly(
            "it takes stock ply-6, which is of board, and the section as built, flat, is of larch");
    assertThat(taking("flat", "larch-25")).isEmpty();
  }

  /** Of metal the section says nothing, and a stock that does not say its stuff may be it. */
  @Test
  void whatIsOfAnotherFamilyOrDoesNotSayMayGoWithIt() {
    for (String more : List.of("strap", "some")) {
      String both = "larch-25, qty: 2 each}, {stock: " + more;
      assertThat(taking("flat", both)).as(more).isEmpty();
    }
  }

  /** A pine board without its material is no larch. */
  @Test
  void somethingThatIsTakenIsKnownToBeAsAssessed() {
    assertThat(taking("flat", "strap"))
        .containsExactly(
            "it takes stock strap, which is of steel-x, and the section as built, flat, is of"
                + " larch");
    assertThat(taking("flat", "some"))
        .containsExactly(
            "it takes stock some, which does not say of which material it is, and the section as"
                + " built, flat, is of larch");
    assertThat(taking("flat", "pine-25, qty: 2 each}, {stock: some")).hasSize(2);
    Ledger nothing =
        Sample.ledger(
            RECORDS
                .formatted("section", "drawn", "flat", "what: it", "some")
                .replace("use: [{stock: some, qty: 2 each}], ", ""));
    assertThat(OtherStuff.of(nothing.substitutions().get(0), nothing))
        .extracting(OtherStuff.Fault::what)
        .containsExactly(
            "it does not say what it takes (use), and the section as built, flat, is of larch");
    Ledger gone =
        Sample.read(
                RECORDS.formatted("section", "drawn", "flat", "what: it", "lost"),
                new kitwright.finding.Findings())
            .orElseThrow();
    assertThat(OtherStuff.of(gone.substitutions().get(0), gone))
        .extracting(OtherStuff.Fault::what)
        .singleElement()
        .asString()
        .startsWith("it takes stock “lost”, which does not say of which material it is");
  }

  @Test
  void noBoardIsThickerThanItIs() {
    assertThat(taking("flat", "larch-18"))
        .containsExactly(
            "it takes stock larch-18, 18 mm thick, and the thinnest larch of the section as built,"
                + " flat, is 22 mm");
    assertThat(taking("bar", "larch-18")).singleElement().asString().endsWith("is 30 mm");
    assertThat(taking("pole", "larch-18")).singleElement().asString().endsWith("is 40 mm");
  }

  /** On edge, in layers, as walls; a tube may be bent or staved of anything. */
  @Test
  void aThinBoardMayStandOrBeGluedUp() {
    for (String built : List.of("up", "two", "box", "pipe")) {
      assertThat(taking(built, "larch-18")).as(built).isEmpty();
    }
  }

  @Test
  void whatIsReplacedIsAsDrawn() {
    assertThat(faults("section", "flat", "flat", "item: plank", "larch-25"))
        .containsExactly(
            "it replaces kit item plank, which is of pine, and the section as drawn, flat, is of"
                + " larch");
    assertThat(faults("section", "drawn", "flat", "item: plank", "larch-25")).isEmpty();
  }

  /** A sheet of 9 mm is set beside its own like; a plank may be planed to what is drawn. */
  @Test
  void aSheetIsDrawnAsThickAsItIs() {
    assertThat(faults("panel", "of-thin", "of-thin", "item: sheet", "ply-6"))
        .containsExactly(
            "it replaces kit item sheet, 9 mm thick, and the thickest board of the section as"
                + " drawn, of-thin, is 6 mm");
    assertThat(faults("panel", "of-sheet", "of-thin", "item: sheet", "ply-6")).isEmpty();
    assertThat(faults("section", "drawn", "two", "item: plank", "larch-18")).isEmpty();
  }

  /** Each bolt is 1.45 times as strong; four of them for eight bear 0.73 of what was drawn. */
  @Test
  void fewerFasteningsAreCountedInTheSections() {
    String bolts =
        """
        materials: [{id: bolt-x, kind: bolt, source: test}]
        stock: [{id: m12, what: bolt M12, material: bolt-x, qty: 8}]
        sections:
          - {id: d, shape: bolt, material: bolt-x, dimensions: {diameter: 10 mm%s}}
          - {id: b, shape: bolt, material: bolt-x, dimensions: {diameter: 12 mm%s}}
        assessments:
          - {id: a, method: bolt, on: 2026-02-01, designed: d, built: b, require: {strength: 1}}
        substitutions:
          - {id: s, instead-of: {what: bolts, qty: 8}, use: [{stock: m12, qty: %s}], grade: structural, why: here, proposed: {by: nora, on: 2026-01-30}, assessment: a}
        """;
    assertThat(counted(bolts, "", "", "4"))
        .containsExactly("it takes 4 for 8, and its sections count 1 for 1");
    assertThat(counted(bolts, ", count: 8", ", count: 5", "4"))
        .containsExactly("it takes 4 for 8, and its sections count 5 for 8");
    assertThat(counted(bolts, ", count: 8", ", count: 4", "4")).isEmpty();
    assertThat(counted(bolts, ", count: 2", ", count: 1", "4")).isEmpty();
    assertThat(counted(bolts, "", "", "8")).isEmpty();
    assertThat(counted(bolts, "", "", "4 kg")).isEmpty();
  }

  private static List<String> counted(String bolts, String drawn, String made, String taken) {
    Ledger ledger = Sample.ledger(bolts.formatted(drawn, made, taken));
    return OtherStuff.of(ledger.substitutions().get(0), ledger).stream()
        .map(OtherStuff.Fault::what)
        .toList();
  }

  @Test
  void whatWasWorkedOutElsewhereIsNotSeenHere() {
    assertThat(faults("external", "flat", "flat", "item: plank", "pine-25")).isEmpty();
  }
}

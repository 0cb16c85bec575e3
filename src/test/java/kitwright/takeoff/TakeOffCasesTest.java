package kitwright.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import kitwright.Sample;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What each sort of section takes, each sum by hand, and what nobody can work out. */
class TakeOffCasesTest {
  private static final String RECORDS =
      """
      materials:
        - {id: epoxy, kind: resin, mix-ratio: 0.25, hardener: slow, source: test}
        - {id: slow, kind: resin, source: test}
        - {id: bare, kind: resin, source: test}
        - {id: alone, kind: resin, mix-ratio: 0.25, source: test}
        - {id: woven, kind: cloth, resin: epoxy, areal-weight: 400 g/m2, fibre-fraction: 0.5, source: test}
        - {id: foam, kind: core, source: test}
        - {id: ply, kind: plywood, source: test}
        - {id: cedar, kind: timber, source: test}
        - {id: plate, kind: metal, source: test}
        - {id: glue, kind: glue, source: test}
        - {id: screw, kind: bolt, source: test}
        - {id: odd, kind: cloth%s, source: test}
      sections: [{id: s%s}]
      tasks: [{id: t, what: T, takes: 1 d, uses: [{section: s, %s}]}]
      """;

  private static TakeOff of(String odd, String section, String use) {
    Ledger ledger = Sample.ledger(RECORDS.formatted(odd, section, use));
    return TakeOff.of(ledger.tasks().get(0), ledger);
  }

  private static List<String> told(TakeOff takeOff) {
    List<String> told = new ArrayList<>();
    takeOff
        .lines()
        .forEach(
            line ->
                told.add(
                    line.role().word()
                        + " "
                        + line.material().id()
                        + " "
                        + line.gross()
                        + line.thickness().map(thick -> " of " + thick).orElse("")));
    takeOff.gaps().forEach(gap -> told.add("not known " + gap.what()));
    return told;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // boards and cores by their area, with their thickness
        "layers: [{material: foam, thickness: 20 mm}] | area: 4 m2 | core foam 4 m2 of 20 mm",
        "layers: [{material: ply, thickness: 6 mm}] | area: 4 m2, waste: 25 % | panel ply 5 m2 of 6"
            + " mm",
        "layers: [{material: plate, thickness: 3 mm}] | area: 4 m2 | metal plate 4 m2 of 3 mm",
        "layers: [{material: cedar, thickness: 9 mm}] | area: 4 m2 | timber cedar 4 m2 of 9 mm",
        // along a length the section's width makes the area; boards are told by their length
        "width: 500 mm, layers: [{material: ply, thickness: 6 mm}] | length: 8 m | panel ply 4 m2"
            + " of 6 mm",
        "layers: [{material: cedar, thickness: 9 mm}] | length: 8 m, waste: 10 % | timber cedar 8.8"
            + " m",
        "layers: [{material: ply, thickness: 6 mm}] | length: 8 m | not known how wide section s"
            + " is",
        // what holds other things together is no layer
        "layers: [{material: glue}] | area: 4 m2 | not known how much of glue a layer takes",
        "layers: [{material: nothing}] | area: 4 m2 | not known what “nothing” is, since no"
            + " material of that name can be read",
        // strips side by side: 4 m2 / 0.05 m
        "layers: [{strips: [{material: cedar, width: 50 mm}]}] | area: 4 m2 | timber cedar 80 m",
        "layers: [{strips: [{material: cedar, width: 30 mm}, {void: 20 mm}]}] | area: 4 m2 | timber"
            + " cedar 80 m",
        "layers: [{strips: [{material: cedar, width: 50 mm}]}] | length: 4 m | timber cedar 4 m",
        // solid, along a length
        "material: cedar | length: 8 m, waste: 5 % | timber cedar 8.4 m",
        "material: plate | length: 8 m | metal plate 8 m",
        "material: cedar | area: 8 m2 | not known how long section s runs",
        // fasteners: one more than there are gaps, and whole ones
        "material: screw, dimensions: {spacing: 150 mm} | length: 3 m | fasteners screw 21 each",
        "material: screw, dimensions: {spacing: 150 mm} | length: 2.99 m | fasteners screw 20 each",
        "material: screw, dimensions: {spacing: 150 mm} | length: 3 m, waste: 10 % | fasteners"
            + " screw 24 each",
        "shape: bolt, material: plate, dimensions: {spacing: 150 mm} | length: 3 m | fasteners"
            + " plate 21 each",
        "material: screw | length: 3 m | not known how far apart the fasteners of s stand",
        "material: screw, dimensions: {spacing: 0 mm} | length: 3 m | not known how far apart the"
            + " fasteners of s stand",
        "what: a riddle | area: 4 m2 | not known what section s is made of",
      })
  void aSectionTakesWhatItIsMadeOf(String section, String use, String told) {
    assertThat(told(of("", ", " + section, use))).containsExactly(told);
  }

  @Test
  void aSectionThatNobodyWroteIsNotKnown() {
    Ledger ledger =
        Sample.ledger(
            RECORDS
                .formatted("", ", material: cedar", "length: 2 m")
                .replace("section: s,", "section: x,"));
    assertThat(told(TakeOff.of(ledger.tasks().get(0), ledger)))
        .containsExactly("not known what “x” is, since no section of that name can be read");
  }

  /** 10 m of a box 150 by 100 mm: 5 m2 of one ply; of a tube of 100 mm: 3.142 m2. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "dimensions: {width: 150 mm, height: 100 mm} | cloth woven 5 m2",
        "width: 150 mm, dimensions: {height: 100 mm} | cloth woven 5 m2",
        "dimensions: {diameter: 100 mm} | cloth woven 3.142 m2",
        "dimensions: {height: 100 mm} | not known how wide section s is"
      })
  void aSkinGoesRoundItsSection(String sides, String told) {
    assertThat(
            told(of("", ", " + sides + ", skins: [{material: woven, plies: 1}]", "length: 10 m")))
        .first()
        .isEqualTo(told);
  }

  /** 10 m2 of 400 g/m2 at a share of fibre of f by mass take 4 kg × (1 − f) / f of mix. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        ", resin: epoxy, areal-weight: 400 g/m2, fibre-fraction: 0.5 | cloth odd 10 m2; resin epoxy"
            + " 3.2 kg; hardener slow 0.8 kg",
        ", resin: epoxy, areal-weight: 400 g/m2, fibre-fraction: 0.8 | cloth odd 10 m2; resin epoxy"
            + " 0.8 kg; hardener slow 0.2 kg",
        ", resin: epoxy, areal-weight: 400 g/m2, fibre-fraction: 1 | cloth odd 10 m2; not known how"
            + " much resin odd takes",
        ", resin: epoxy, areal-weight: 400 g/m2, fibre-fraction: 0 | cloth odd 10 m2; not known how"
            + " much resin odd takes",
        ", resin: epoxy, areal-weight: 400 g/m2 | cloth odd 10 m2; not known how much resin odd"
            + " takes",
        ", resin: epoxy, fibre-fraction: 0.5 | cloth odd 10 m2; not known how much resin odd takes",
        ", areal-weight: 400 g/m2, fibre-fraction: 0.5 | cloth odd 10 m2; not known how much resin"
            + " odd takes",
        ", resin: bare, areal-weight: 400 g/m2, fibre-fraction: 0.5 | cloth odd 10 m2; resin bare 4"
            + " kg; not known how much of bare is hardener",
        ", resin: alone, areal-weight: 400 g/m2, fibre-fraction: 0.5 | cloth odd 10 m2; resin alone"
            + " 3.2 kg; not known which hardener goes with alone",
        // lengths of 1 m lie 0.2 m over each other: 10 / 0.8
        ", resin: bare, areal-weight: 400 g/m2, fibre-fraction: 0.5, roll-width: 1 m, overlap: 200"
            + " mm | cloth odd 12.5 m2; resin bare 5 kg; not known how much of bare is hardener",
        ", resin: bare, areal-weight: 400 g/m2, fibre-fraction: 0.5, roll-width: 1 m | cloth odd 10"
            + " m2; resin bare 4 kg; not known how much of bare is hardener",
      })
  void aClothTakesItsResin(String cloth, String told) {
    assertThat(
            String.join(
                "; ", told(of(cloth, ", layers: [{material: odd, plies: 1}]", "area: 10 m2"))))
        .isEqualTo(told);
  }

  /** Laps as wide as the roll, or on a roll of no width, are not “no laps”. */
  @ParameterizedTest
  @CsvSource({
    "'overlap: 1 m, roll-width: 1 m', not known how much of odd laps the next",
    "'overlap: 1.1 m, roll-width: 1 m', not known how much of odd laps the next",
    "overlap: 50 mm, not known how much of odd laps the next",
    "'overlap: 0 mm', cloth odd 10 m2",
    "'overlap: 0 mm, roll-width: 1 m', cloth odd 10 m2",
    "'overlap: 900 mm, roll-width: 1 m', cloth odd 100 m2"
  })
  void lapsThatCannotBeReckonedAreNotLeftOut(String laps, String told) {
    assertThat(told(of(", " + laps, ", layers: [{material: odd, plies: 1}]", "area: 10 m2")).get(0))
        .isEqualTo(told);
  }

  @Test
  void aClothOfWhichNobodySaysHowManyPliesTakesNobodyKnowsHowMuch() {
    assertThat(told(of("", ", layers: [{material: woven}]", "area: 10 m2")))
        .containsExactly("not known how many plies of woven there are");
  }

  @Test
  void theSumSaysOnePlyAndHasNoWasteWhereThereIsNone() {
    assertThat(
            of("", ", layers: [{material: woven, plies: 1}]", "area: 10 m2").lines().get(0).sum())
        .isEqualTo("10 m2 × 1 ply = 10 m2");
    assertThat(
            of("", ", material: screw, dimensions: {spacing: 150 mm}", "length: 3 m, waste: 10 %")
                .lines()
                .get(0)
                .sum())
        .isEqualTo("3 m / 150 mm and one more = 21; with waste 24");
    assertThat(
            of("", ", material: screw, dimensions: {spacing: 150 mm}", "length: 3 m")
                .lines()
                .get(0)
                .sum())
        .isEqualTo("3 m / 150 mm and one more = 21");
  }

  @Test
  void onlyOpenWorkIsAskedForWhatIsNotKnown() {
    String yaml = RECORDS.formatted("", ", what: a riddle", "area: 4 m2");
    String done =
        yaml.replace("takes: 1 d,", "takes: 1 d, started: 2026-02-01, finished: 2026-02-02,");
    String dropped = yaml.replace("takes: 1 d,", "takes: 1 d, withdrawn: 2026-02-02,");
    assertThat(Sample.findings(new TakeOffIncomplete(), yaml)).hasSize(1);
    assertThat(Sample.findings(new TakeOffIncomplete(), done)).isEmpty();
    assertThat(Sample.findings(new TakeOffIncomplete(), dropped)).isEmpty();
  }

  private static final String LESSONS =
      """
      materials: [{id: ply, kind: plywood, source: test}, {id: teak, kind: plywood, source: test}, {id: foam, kind: core, source: test}]
      kit: [{id: sheet, what: sheet, qty: 40 m2, material: ply}]
      stock: [{id: rest, what: rest, qty: 40 m2, material: ply}]
      sections:
        - {id: s, layers: [{material: ply, thickness: 6 mm}]}
        - {id: two, layers: [{material: ply, thickness: 6 mm}, {material: ply, thickness: 9 mm}, {material: teak, thickness: 4 mm}]}
      tasks:
        - {id: a, what: A, takes: 1 d, started: 2026-01-10, finished: 2026-01-12, uses: [{section: s, area: 10 m2}]}
        - {id: b, what: B, takes: 1 d%s, uses: [{section: %s, area: 10 m2}]}
      ---
      day: 2026-01-12
      used: [%s]
      ---
      """;

  /** Ten square metres by the sum, in each task. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{item: sheet, qty: 12 m2, task: a} | 1: 12 m2 for 10 m2, 0.200",
        "{stock: rest, qty: 12 m2, task: a} | 1: 12 m2 for 10 m2, 0.200",
        "{material: ply, qty: 9 m2, task: a} | 1: 9 m2 for 10 m2, -0.100",
        "{material: ply, qty: 9 m2, task: a}, {stock: rest, qty: 2 m2, task: a} | 1: 11 m2 for 10"
            + " m2, 0.100",
        // of another material, for another task or none, in another unit
        "{material: foam, qty: 9 m2, task: a} | ",
        "{material: ply, qty: 9 m2} | ",
        "{material: ply, qty: 9 kg, task: a} | ",
        "{material: ply, qty: 12 m2, task: a}, {material: ply, qty: 13 m2, task: b} | 2: 25 m2 for"
            + " 20 m2, 0.250",
      })
  void theLogTeachesWhatFinishedWorkUsedBeyondTheSum(String used, String told) {
    assertThat(learned(", started: 2026-01-10, finished: 2026-01-12", "s", used))
        .containsExactlyElementsOf(told == null ? List.of() : List.of(told));
  }

  @Test
  void workThatIsNotFinishedTeachesNothingYet() {
    String used = "{material: ply, qty: 12 m2, task: b}";
    assertThat(learned(", started: 2026-01-10", "s", used)).isEmpty();
    assertThat(learned(", started: 2026-01-10, finished: 2026-01-12", "s", used)).hasSize(1);
  }

  /** Layers of one material are one, materials of one sort are one lesson of one task. */
  @Test
  void oneTaskIsOneLessonOfASort() {
    assertThat(
            learned(
                ", started: 2026-01-10, finished: 2026-01-12",
                "two",
                "{material: ply, qty: 22 m2, task: b}, {material: teak, qty: 11 m2, task: b}"))
        .containsExactly("1: 33 m2 for 30 m2, 0.100");
  }

  private static List<String> learned(String task, String section, String used) {
    Ledger ledger = Sample.ledger(LESSONS.formatted(task, section, used));
    return LearnedWaste.of(ledger.asOf(Sample.TODAY)).stream()
        .map(each -> each.tasks() + ": " + each.used() + " for " + each.net() + ", " + each.share())
        .toList();
  }
}

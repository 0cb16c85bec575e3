package kitwright.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Map;
import kitwright.Sample;
import kitwright.finding.Findings;
import kitwright.ledger.Ledger;
import kitwright.value.Quantity;
import kitwright.value.Unit;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;

/** Sums worked by hand; the resin is the definition of fibre share by mass turned round. */
class TakeOffTest {
  private static final String MATERIALS =
      """
      materials:
        - {id: e-glass, kind: fibre, density: 2560 kg/m3, source: test}
        - {id: epoxy, kind: resin, density: 1120 kg/m3, mix-ratio: 0.25, hardener: slow, source: test}
        - {id: slow, kind: resin, density: 970 kg/m3, source: test}
        - {id: woven, kind: cloth, fibre: e-glass, resin: epoxy, areal-weight: 400 g/m2, fibre-fraction: 0.5, roll-width: 1 m, overlap: 200 mm, source: test}
        - {id: foam, kind: core, density: 80 kg/m3, source: test}
        - {id: cedar, kind: timber, density: 370 kg/m3, source: test}
        - {id: bolt, kind: bolt, source: test}
      sections:
        - {id: skin, layers: [{material: woven, plies: 2}]}
        - {id: deck, layers: [{material: woven, plies: 1}, {material: foam, thickness: 20 mm}, {material: woven, plies: 1}]}
        - {id: planking, layers: [{thickness: 11 mm, strips: [{material: cedar, width: 20 mm}]}]}
        - {id: rail, shape: rectangle, material: cedar, dimensions: {width: 30 mm, height: 45 mm}}
        - {id: row, shape: bolt, material: bolt, dimensions: {spacing: 150 mm}}
      """;

  private static TakeOff of(String use) {
    Ledger ledger =
        Sample.ledger(
            MATERIALS + "tasks: [{id: t, what: Cover it, takes: 1 d, uses: [" + use + "]}]\n");
    return TakeOff.of(ledger.tasks().get(0), ledger);
  }

  private static Tuple line(Line.Role role, String net, String gross, Unit unit) {
    return Tuple.tuple(role, Quantity.of(net, unit), Quantity.of(gross, unit));
  }

  @Test
  void clothCountsPliesAndOverlapsAndResinItsShare() {
    // 10 m2, 2 plies, each 1 m length covering 0.8 m: 25 m2; 400 g/m2 at half fibre: 10 kg of mix.
    assertThat(of("{section: skin, area: 10 m2, waste: 10 %}").lines())
        .extracting(Line::role, Line::net, Line::gross)
        .containsExactly(
            line(Line.Role.CLOTH, "25", "27.5", Unit.M2),
            line(Line.Role.RESIN, "8", "8.8", Unit.KG),
            line(Line.Role.HARDENER, "2", "2.2", Unit.KG));
  }

  @Test
  void theSumCanBeFollowedByHand() {
    assertThat(of("{section: skin, area: 10 m2, waste: 10 %}").lines())
        .extracting(Line::sum)
        .containsExactly(
            "10 m2 × 2 plies × 1/0.8 for overlaps = 25 m2; and 10 % waste = 27.5 m2",
            "25 m2 × 0.4 kg/m2 × (1 − 0.5)/0.5 by fibre share × 1/1.25 = 8 kg;"
                + " and 10 % waste = 8.8 kg",
            "25 m2 × 0.4 kg/m2 × (1 − 0.5)/0.5 by fibre share × 0.25/1.25 = 2 kg;"
                + " and 10 % waste = 2.2 kg");
  }

  @Test
  void aSandwichTakesItsCoreAndBothSkins() {
    assertThat(of("{section: deck, area: 4 m2}").lines())
        .extracting(Line::role)
        .containsExactly(
            Line.Role.CLOTH,
            Line.Role.RESIN,
            Line.Role.HARDENER,
            Line.Role.CORE,
            Line.Role.CLOTH,
            Line.Role.RESIN,
            Line.Role.HARDENER);
  }

  @Test
  void stripsOverAnAreaAndTimberAlongALength() {
    assertThat(
            of("{section: planking, area: 3 m2}, {section: rail, length: 8 m, waste: 5 %}").lines())
        .extracting(Line::role, Line::net, Line::gross)
        .containsExactly(
            line(Line.Role.TIMBER, "150", "150", Unit.M),
            line(Line.Role.TIMBER, "8", "8.4", Unit.M));
  }

  @Test
  void fastenersStandAtBothEnds() {
    assertThat(of("{section: row, length: 3 m}").lines())
        .extracting(Line::net)
        .containsExactly(Quantity.of("21", Unit.EACH));
  }

  @Test
  void whatIsLackingIsSaid() {
    assertThat(of("{section: skin, length: 3 m}").gaps())
        .containsExactly(
            new TakeOff.Gap("how wide section skin is", "Write “area” instead of “length”."));
  }

  @Test
  void theLogTeachesTheBuildersOwnWaste() {
    Map<String, String> files =
        Map.of(
            "build.yaml",
            "build: {name: S, currency: EUR, started: 2026-01-05}\n",
            "all.yaml",
            MATERIALS
                + """
                kit: [{id: roll, what: woven glass, qty: 60 m2, material: woven}]
                tasks:
                  - {id: t, what: Cover it, takes: 1 d, started: 2026-01-10, finished: 2026-01-12, uses: [{section: skin, area: 10 m2, waste: 10 %}]}
                """,
            "log/a.md",
            """
            ---
            day: 2026-01-12
            used: [{item: roll, qty: 30 m2, task: t}, {item: roll, qty: 4 m2}]
            ---
            """);
    Ledger ledger = Sample.read(files, new Findings()).orElseThrow();
    assertThat(LearnedWaste.of(ledger.asOf(Sample.TODAY)))
        .extracting(LearnedWaste::role, LearnedWaste::tasks, waste -> waste.share().toString())
        .containsExactly(Tuple.tuple(Line.Role.CLOTH, 1, "0.200"));
    assertThat(LearnedWaste.of(ledger.asOf(LocalDate.of(2026, 1, 11)))).isEmpty();
  }
}

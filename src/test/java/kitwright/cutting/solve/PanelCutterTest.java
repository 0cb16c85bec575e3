package kitwright.cutting.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class PanelCutterTest {
  private static PanelPart part(String mark, long length, long width, int qty, Grain grain) {
    return new PanelPart(mark, length, width, qty, 1, grain);
  }

  private static Panel panel(String id, long length, long width, int count, long value) {
    return new Panel(id, length, width, count, value, List.of());
  }

  private static PanelSaw saw(long rip, long cross, FirstCut first, Stages stages) {
    return new PanelSaw(rip, cross, 0, first, stages);
  }

  private static PanelPlan plan(PanelSaw saw, List<PanelPart> parts, Panel... stock) {
    PanelTask task = new PanelTask(parts, List.of(stock), saw, 10, 10);
    PanelPlan plan = PanelCutter.plan(task, Effort.steps(50_000_000));
    assertThat(PanelVerify.faults(task, plan)).isEmpty();
    return plan;
  }

  @Test
  void eachSawTakesItsOwnKerf() {
    // Two strips of 500 and a rip of 30: 1030 wide. Two pieces of 1000 and a cross-cut of 40: 2040.
    List<PanelPart> four = List.of(part("A", 1000, 500, 4, Grain.ALONG));
    PanelSaw saw = saw(30, 40, FirstCut.ALONG, Stages.TWO);
    assertThat(plan(saw, four, panel("p", 2040, 1030, 2, 1)).panels()).hasSize(1);
    assertThat(plan(saw, four, panel("p", 2039, 1030, 2, 1)).panels()).hasSize(2);
    assertThat(plan(saw, four, panel("p", 2040, 1029, 2, 1)).panels()).hasSize(2);
  }

  @Test
  void aPartIsTurnedOnlyWhereItsGrainAllows() {
    PanelSaw saw = saw(0, 0, FirstCut.EITHER, Stages.TWO);
    Panel narrow = panel("p", 500, 1000, 1, 1);
    assertThat(plan(saw, List.of(part("A", 1000, 500, 1, Grain.FREE)), narrow).missing()).isEmpty();
    assertThat(plan(saw, List.of(part("A", 1000, 500, 1, Grain.ACROSS)), narrow).missing())
        .isEmpty();
    assertThat(plan(saw, List.of(part("A", 1000, 500, 1, Grain.ALONG)), narrow).missing())
        .containsExactly(new Shortfall("A", 1));
  }

  @Test
  void aThirdCutLetsNarrowPartsShareAStrip() {
    List<PanelPart> parts =
        List.of(part("wide", 600, 300, 1, Grain.ALONG), part("slim", 300, 250, 1, Grain.ALONG));
    Panel strip = panel("p", 1000, 300, 2, 1);
    assertThat(plan(saw(0, 0, FirstCut.ALONG, Stages.TWO_AND_TRIM), parts, strip).panels())
        .hasSize(1);
    assertThat(plan(saw(0, 0, FirstCut.ALONG, Stages.TWO), parts, strip).panels()).hasSize(2);
  }

  @Test
  void theFirstCutMayHaveToRunAcross() {
    // Two columns of different widths: no rip from end to end parts them without loss.
    List<PanelPart> parts =
        List.of(part("A", 600, 500, 2, Grain.ALONG), part("B", 400, 250, 4, Grain.ALONG));
    Panel square = panel("p", 1000, 1000, 2, 1);
    assertThat(plan(saw(0, 0, FirstCut.ACROSS, Stages.TWO), parts, square).panels()).hasSize(1);
    assertThat(plan(saw(0, 0, FirstCut.EITHER, Stages.TWO), parts, square).panels()).hasSize(1);
    assertThat(plan(saw(0, 0, FirstCut.ALONG, Stages.TWO), parts, square).panels()).hasSize(2);
  }

  @Test
  void spoiltStripsAreAvoided() {
    Panel knotty =
        new Panel("knotty", 1000, 600, 1, 1, List.of(new Spoilt(Run.ACROSS, new Span(480, 520))));
    PanelPlan plan =
        plan(
            saw(3, 3, FirstCut.EITHER, Stages.TWO),
            List.of(part("A", 480, 600, 2, Grain.ALONG)),
            knotty);
    assertThat(plan.missing()).isEmpty();
  }

  @Test
  void thePanelsOfLeastValueAreUsed() {
    PanelPlan plan =
        plan(
            saw(0, 0, FirstCut.EITHER, Stages.TWO),
            List.of(part("A", 500, 500, 4, Grain.ALONG)),
            panel("new", 1000, 1000, 1, 100),
            panel("off-cut", 500, 1000, 2, 30));
    assertThat(plan.outcome().value()).isEqualTo(60);
    assertThat(plan.outcome().isProvedBest()).isTrue();
  }

  @Test
  void theFenceIsSetToAsFewWidthsAsPossible() {
    // Turned, the slats of 400 x 300 come from strips of 300 like the others.
    PanelPlan plan =
        plan(
            saw(0, 0, FirstCut.ALONG, Stages.TWO),
            List.of(part("A", 700, 300, 2, Grain.ALONG), part("B", 300, 400, 2, Grain.FREE)),
            panel("p", 1100, 800, 1, 1));
    assertThat(plan.settings()).isEqualTo(1);
  }

  @Test
  void whereNotEverythingFitsTheFirstPriorityIsMade() {
    PanelPlan plan =
        plan(
            saw(0, 0, FirstCut.EITHER, Stages.TWO),
            List.of(
                new PanelPart("frame", 900, 500, 1, 1, Grain.ALONG),
                new PanelPart("shelf", 400, 300, 5, 2, Grain.ALONG)),
            panel("p", 1000, 1000, 1, 1));
    assertThat(plan.missing()).containsExactly(new Shortfall("shelf", 3));
    assertThat(plan.outcome().mostParts()).isTrue();
  }

  /** Wanting one more must not make a plan that yields fewer, however short the search. */
  @Test
  void whoWantsMoreGetsNoFewer() {
    Panel off = panel("off", 1156, 1126, 2, 3200);
    Panel strip =
        new Panel(
            "strip", 2416, 166, 2, 1400, List.of(new Spoilt(Run.ACROSS, new Span(1188, 1248))));
    for (long steps : new long[] {300_000, 500_000, 2_000_000}) {
      int before = 0;
      for (int wanted = 6; wanted <= 14; wanted++) {
        List<PanelPart> parts =
            List.of(
                part("fore", 1120, 180, 6, Grain.ALONG),
                part("short", 540, 180, 6, Grain.ALONG),
                part("main", 1120, 140, 6, Grain.ALONG),
                new PanelPart("stop", 520, 60, wanted, 2, Grain.FREE));
        PanelTask task =
            new PanelTask(
                parts,
                List.of(off, strip),
                saw(3, 3, FirstCut.ALONG, Stages.TWO_AND_TRIM),
                300,
                100);
        int missing =
            PanelCutter.plan(task, Effort.steps(steps)).missing().stream()
                .mapToInt(Shortfall::missing)
                .sum();
        int made = 18 + wanted - missing;
        assertThat(made).as("%d wanted, %d steps", wanted, steps).isGreaterThanOrEqualTo(before);
        before = made;
      }
    }
  }
}

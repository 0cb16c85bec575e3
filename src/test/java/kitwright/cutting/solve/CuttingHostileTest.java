package kitwright.cutting.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Tasks nobody means: they end with a plan or a shortfall, and never hang. */
class CuttingHostileTest {
  private static final Effort EFFORT = Effort.steps(20_000_000);

  private static BarPart part(String mark, long length, int qty) {
    return new BarPart(mark, length, qty, 1, Optional.empty());
  }

  private static BarPlan plan(List<BarPart> parts, List<Bar> stock, long kerf) {
    BarTask task = new BarTask(parts, stock, kerf, 0, 1);
    BarPlan plan = BarCutter.plan(task, EFFORT);
    assertThat(BarVerify.faults(task, plan)).isEmpty();
    return plan;
  }

  @Test
  void aPartLongerThanAnyPieceIsMissing() {
    BarPlan plan =
        plan(
            List.of(part("long", 5000, 2), part("short", 500, 2)),
            List.of(new Bar("p", 1000, 9, 1, List.of())),
            3);
    assertThat(plan.missing()).containsExactly(new Shortfall("long", 2));
  }

  @Test
  void aKerfWiderThanThePartsLeavesThemFewToAPiece() {
    BarPlan plan =
        plan(List.of(part("A", 10, 30)), List.of(new Bar("p", 1000, 9, 1, List.of())), 90);
    // 10 n + 90 (n - 1) is 1000 at most: ten to a piece.
    assertThat(plan.bars()).hasSize(3);
  }

  @Test
  void noStockAtAllMeansNothingIsMade() {
    assertThat(plan(List.of(part("A", 10, 30)), List.of(), 3).missing())
        .containsExactly(new Shortfall("A", 30));
  }

  @Test
  void aDefectOrTrimThatTakesTheWholePieceLeavesNothing() {
    Bar spoilt = new Bar("p", 1000, 9, 1, List.of(new Span(0, 2000)));
    assertThat(plan(List.of(part("A", 10, 1)), List.of(spoilt), 3).missing()).hasSize(1);
    BarTask trimmed =
        new BarTask(
            List.of(part("A", 10, 1)), List.of(new Bar("p", 100, 1, 1, List.of())), 3, 60, 1);
    assertThat(BarCutter.plan(trimmed, EFFORT).missing()).hasSize(1);
  }

  @Test
  void aMillionPartsOfAMillionSizesEnd() {
    Random random = new Random(1);
    List<BarPart> parts = new ArrayList<>();
    for (int i = 0; i < 1_000_000; i++) {
      parts.add(part("P" + i, 100L + random.nextInt(900_000), 1));
    }
    List<Bar> stock = List.of(new Bar("p", 1_000_000, 2_000_000, 1, List.of()));
    BarPlan plan = plan(parts, stock, 30);
    assertThat(plan.missing()).isEmpty();
    assertThat(plan.outcome().percentAboveBound()).isLessThan(1);
  }

  @Test
  void aMillionPartsOfFewSizesEnd() {
    List<BarPart> parts =
        List.of(part("A", 7919, 400_000), part("B", 6101, 350_000), part("C", 3001, 250_000));
    BarPlan plan = plan(parts, List.of(new Bar("p", 60_000, 1_000_000, 7, List.of())), 31);
    assertThat(plan.missing()).isEmpty();
    assertThat(plan.outcome().percentAboveBound()).isLessThan(0.5);
  }

  @Test
  void aMillionTinyPartsFromOneHugePieceEnd() {
    BarPlan plan =
        plan(
            List.of(part("A", 1, 500_000), part("B", 2, 500_000)),
            List.of(new Bar("p", 100_000_000L, 1, 1, List.of())),
            1);
    assertThat(plan.missing()).isEmpty();
  }

  @Test
  void manySizesThatShareNoMeasureEnd() {
    Random random = new Random(2);
    List<BarPart> parts = new ArrayList<>();
    for (int i = 0; i < 500; i++) {
      parts.add(part("P" + i, 1_000L + random.nextInt(99_000), 1 + random.nextInt(4)));
    }
    List<Bar> stock = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      stock.add(new Bar("B" + i, 60_000L + random.nextInt(90_000), 20, 100 + i, List.of()));
    }
    assertThat(plan(parts, stock, 33).missing()).isEmpty();
  }

  @Test
  void withNoStepsAtAllThereIsStillAPlan() {
    BarTask task =
        new BarTask(
            List.of(part("A", 400, 5)), List.of(new Bar("p", 1000, 9, 1, List.of())), 3, 0, 1);
    BarPlan plan = BarCutter.plan(task, Effort.steps(0));
    assertThat(BarVerify.faults(task, plan)).isEmpty();
    assertThat(plan.missing()).isEmpty();
  }

  @Test
  void aClockMayEndTheSearch() {
    Effort impatient = new Effort(Long.MAX_VALUE, () -> true);
    Random random = new Random(3);
    List<BarPart> parts = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      parts.add(part("P" + i, 1_000L + random.nextInt(20_000), 9));
    }
    List<Bar> stock = List.of(new Bar("p", 60_001, 400, 1, List.of()));
    BarTask task = new BarTask(parts, stock, 33, 0, 1);
    assertThat(BarCutter.plan(task, impatient).missing()).isEmpty();
  }

  @Test
  void panelPartsOfVeryManySizesEnd() {
    Random random = new Random(4);
    List<PanelPart> parts = new ArrayList<>();
    for (int i = 0; i < 60_000; i++) {
      long length = 200L + random.nextInt(9_000);
      long width = 200L + random.nextInt(9_000);
      parts.add(new PanelPart("P" + i, length, width, 1, 1, Grain.FREE));
    }
    Panel sheet = new Panel("sheet", 24_400, 12_200, 2_000_000, 1, List.of());
    PanelSaw saw = new PanelSaw(30, 30, 0, FirstCut.EITHER, Stages.TWO_AND_TRIM);
    PanelTask task = new PanelTask(parts, List.of(sheet), saw, 1000, 500);
    PanelPlan plan = PanelCutter.plan(task, EFFORT);
    assertThat(PanelVerify.faults(task, plan)).isEmpty();
    assertThat(plan.missing()).isEmpty();
  }

  @Test
  void aMillionPanelPartsOfOneSizeEnd() {
    PanelPart part = new PanelPart("A", 3_000, 2_000, 1_000_000, 1, Grain.FREE);
    Panel sheet = new Panel("sheet", 24_400, 12_200, 100_000, 1, List.of());
    PanelSaw saw = new PanelSaw(30, 30, 0, FirstCut.EITHER, Stages.TWO);
    PanelTask task = new PanelTask(List.of(part), List.of(sheet), saw, 1000, 500);
    PanelPlan plan = PanelCutter.plan(task, EFFORT);
    assertThat(PanelVerify.faults(task, plan)).isEmpty();
    assertThat(plan.missing()).isEmpty();
  }
}

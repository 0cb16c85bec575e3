package kitwright.cutting.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BarCutterTest {
  private static BarPart part(String mark, long length, int qty) {
    return new BarPart(mark, length, qty, 1, Optional.empty());
  }

  private static Bar bar(String id, long length, int count, long value, Span... defects) {
    return new Bar(id, length, count, value, List.of(defects));
  }

  private static BarPlan plan(BarTask task) {
    BarPlan plan = BarCutter.plan(task, Effort.usual());
    assertThat(BarVerify.faults(task, plan)).isEmpty();
    return plan;
  }

  @Test
  void aKerfIsPaidBetweenPiecesAndNotAfterTheLast() {
    // Three of 1000 and two kerfs of 30 are 3060: exactly the plank.
    BarTask fits =
        new BarTask(List.of(part("A", 1000, 3)), List.of(bar("p", 3060, 2, 1)), 30, 0, 1);
    assertThat(plan(fits).bars()).hasSize(1);
    BarTask tooShort =
        new BarTask(List.of(part("A", 1000, 3)), List.of(bar("p", 3059, 2, 1)), 30, 0, 1);
    assertThat(plan(tooShort).bars()).hasSize(2);
  }

  /** Two of 900 can be made and the third of 5000 cannot: out of the plank of 7, not of 2 × 9. */
  @Test
  void whatIsMadeWhereAPartIsMissingComesOutOfTheCheapestStock() {
    BarTask task =
        new BarTask(
            List.of(part("A", 900, 2), part("B", 5000, 1)),
            List.of(bar("dear", 1000, 2, 9), bar("cheap", 1900, 1, 7)),
            3,
            0,
            1);
    BarPlan plan = plan(task);
    assertThat(plan.missing()).containsExactly(new Shortfall("B", 1));
    assertThat(plan.outcome().value()).isEqualTo(7);
  }

  @Test
  void bothEndsAreTrimmedFirst() {
    BarTask task =
        new BarTask(List.of(part("A", 1000, 1)), List.of(bar("p", 1100, 1, 1)), 30, 50, 1);
    assertThat(plan(task).bars().get(0).pieces().get(0).from()).isEqualTo(50);
    BarTask longer =
        new BarTask(List.of(part("A", 1001, 1)), List.of(bar("p", 1100, 1, 1)), 30, 50, 1);
    assertThat(plan(longer).missing()).containsExactly(new Shortfall("A", 1));
  }

  @Test
  void piecesLieBesideADefectNotAcrossIt() {
    BarTask task =
        new BarTask(
            List.of(part("A", 900, 2)),
            List.of(bar("knotty", 2000, 1, 1, new Span(950, 1000)), bar("clear", 2000, 1, 5)),
            30,
            0,
            1);
    BarPlan plan = plan(task);
    assertThat(plan.bars()).extracting(CutBar::stock).containsExactly("knotty");
    assertThat(plan.outcome().isProvedBest()).isTrue();
  }

  @Test
  void theStockOfLeastValueIsUsedNotTheFewestPieces() {
    BarTask task =
        new BarTask(
            List.of(part("A", 1000, 4)),
            List.of(bar("long", 4000, 1, 100), bar("short", 1000, 4, 20)),
            0,
            0,
            1);
    BarPlan plan = plan(task);
    assertThat(plan.outcome().value()).isEqualTo(80);
    assertThat(plan.bars()).hasSize(4).allMatch(b -> b.stock().equals("short"));
  }

  @Test
  void whereNotEverythingFitsTheFirstPriorityIsMadeAndTheRestIsNamed() {
    BarTask task =
        new BarTask(
            List.of(
                new BarPart("keel", 900, 1, 1, Optional.empty()),
                new BarPart("batten", 300, 3, 2, Optional.empty())),
            List.of(bar("p", 1000, 1, 1)),
            0,
            0,
            1);
    BarPlan plan = plan(task);
    assertThat(plan.bars().get(0).pieces()).extracting(BarPiece::mark).containsExactly("keel");
    assertThat(plan.missing()).containsExactly(new Shortfall("batten", 3));
    assertThat(plan.outcome().mostParts()).isTrue();
  }

  @Test
  void leftOversLieTogetherWhereTheyAreUseful() {
    // Both planks are needed; 600 + 300 leaves 100 and 900 whole rather than two middling ends.
    BarTask task =
        new BarTask(
            List.of(part("A", 600, 1), part("B", 500, 1), part("C", 400, 1)),
            List.of(bar("p", 1000, 2, 1)),
            0,
            0,
            300);
    assertThat(plan(task).bars().stream().flatMap(b -> b.remnants().stream()).toList())
        .extracting(Span::length)
        .containsExactly(500L);
  }

  @Test
  void anEmptyTaskHasAnEmptyPlan() {
    BarTask task = new BarTask(List.of(), List.of(), 30, 0, 1);
    assertThat(plan(task).bars()).isEmpty();
    assertThat(plan(task).outcome().isProvedBest()).isTrue();
  }

  @Test
  void aPartTooLongForAnyPieceIsJoinedWhereItPermits() {
    // Each scarf of 80 takes 80 more: 2 x 1000 - 80 = 1920.
    BarPart sheer = new BarPart("sheer", 1920, 1, 1, Optional.of(new Joint(80, 300)));
    BarTask task = new BarTask(List.of(sheer), List.of(bar("p", 1000, 3, 1)), 3, 0, 1);
    BarPlan plan = plan(task);
    assertThat(plan.bars()).hasSize(2);
    assertThat(plan.outcome().isProvedBest()).isTrue();
    assertThat(plan.bars().get(0).pieces())
        .containsExactly(new BarPiece("sheer", 1, 1, 2, 0, 1000));
  }

  @Test
  void noPieceOfAJoinedPartIsShorterThanItMayBe() {
    BarPart sheer = new BarPart("sheer", 1050, 1, 1, Optional.of(new Joint(50, 300)));
    BarTask task = new BarTask(List.of(sheer), List.of(bar("p", 1000, 2, 1)), 3, 0, 1);
    assertThat(plan(task).missing()).isEmpty();
  }

  @Test
  void leftOversAreJoinedWhereAPartNoLongerFitsWhole() {
    BarPart whole = part("frame", 600, 2);
    BarPart batten = new BarPart("batten", 700, 1, 2, Optional.of(new Joint(50, 200)));
    BarTask task = new BarTask(List.of(whole, batten), List.of(bar("p", 1000, 2, 1)), 5, 0, 1);
    BarPlan plan = plan(task);
    assertThat(plan.missing()).isEmpty();
    assertThat(plan.bars().stream().flatMap(b -> b.pieces().stream()))
        .filteredOn(p -> p.mark().equals("batten"))
        .extracting(BarPiece::length)
        .containsExactlyInAnyOrder(395L, 355L);
  }
}

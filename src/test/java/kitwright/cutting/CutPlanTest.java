package kitwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import kitwright.Sample;
import kitwright.cutting.solve.BarVerify;
import kitwright.cutting.solve.Effort;
import kitwright.cutting.solve.PanelVerify;
import kitwright.kit.Positions;
import kitwright.ledger.Cut;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;

/** From the ledger's rack to the bench. */
class CutPlanTest {
  private static final LocalDate TODAY = Sample.TODAY;

  private static CutPlan plan(String yaml) {
    Ledger ledger = Sample.ledger(yaml);
    Cut cut = ledger.cuts().get(0);
    Positions positions = Positions.on(Facts.of(ledger, TODAY));
    assertThat(CutFaults.of(cut, ledger, positions)).isEmpty();
    CutPlan plan = CutPlan.of(cut, ledger, positions, Effort.steps(5_000_000));
    plan.lengths()
        .ifPresent(
            p -> assertThat(BarVerify.faults(Wanted.lengths(cut, plan.rack()), p)).isEmpty());
    plan.panels()
        .ifPresent(
            p -> assertThat(PanelVerify.faults(Wanted.panels(cut, plan.rack()), p)).isEmpty());
    return plan;
  }

  @Test
  void twoStavesOfAPlankWithKerfAndTrimPaid() {
    CutPlan plan =
        plan(
            """
            stock: [{id: larch, what: larch board, size: 2400 x 110 x 32 mm, pieces: 2}]
            cuts: [{id: staves, from: [larch], kerf: 3 mm, trim: 10 mm, keep-length: 400 mm,
              parts: [{mark: side, length: 1180 mm, width: 96 mm, qty: 3}]}]
            """);
    assertThat(plan.missing()).isEmpty();
    assertThat(plan.outcome().isProvedBest()).isTrue();
    assertThat(Steps.of(plan))
        .containsExactly(
            new Steps(
                "larch, piece 1",
                List.of("from 10 to 1190: side 1, 1180 mm", "from 1193 to 2373: side 2, 1180 mm")),
            new Steps(
                "larch, piece 2",
                List.of(
                    "from 10 to 1190: side 3, 1180 mm", "keep 1197 mm, mark it larch-staves-1")));
  }

  @Test
  void aLongPartIsScarfedWithTheRunOfItsThickness() {
    CutPlan plan =
        plan(
            """
            stock: [{id: larch, what: larch board, size: 1600 x 110 x 30 mm, pieces: 2}]
            cuts: [{id: rail, from: [larch], kerf: 3 mm, parts: [{mark: rail, length: 2400 mm, width: 100 mm, scarf: 8}]}]
            """);
    assertThat(plan.missing()).isEmpty();
    long cut =
        plan.lengths().orElseThrow().bars().stream()
            .flatMap(bar -> bar.pieces().stream())
            .mapToLong(piece -> piece.length())
            .sum();
    assertThat(Tenths.mm(cut)).as("2400 and one scarf of 8 x 30").isEqualTo("2640");
  }

  @Test
  void panelsAreRippedIntoStripsAndTheRestIsKept() {
    CutPlan plan =
        plan(
            """
            stock: [{id: ply, what: ply, size: 1200 x 600 x 6 mm, pieces: 1, grain: along}]
            cuts: [{id: shelves, from: [ply], kerf: 3 mm, keep: 200 x 100 mm, first: along,
              parts: [{mark: shelf, length: 590 mm, width: 200 mm, qty: 4, grain: along}]}]
            """);
    assertThat(plan.missing()).isEmpty();
    assertThat(Steps.fence(plan)).containsExactly("200 mm for 2 strips");
    assertThat(plan.panels().orElseThrow().panels().get(0).remnants()).isNotEmpty();
  }

  @Test
  void whatOtherWorkNeedsIsLeftAloneAndSaid() {
    CutPlan plan =
        plan(
            """
            stock:
              - {id: kept, what: larch board, size: 2400 x 110 x 32 mm, pieces: 2, keep-for: [other]}
              - {id: free, what: larch board, size: 1300 x 110 x 32 mm, pieces: 1}
            tasks: [{id: other, what: Other work, takes: 1 d}, {id: mine, what: My work, takes: 1 d}]
            cuts: [{id: staves, task: mine, from: [kept, free], kerf: 3 mm, parts: [{mark: side, length: 1180 mm, qty: 2}]}]
            """);
    assertThat(plan.missing())
        .singleElement()
        .satisfies(each -> assertThat(each.missing()).isEqualTo(1));
    assertThat(plan.rack().withheld()).containsExactly("kept is kept for the task other.");
  }

  @Test
  void whatIsKeptForTheCutsOwnTaskIsFree() {
    CutPlan plan =
        plan(
            """
            stock: [{id: kept, what: larch board, size: 2400 x 110 x 32 mm, pieces: 1, keep-for: [mine]}]
            tasks: [{id: mine, what: My work, takes: 1 d}]
            cuts: [{id: staves, task: mine, from: [kept], kerf: 3 mm, parts: [{mark: side, length: 1180 mm, qty: 2}]}]
            """);
    assertThat(plan.missing()).isEmpty();
  }

  @Test
  void theRestGoesBackOnTheRackAsRecordsThatRead() {
    CutPlan plan =
        plan(
            """
            stock: [{id: larch, what: larch board, material: sitka-spruce, size: 2400 x 110 x 32 mm, pieces: 2}]
            cuts: [{id: staves, from: [larch], kerf: 3 mm, keep-length: 400 mm, parts: [{mark: side, length: 1180 mm, qty: 1}]}]
            """);
    Ledger after = Sample.ledger(Remnants.yaml(plan, TODAY));
    assertThat(after.stock())
        .singleElement()
        .satisfies(rest -> assertThat(rest.size().orElseThrow()).hasToString("1217 x 110 x 32 mm"));
  }

  /** What is written on the wood is what its record is called. */
  @Test
  void everyRestIsMarkedWithTheIdOfItsRecord() {
    CutPlan plan =
        plan(
            """
            stock: [{id: ply, what: off-cut, size: 900 x 500 x 6 mm, pieces: 2}]
            cuts: [{id: gussets, from: [ply], kerf: 3 mm, parts: [{mark: gusset, length: 200 mm, width: 150 mm, qty: 16}]}]
            """);
    List<String> marks =
        Steps.of(plan).stream()
            .flatMap(steps -> steps.lines().stream())
            .filter(line -> line.startsWith("keep"))
            .map(line -> line.substring(line.lastIndexOf(' ') + 1))
            .toList();
    assertThat(marks).hasSizeGreaterThan(1).doesNotHaveDuplicates();
    assertThat(Sample.ledger(Remnants.yaml(plan, TODAY)).stock())
        .extracting(stock -> stock.id())
        .isEqualTo(marks);
  }
}

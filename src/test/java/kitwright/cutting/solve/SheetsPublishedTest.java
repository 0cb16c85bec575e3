package kitwright.cutting.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The six published sheets, where they lie beside the checkout, each under the rules it was
 * published with (Christofides and Whitlock 1977, Hifi and Zissimopoulos 1996, the lists of Cintra,
 * University of São Paulo; all as quoted in index.csv there). An exact search over cuts in any
 * number of stages gives every published value. Another, held to two stages and a trim, as a person
 * cuts, gives what the product's own search plans. So the whole gap to the published value is the
 * price of cutting in strips.
 */
class SheetsPublishedTest {
  private record Row(String file, boolean limited, boolean turned, long published) {}

  /** Nothing better than {@code bound} can be planned. */
  private record Plan(long worth, long bound) {}

  /** The best two stages are found, but the search knows no bound as low. */
  private static final Row NOT_PROVED =
      new Row("cgcut2.txt", /* limited= */ true, /* turned= */ false, 2892);

  @TestFactory
  Stream<DynamicTest> everySheetIsCutAsWellAsTwoStagesAllow() {
    Optional<Path> folder = ReferenceLists.folder();
    assumeTrue(folder.isPresent(), "the published sheets do not lie beside the checkout");
    Path sheets = folder.get().resolve("sheets");
    List<Row> rows = rows(sheets);
    assertThat(rows).hasSize(12);
    assertThat(rows.stream().map(Row::file).distinct()).hasSize(6);
    return rows.stream()
        .map(row -> DynamicTest.dynamicTest(row.toString(), () -> isCutWell(sheets, row)));
  }

  private static void isCutWell(Path sheets, Row row) {
    PublishedSheet sheet =
        PublishedSheet.read(sheets.resolve(row.file()), row.limited(), row.turned());
    long twoStages = Math.max(sheet.inStrips(), sheet.crossed().inStrips());
    assertThat(sheet.inAnyStages(row.published())).isEqualTo(row.published());
    Plan plan = mostWorth(sheet, Stages.TWO_AND_TRIM);
    Plan blocks = mostWorth(sheet, Stages.THREE_AND_TRIM);
    assertThat(blocks.worth()).as("in blocks").isBetween(twoStages, row.published());
    assertThat(blocks.bound()).as("any cuts").isGreaterThanOrEqualTo(row.published());
    assertThat(plan.worth()).isEqualTo(twoStages);
    assertThat(plan.bound()).isGreaterThanOrEqualTo(twoStages);
    if (!row.equals(NOT_PROVED)) {
      assertThat(plan.bound()).as("proved").isEqualTo(twoStages);
    }
    System.out.printf(
        "SHEETS %s %s, in blocks %s (%.2f %% less)%n",
        row, plan, blocks, 100.0 * (row.published() - twoStages) / row.published());
  }

  private static List<Row> rows(Path sheets) {
    return ReferenceLists.lines(sheets.resolve("index.csv")).stream()
        .map(line -> line.split(",", -1))
        .filter(cell -> cell[0].endsWith(".txt"))
        .map(
            cell ->
                new Row(
                    cell[0],
                    !cell[1].contains("unlimited"),
                    cell[1].contains("rotation allowed"),
                    Long.parseLong(cell[2])))
        .toList();
  }

  /**
   * Parts of the most worth out of one sheet by the product's own search: the sheet costs nothing,
   * a part left out costs its worth. No kerf, no edge trim.
   */
  private static Plan mostWorth(PublishedSheet sheet, Stages stages) {
    List<PanelType> types = new ArrayList<>();
    for (PublishedSheet.Piece piece : sheet.pieces()) {
      Grain grain = piece.turned() ? Grain.FREE : Grain.ALONG;
      types.add(new PanelType(piece.length(), piece.width(), 1, List.of(Optional.of(grain))));
    }
    long[] worth = sheet.pieces().stream().mapToLong(PublishedSheet.Piece::value).toArray();
    int[] wanted = sheet.pieces().stream().mapToInt(PublishedSheet.Piece::copies).toArray();
    Area all = new Area(0, 0, sheet.length(), sheet.width());
    PanelKind kind = new PanelKind(List.of(all), 0, List.of(0), 1, List.of());
    PanelSaw saw = new PanelSaw(0, 0, 0, FirstCut.EITHER, stages);
    Cover cover = new Cover(wanted, new int[] {1}, new long[] {0}, worth);
    PanelPricing pricing = new PanelPricing(types, List.of(kind), saw, Set.of());
    Work work = new Work(Effort.steps(50_000_000));
    Search<List<StripCut>> search = new Search<>(cover, pricing, work);
    search.run(0);
    int[] made = new int[wanted.length];
    for (Column<List<StripCut>> column : search.best().columns()) {
      column.layout.forEach(strip -> strip.pieces().forEach(lie -> made[lie.type()]++));
    }
    long laid = 0;
    long everything = 0;
    for (int i = 0; i < made.length; i++) {
      laid += Math.min(made[i], wanted[i]) * worth[i];
      everything += wanted[i] * worth[i];
    }
    return new Plan(laid, everything - search.bound());
  }
}

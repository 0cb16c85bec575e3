package kitwright.cutting.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * The six sheets of ../shared/reference/cutting/sheets, unlimited copies: an exact recursion for
 * cuts in any number of stages gives the published values (Hifi and Zissimopoulos 1996; the lists
 * of Cintra, University of São Paulo; both as quoted in index.csv there), and held to two stages
 * and a trim, as a person cuts, it gives what the panels' pricing finds. So the whole gap to the
 * published value is the price of two stages.
 */
class SheetsPublishedTest {
  private record Piece(int length, int width, long value) {}

  private record Sheet(int length, int width, List<Piece> pieces) {}

  private record Row(String file, boolean turned, long published) {}

  @Test
  void theRecursionGivesThePublishedValuesAndTwoStagesWhatThePricingFinds() {
    Optional<Path> folder = ReferenceLists.folder();
    assumeTrue(folder.isPresent());
    List<Row> rows = rows(folder.get().resolve("sheets"));
    assertThat(rows.stream().map(Row::file).distinct()).hasSize(6);
    for (Row row : rows) {
      Sheet sheet = sheet(folder.get().resolve("sheets").resolve(row.file()), row.turned());
      long twoStages = Math.max(strips(sheet), strips(crossed(sheet)));
      assertThat(anyStages(sheet)).as(row.toString()).isEqualTo(row.published());
      assertThat(pricing(sheet, row.turned())).as(row.toString()).isEqualTo(twoStages);
      System.out.printf(
          "SHEETS %s %s published %d two stages %d (%.2f %% less)%n",
          row.file(),
          row.turned() ? "turned" : "not turned",
          row.published(),
          twoStages,
          100.0 * (row.published() - twoStages) / row.published());
    }
  }

  private static List<Row> rows(Path sheets) {
    return ReferenceLists.lines(sheets.resolve("index.csv")).stream()
        .map(line -> line.split(",", -1))
        .filter(cell -> cell[1].contains("unlimited"))
        .map(
            cell -> new Row(cell[0], cell[1].contains("rotation allowed"), Long.parseLong(cell[2])))
        .toList();
  }

  /** Pieces as numbers of a line: length, width, (most copies,) value. */
  private static Sheet sheet(Path file, boolean turned) {
    List<int[]> lines =
        ReferenceLists.lines(file).stream()
            .map(String::strip)
            .filter(line -> !line.isEmpty())
            .map(line -> Arrays.stream(line.split("\\s+")).mapToInt(Integer::parseInt).toArray())
            .toList();
    List<Piece> pieces = new ArrayList<>();
    for (int[] line : lines.subList(2, lines.size())) {
      long value = line[line.length - 1];
      pieces.add(new Piece(line[0], line[1], value));
      if (turned) {
        pieces.add(new Piece(line[1], line[0], value));
      }
    }
    assertThat(lines.get(0)[0]).isEqualTo(lines.size() - 2);
    return new Sheet(lines.get(1)[0], lines.get(1)[1], pieces);
  }

  private static Sheet crossed(Sheet sheet) {
    return new Sheet(
        /* length= */ sheet.width(),
        /* width= */ sheet.length(),
        sheet.pieces().stream()
            .map(p -> new Piece(/* length= */ p.width(), /* width= */ p.length(), p.value()))
            .toList());
  }

  /** Gilmore and Gomory, Operations Research 14 (1966) 1045-1074: the better of every first cut. */
  private static long anyStages(Sheet sheet) {
    long[][] best = new long[sheet.length() + 1][sheet.width() + 1];
    for (int x = 1; x <= sheet.length(); x++) {
      for (int y = 1; y <= sheet.width(); y++) {
        long most = Math.max(best[x - 1][y], best[x][y - 1]);
        for (Piece piece : sheet.pieces()) {
          if (piece.length() <= x && piece.width() <= y) {
            most = Math.max(most, piece.value());
          }
        }
        for (int cut = 1; cut <= x / 2; cut++) {
          most = Math.max(most, best[cut][y] + best[x - cut][y]);
        }
        for (int cut = 1; cut <= y / 2; cut++) {
          most = Math.max(most, best[x][cut] + best[x][y - cut]);
        }
        best[x][y] = most;
      }
    }
    return best[sheet.length()][sheet.width()];
  }

  /** Strips along the length, each filled with what is no wider: two sacks, one in the other. */
  private static long strips(Sheet sheet) {
    long[] one = IntStream.rangeClosed(0, sheet.width()).mapToLong(w -> strip(sheet, w)).toArray();
    long[] over = new long[sheet.width() + 1];
    for (int y = 1; y <= sheet.width(); y++) {
      over[y] = over[y - 1];
      for (int strip = 1; strip <= y; strip++) {
        over[y] = Math.max(over[y], one[strip] + over[y - strip]);
      }
    }
    return over[sheet.width()];
  }

  private static long strip(Sheet sheet, int width) {
    long[] down = new long[sheet.length() + 1];
    for (int x = 1; x <= sheet.length(); x++) {
      down[x] = down[x - 1];
      for (Piece piece : sheet.pieces()) {
        if (piece.width() <= width && piece.length() <= x) {
          down[x] = Math.max(down[x], piece.value() + down[x - piece.length()]);
        }
      }
    }
    return down[sheet.length()];
  }

  /** What the product's own pricing gets out of one sheet: no kerf, no edge trim. */
  private static long pricing(Sheet sheet, boolean turned) {
    List<PanelType> types = new ArrayList<>();
    List<Long> worth = new ArrayList<>();
    for (int i = 0; i < sheet.pieces().size(); i += turned ? 2 : 1) {
      Piece piece = sheet.pieces().get(i);
      types.add(new PanelType(piece.length(), piece.width(), turned ? Grain.FREE : Grain.ALONG, 1));
      worth.add(piece.value());
    }
    int[] plenty =
        types.stream()
            .mapToInt(t -> (int) ((long) sheet.length() * sheet.width() / (t.length() * t.width())))
            .toArray();
    Area all = new Area(0, 0, sheet.length(), sheet.width());
    PanelFillings fillings =
        new PanelPricing(
                types,
                List.of(new PanelKind(List.of(all), 1, List.of(0), 1)),
                new PanelSaw(0, 0, 0, FirstCut.EITHER, Stages.TWO_AND_TRIM),
                Set.of())
            .fillings(
                List.of(all),
                worth.stream().mapToLong(w -> w).toArray(),
                plenty,
                new Work(Effort.steps(1_000_000_000)));
    long told = fillings.worth(all);
    long laid =
        fillings.cuts(0, all).stream()
            .flatMap(strip -> strip.pieces().stream())
            .mapToLong(lie -> worth.get(lie.type()))
            .sum();
    assertThat(fillings.isComplete()).isTrue();
    assertThat(laid).isEqualTo(told);
    return told;
  }
}

package kitwright.cutting.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitwright.cutting.solve.ReferenceLists.BarList;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Lists with published optima: OR-Library (Falkenauer 1996), Scholl, Klein and Juergens 1997,
 * Schwerin and Waescher 1997, Waescher and Gau 1996, and textbooks. Each is solved to proved
 * optimality.
 */
class BarListsPublishedTest {
  private static final Path TEXTBOOKS =
      Path.of("src/test/resources/kitwright/cutting/textbook-lists.csv");

  @TestFactory
  Stream<DynamicTest> everyPublishedListIsProvedBest() {
    Optional<Path> folder = ReferenceLists.folder();
    assumeTrue(folder.isPresent(), "the published cutting lists do not lie beside the checkout");
    List<BarList> lists = ReferenceLists.bars(folder.get());
    assertThat(lists).hasSize(37);
    return lists.stream().map(l -> DynamicTest.dynamicTest(l.name(), () -> isProvedBest(l)));
  }

  @TestFactory
  Stream<DynamicTest> everyTextbookListIsProvedBest() {
    Map<String, List<String[]>> byName =
        ReferenceLists.lines(TEXTBOOKS).stream()
            .filter(line -> !line.startsWith("#") && !line.startsWith("list,"))
            .map(line -> line.split(",", -1))
            .collect(Collectors.groupingBy(cell -> cell[0]));
    assertThat(byName).hasSize(4);
    return byName.entrySet().stream()
        .map(e -> DynamicTest.dynamicTest(e.getKey(), () -> isProvedBest(textbook(e.getValue()))));
  }

  @Test
  void theListWhosePublishedCountIsTooHighIsBeatenByOne() {
    // OR-Library's file gives 51 for u120_08, the best known then; 50 meets the no-waste bound.
    Optional<Path> folder = ReferenceLists.folder();
    assumeTrue(folder.isPresent(), "the published cutting lists do not lie beside the checkout");
    List<String> beaten =
        ReferenceLists.bars(folder.get()).stream()
            .filter(list -> list.optimum() < list.published())
            .map(BarList::name)
            .toList();
    assertThat(beaten).containsExactly("u120_08");
  }

  private static void isProvedBest(BarList list) {
    BarPlan plan = BarCutter.plan(list.task(), Effort.usual());
    assertThat(BarVerify.faults(list.task(), plan)).isEmpty();
    assertThat(plan.missing()).isEmpty();
    assertThat(plan.outcome().value()).isEqualTo(list.optimum());
    assertThat(plan.outcome().isProvedBest()).isTrue();
  }

  private static BarList textbook(List<String[]> rows) {
    long stock = Long.parseLong(rows.get(0)[1]);
    List<BarPart> parts =
        rows.stream()
            .map(
                r ->
                    new BarPart(
                        r[2], Long.parseLong(r[2]), Integer.parseInt(r[3]), 1, Optional.empty()))
            .toList();
    int all = parts.stream().mapToInt(BarPart::qty).sum();
    int optimum = Integer.parseInt(rows.get(0)[5]);
    Bar bar = new Bar("bar", stock, all, 1, List.of());
    BarTask task = new BarTask(parts, List.of(bar), 0, 0, 1);
    return new BarList(rows.get(0)[0], task, optimum, optimum);
  }
}

package kitwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * A report is read on a telephone and on paper: six columns at most, eight of narrow numbers in the
 * working of a calculation; no long digits in a line that must be scrolled; and no day or sum that
 * a line may break.
 */
class NarrowTablesTest {
  private static final Path REPORTS = Path.of("src/test/resources/golden/report");
  private static final int COLUMNS = 6;
  private static final Pattern LONG_DIGITS =
      Pattern.compile("(?m)^(?! {4}|[0-9a-f]{64}  ).*[0-9a-f]{40}");
  private static final Pattern LOOSE =
      Pattern.compile(
          "\\b\\d{1,2}"
              + " (January|February|March|April|May|June|July|August|September|October|November|December)\\b|\\d"
              + " (EUR|NZD)\\b");

  @TestFactory
  Stream<DynamicTest> everyReportOfTheDemonstration() throws IOException {
    try (Stream<Path> files = Files.list(REPORTS)) {
      return files.filter(file -> file.toString().endsWith(".md")).sorted().toList().stream()
          .map(file -> DynamicTest.dynamicTest("" + file.getFileName(), () -> holds(file)));
    }
  }

  private static void holds(Path file) throws IOException {
    String text = Files.readString(file);
    for (List<List<String>> table : Told.tables(text)) {
      List<String> head = table.get(0);
      assertThat(head.size()).as("%s", head).isLessThanOrEqualTo(isWorking(head) ? 8 : COLUMNS);
    }
    assertThat(text).doesNotContainPattern(LONG_DIGITS);
    text.lines()
        .filter(line -> line.startsWith("|"))
        .forEach(line -> assertThat(line).doesNotContainPattern(LOOSE));
  }

  private static boolean isWorking(List<String> head) {
    return List.of("piece", "layer").contains(head.get(0));
  }
}

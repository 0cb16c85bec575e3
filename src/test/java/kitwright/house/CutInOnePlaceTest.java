package kitwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What happened after the day is cut off by the ledger's view of that day, and nowhere else: a
 * filter of its own in a fact or a rule would be a second answer.
 */
class CutInOnePlaceTest {
  private static final Pattern FILTER =
      Pattern.compile(
          "!\\w+(\\.\\w+\\(\\))?\\s*\\.isAfter\\((today|asOf|by|day|now|evening|\\w+\\.day\\(\\))\\)");

  /** Those that ask of another day than that of their ledger's view, and how many. */
  private static final Map<String, Integer> OF_ANOTHER_DAY =
      Map.ofEntries(
          Map.entry("claim/ClaimStandings", 1), // the day a letter was sent, of what is written
          Map.entry("history/History", 1), // the last commit up to a day, before any ledger is read
          Map.entry("kit/Position", 3), // as it stood when a shortage was found
          Map.entry("network/Baseline", 1), // the evening of the plan at the start
          Map.entry("network/Headways", 2), // the evening before a week
          Map.entry("shortage/Arrivals", 1), // as recorded on the day of a count
          Map.entry("spending/Books", 1), // the sums of every day of the build
          // Days that are planned, which may lie ahead.
          Map.entry("openmatter/WorkDay", 1));

  @Test
  void whatHappenedLaterIsCutOffByTheViewOfTheDay() throws IOException {
    Map<String, Integer> found = new TreeMap<>();
    Path root = Path.of("src/main/java/kitwright");
    try (Stream<Path> files = Files.walk(root)) {
      for (Path file : files.filter(each -> each.toString().endsWith(".java")).toList()) {
        int count = (int) FILTER.matcher(Files.readString(file)).results().count();
        if (count > 0) {
          found.put(root.relativize(file).toString().replaceAll("\\.java$", ""), count);
        }
      }
    }
    assertThat(found).isEqualTo(OF_ANOTHER_DAY);
  }
}

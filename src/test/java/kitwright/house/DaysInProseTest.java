package kitwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import kitwright.check.Check;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.report.Told;
import org.junit.jupiter.api.Test;

/**
 * A sentence says “12 March 2026”; a day as ISO writes it stands only where it is to be typed or
 * was typed: between quotation marks, in brackets, in an id.
 */
class DaysInProseTest {
  private static final Pattern TYPED =
      Pattern.compile(
          "“[^”]*”|\\{[^}]*\\}|(?<=[\\p{L}\\d]-)20\\d\\d-\\d\\d-\\d\\d|\\S+\\.(?:ya?ml|md)\\S*");
  private static final Pattern ISO = Pattern.compile("20\\d\\d-\\d\\d-\\d\\d");

  @Test
  void theRulesOfAllRoomsSayDaysAsPeopleDo() throws IOException {
    try (Stream<Path> rooms = Files.list(Path.of("src/test/resources/golden/rules"))) {
      for (Path room : rooms.sorted().toList()) {
        List<String> prose =
            Files.readAllLines(room).stream()
                .filter(line -> line.startsWith("  ") && !line.startsWith("  ["))
                .toList();
        assertThat(prose).isNotEmpty();
        prose.forEach(DaysInProseTest::holds);
      }
    }
  }

  @Test
  void soDoTheFindingsOfTheDemonstration() {
    Findings found = new Findings();
    Check.examine(Facts.of(Told.demonstration(), Told.SUNDAY), found);
    assertThat(found.inOrder()).isNotEmpty();
    found
        .inOrder()
        .forEach(
            finding ->
                Stream.of(finding.what(), finding.follows(), finding.mend())
                    .forEach(DaysInProseTest::holds));
  }

  private static void holds(String sentence) {
    assertThat(TYPED.matcher(sentence).replaceAll("…")).as(sentence).doesNotContainPattern(ISO);
  }
}

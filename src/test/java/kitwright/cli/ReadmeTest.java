package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the README and the pages of {@code src/docs} show is what the program prints today. A block
 * that starts with {@code $ kitwright …} is run; a line of three dots stands for any lines left
 * out. Under {@code -Dgolden=accept} the whole output takes the place of the block, to be read and
 * shortened by hand.
 */
class ReadmeTest {
  private static final Path README = Path.of("README.md");
  private static final Path DOCS = Path.of("src/docs");
  private static final Pattern CONSOLE =
      Pattern.compile("(?s)```console\\n\\$ kitwright ([^\\n]*)\\n(.*?)```");
  private static final Pattern YAML = Pattern.compile("(?s)```yaml\\n(.*?)```");
  private static final Pattern LINK = Pattern.compile("\\]\\((?!https?:)([^)#]+)[^)]*\\)");

  @TempDir Path folder;

  @TestFactory
  Stream<DynamicTest> everySampleIsWhatTheProgramPrints() throws IOException {
    return pages().stream().flatMap(page -> blocks(page, CONSOLE).map(block -> test(page, block)));
  }

  private DynamicTest test(Path page, MatchResult block) {
    return DynamicTest.dynamicTest(
        page.getFileName() + ": " + block.group(1), () -> compare(page, block));
  }

  /** The README first, then every page beside the pictures. */
  private static List<Path> pages() throws IOException {
    try (Stream<Path> docs = Files.list(DOCS)) {
      return Stream.concat(
              Stream.of(README), docs.filter(file -> file.toString().endsWith(".md")).sorted())
          .toList();
    }
  }

  @Test
  void everyRecordShownIsReadWithoutAFault() throws IOException {
    List<MatchResult> samples = pages().stream().flatMap(page -> blocks(page, YAML)).toList();
    assertThat(samples).isNotEmpty();
    for (MatchResult sample : samples) {
      Findings faults = new Findings();
      Sample.read(sample.group(1), faults);
      assertThat(faults.inOrder()).extracting(Finding::what).as(sample.group(1)).isEmpty();
    }
  }

  @Test
  void everyPictureAndPageLinkedToIsThere() throws IOException {
    int links = 0;
    for (Path page : pages()) {
      for (MatchResult link : blocks(page, LINK).toList()) {
        assertThat(page.toAbsolutePath().resolveSibling(link.group(1))).as("%s", page).exists();
        links++;
      }
    }
    assertThat(links).isGreaterThan(5);
  }

  @Test
  void theDrawingOfSectionsIsWhatASheetShows() throws IOException {
    Run.in(
        Path.of(""),
        "assess",
        "rudder-spine",
        "--sheet",
        "--out",
        folder.toString(),
        "--today",
        "2026-03-29");
    shows(Path.of("src/docs/sections.svg"), folder.resolve("assessment-rudder-spine.svg"));
  }

  private static boolean accepts() {
    return System.getProperty("golden", "").equals("accept");
  }

  /** A picture of the README against one drawn just now, elsewhere, so that no run mends itself. */
  private static void shows(Path picture, Path drawn) throws IOException {
    if (accepts()) {
      Files.copy(drawn, picture, StandardCopyOption.REPLACE_EXISTING);
    }
    assertThat(Files.readString(picture))
        .as("%s is stale: look at the new one, then accept it", picture)
        .isEqualTo(Files.readString(drawn));
  }

  private void compare(Path page, MatchResult block) throws IOException {
    String[] words = words(block.group(1));
    int picture = List.of(words).indexOf("--picture") + 1;
    Path drawn = folder.resolve("drawn.svg");
    Path shown = Path.of(words[picture]);
    if (picture > 0) {
      words[picture] = drawn.toString();
    }
    Run run = Run.in(Path.of(""), words);
    if (picture > 0) {
      shows(shown, drawn);
      Files.delete(drawn);
    }
    if (accepts() && !block.group(2).contains("\n…\n")) {
      String text = Files.readString(page);
      Files.writeString(page, text.replace(block.group(2), run.out()));
      return;
    }
    String[] parts = block.group(2).split("(?m)^…$\\n", -1);
    String rest = run.out();
    for (int i = 0; i < parts.length; i++) {
      assertThat(rest).contains(parts[i]);
      int at = rest.indexOf(parts[i]);
      if (i == 0) {
        assertThat(at).as("where the sample begins").isZero();
      }
      rest = rest.substring(at + parts[i].length());
    }
    if (!parts[parts.length - 1].isEmpty()) {
      assertThat(rest).as("what follows the sample").isEmpty();
    }
  }

  private static String[] words(String line) {
    List<String> words = new ArrayList<>();
    Matcher word = Pattern.compile("\"([^\"]*)\"|(\\S+)").matcher(line);
    while (word.find()) {
      words.add(word.group(1) != null ? word.group(1) : word.group(2));
    }
    return words.toArray(String[]::new);
  }

  private static Stream<MatchResult> blocks(Path page, Pattern pattern) {
    try {
      return pattern.matcher(Files.readString(page)).results().toList().stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

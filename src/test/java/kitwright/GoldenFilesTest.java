package kitwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Golden files and the tests that ask for them. A test names its file in the call, {@code
 * Golden.check("week.md", …)}; one that makes up names keeps them in a folder of their own and
 * calls {@code Golden.checkFolder("weeks", …)} too.
 */
class GoldenFilesTest {
  private static final Pattern CHECKED =
      Pattern.compile("Golden\\s*\\.check\\(\\s*\"([^\"]+)\"\\s*,");
  private static final Pattern FOLDER =
      Pattern.compile("Golden\\s*\\.checkFolder\\(\\s*\"([^\"]+)\"\\s*,");

  @Test
  void everyGoldenFileIsAskedFor() throws IOException {
    assertThat(unasked(Golden.ours(), sources())).isEmpty();
  }

  @Test
  void aFileThatNobodyAsksForIsFound() {
    String source = "Golden.check(\n \"a.md\", x); Golden.checkFolder(\"weeks\", names);";
    assertThat(unasked(Set.of("a.md", "b.md", "weeks/9.md", "weekly.md"), source))
        .containsExactlyInAnyOrder("b.md", "weekly.md");
  }

  @Test
  void aChangedTextFails(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("a.md"), "one\n");
    var golden = new Golden(folder, Golden.Mode.COMPARE, Golden.Site.CI);
    golden.compare("a.md", "one\n");
    assertThat(failure(() -> golden.compare("a.md", "two\n"))).isInstanceOf(AssertionError.class);
  }

  @Test
  void aMissingFileFailsAndIsNotWritten(@TempDir Path folder) {
    var golden = new Golden(folder, Golden.Mode.COMPARE, Golden.Site.DESK);
    assertThat(failure(() -> golden.compare("a.md", "x"))).isInstanceOf(AssertionError.class);
    assertThat(golden.names()).isEmpty();
  }

  @Test
  void acceptingWritesTheText(@TempDir Path folder) throws IOException {
    new Golden(folder, Golden.Mode.ACCEPT, Golden.Site.DESK).compare("b/a.md", "x\n");
    assertThat(folder.resolve("b/a.md")).hasContent("x\n");
  }

  @Test
  void nothingIsAcceptedWhereCiIsSet(@TempDir Path folder) {
    assertThat(failure(() -> new Golden(folder, Golden.Mode.ACCEPT, Golden.Site.CI)))
        .isInstanceOf(IllegalStateException.class);
  }

  private static Throwable failure(org.assertj.core.api.ThrowableAssert.ThrowingCallable call) {
    return org.assertj.core.api.Assertions.catchThrowable(call);
  }

  private static Set<String> unasked(Set<String> files, String source) {
    Set<String> left = new TreeSet<>(files);
    Matcher checked = CHECKED.matcher(source);
    while (checked.find()) {
      left.remove(checked.group(1));
    }
    Matcher folder = FOLDER.matcher(source);
    while (folder.find()) {
      String start = folder.group(1) + "/";
      left.removeIf(name -> name.startsWith(start));
    }
    return left;
  }

  private static String sources() throws IOException {
    var all = new StringBuilder();
    try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
      for (Path file :
          files
              .filter(f -> f.toString().endsWith(".java"))
              .filter(f -> !f.endsWith("GoldenFilesTest.java"))
              .toList()) {
        all.append(Files.readString(file)).append('\n');
      }
    }
    return all.toString();
  }
}

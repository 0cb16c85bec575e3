package kitwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Whole texts, kept in {@code src/test/resources/golden} and read as prose in review. With {@code
 * mvn test -Dgolden=accept} they are rewritten, never where {@code CI} is set. {@link
 * GoldenFilesTest} finds those that no test asks for.
 */
public final class Golden {
  static final Path ROOT = Path.of("src/test/resources/golden");

  private static final Golden OURS =
      new Golden(
          ROOT,
          "accept".equals(System.getProperty("golden")) ? Mode.ACCEPT : Mode.COMPARE,
          System.getenv("CI") == null ? Site.DESK : Site.CI);

  enum Mode {
    COMPARE,
    ACCEPT
  }

  enum Site {
    DESK,
    CI
  }

  private final Path root;
  private final Mode mode;

  Golden(Path root, Mode mode, Site site) {
    if (mode == Mode.ACCEPT && site == Site.CI) {
      throw new IllegalStateException("golden files are accepted by a person, not where CI is set");
    }
    this.root = root;
    this.mode = mode;
  }

  /** {@code text} is what the golden file {@code name} holds. */
  public static void check(String name, String text) {
    OURS.compare(name, text);
  }

  /** {@code text} is what the page {@code name} among the documents holds. */
  public static void checkPage(String name, String text) {
    new Golden(Path.of("src/docs"), OURS.mode, Site.DESK).compare(name, text);
  }

  /**
   * The golden files below {@code folder} are exactly {@code names}; for tests that make up the
   * names they check.
   */
  public static void checkFolder(String folder, Set<String> names) {
    assertThat(OURS.names().stream().filter(name -> name.startsWith(folder + "/")))
        .as("golden files below %s", folder)
        .containsExactlyInAnyOrderElementsOf(names);
  }

  void compare(String name, String text) {
    Path file = root.resolve(name);
    try {
      if (mode == Mode.ACCEPT) {
        Files.createDirectories(file.toAbsolutePath().getParent());
        Files.writeString(file, text);
        return;
      }
      assertThat(file).as("look at the text, then run with -Dgolden=accept").exists();
      assertThat(text).as("golden file %s", file).isEqualTo(Files.readString(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** All golden files, by their path below the root. */
  Set<String> names() {
    try (Stream<Path> files = Files.walk(root)) {
      return files
          .filter(Files::isRegularFile)
          .map(file -> root.relativize(file).toString().replace('\\', '/'))
          .collect(Collectors.toCollection(TreeSet::new));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Set<String> ours() {
    return OURS.names();
  }
}

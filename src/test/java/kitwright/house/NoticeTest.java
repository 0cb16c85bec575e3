package kitwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The jar names every library it holds, with its version, and carries the text of its licence. */
class NoticeTest {
  private static final Path META = Path.of("src/main/resources/META-INF");
  private static final Pattern DEPENDENCY =
      Pattern.compile(
          "<dependency>\\s*<groupId>[^<]+</groupId>\\s*<artifactId>([^<]+)</artifactId>\\s*"
              + "<version>([^<]+)</version>\\s*(<scope>|</dependency>)");

  /** A line that begins with a name and a version. */
  private static final Pattern LIBRARY = Pattern.compile("(?m)^  ([a-z][\\w-]* \\d[\\w.]*) ");

  private static final Pattern NAMED = Pattern.compile("META-INF/licenses/[\\w.-]+\\.txt");

  @Test
  void everyLibraryInTheJarStandsInTheNotice() throws IOException {
    // What stands under “build” builds the jar and is not in it.
    String pom = Files.readString(Path.of("pom.xml")).split("<build>", 2)[0];
    List<String> shipped =
        DEPENDENCY
            .matcher(pom)
            .results()
            .filter(found -> found.group(3).equals("</dependency>"))
            .map(found -> found.group(1) + " " + version(pom, found))
            .toList();
    assertThat(shipped).hasSizeGreaterThan(4);
    List<String> named =
        LIBRARY
            .matcher(Files.readString(META.resolve("NOTICE")))
            .results()
            .map(line -> line.group(1))
            .toList();
    assertThat(named).containsExactlyInAnyOrderElementsOf(shipped);
  }

  private static String version(String pom, MatchResult found) {
    String version = found.group(2);
    if (!version.startsWith("${")) {
      return version;
    }
    String property = version.substring(2, version.length() - 1);
    return pom.replaceFirst("(?s).*<" + property + ">([^<]+)</.*", "$1");
  }

  @Test
  void everyTextThatTheNoticeNamesIsThereAndNoOther() throws IOException {
    List<String> named =
        NAMED
            .matcher(Files.readString(META.resolve("NOTICE")))
            .results()
            .map(MatchResult::group)
            .distinct()
            .toList();
    try (var files = Files.list(META.resolve("licenses"))) {
      assertThat(files.map(file -> "META-INF/licenses/" + file.getFileName()))
          .containsExactlyInAnyOrderElementsOf(named);
    }
  }
}

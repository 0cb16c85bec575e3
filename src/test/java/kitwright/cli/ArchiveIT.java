package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the packaged program loads for the commands of every day, on the shipped ledger: counted,
 * not timed. A class that is not in the archive is read and verified at every start; one that Java
 * makes up at run time, such as what compares two records, costs a millisecond or two. Each of our
 * own classes costs its share as well: facts that nobody asked for are not worked out.
 */
class ArchiveIT {
  private static final Path BUILT = Path.of("target").toAbsolutePath();

  /** Made at every start by Java itself: a few comparators, and where it looks for a hash. */
  private static final int OUTSIDE = 12;

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "20, --version",
    "800, claim claim-2026-01-26 --today 2026-03-29 --ledger ledger",
    "1400, open --today 2026-03-29 --ledger ledger",
    "2050, check --fail-on never --today 2026-03-29 --ledger ledger",
  })
  void fewClassesAreLoadedAndHardlyOneFromOutsideTheArchive(int own, String words)
      throws Exception {
    assumeTrue(Files.exists(BUILT.resolve("kitwright.jsa.for")), "this folder can have no archive");
    List<String> loaded = loaded(words.split(" ", -1));
    assertThat(verified()).isEmpty();
    assertThat(loaded)
        .filteredOn(each -> !each.contains("shared objects file"))
        .hasSizeLessThanOrEqualTo(OUTSIDE);
    assertThat(loaded).filteredOn(each -> each.startsWith("kitwright.")).hasSizeBetween(5, own);
    assertThat(loaded).noneMatch(each -> each.startsWith("kitwright.") && each.contains("Lambda"));
  }

  /** Classes whose bytes were verified at this start; those of an archive were when it was made. */
  private List<String> verified() throws IOException {
    try (Stream<String> lines = Files.lines(folder.resolve("init.txt"))) {
      return lines
          .filter(line -> line.startsWith("Start class verification for: "))
          .filter(line -> line.contains(": kitwright.") || line.contains(": picocli."))
          .toList();
    }
  }

  private List<String> loaded(String... words) throws Exception {
    Path list = folder.resolve("loaded.txt");
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-XX:SharedArchiveFile=" + BUILT.resolve("kitwright.jsa"),
                "-Xlog:class+load:file=" + list + ":none:filecount=0",
                "-Xlog:class+init=info:file=" + folder.resolve("init.txt") + ":none:filecount=0",
                "-Xbootclasspath/a:" + BUILT.resolve("kitwright-0.1.0.jar"),
                "-cp",
                BUILT.resolve("kitwright-0.1.0.jar").toString(),
                "kitwright.cli.Main"));
    command.addAll(List.of(words));
    Process run =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("out.txt").toFile())
            .start();
    assertThat(run.waitFor()).as(Files.readString(folder.resolve("out.txt"))).isZero();
    return Files.readAllLines(list);
  }
}

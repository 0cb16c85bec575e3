package kitwright;

import static org.assertj.core.api.Assertions.fail;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/**
 * A program that referees ours. Asked for before each test, so that every case not compared counts
 * as one skipped; in CI its absence fails.
 */
public final class OutsideProgram {
  private OutsideProgram() {}

  /** Goes on only where the program is on the PATH. */
  public static void needed(String program, String debianPackage) {
    if (!onThePath(program)) {
      notHere(
          "NOT COMPARED: the program %s is not here. Install the Debian package %s."
              .formatted(program, debianPackage));
    }
  }

  /** Goes on only where a folder holds what another program was asked to fetch. */
  public static void neededIn(Path folder, String fetcher) {
    if (!Files.isDirectory(folder)) {
      notHere("NOT COMPARED: %s is not here. %s fetches it.".formatted(folder, fetcher));
    }
  }

  private static void notHere(String message) {
    if (System.getenv("CI") != null) {
      fail(message);
    }
    Assumptions.abort(message);
  }

  private static boolean onThePath(String program) {
    return Stream.of(System.getenv("PATH").split(":"))
        .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
  }
}

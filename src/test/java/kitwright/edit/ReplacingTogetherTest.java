package kitwright.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Programs of their own that record into one file at the same time lose nothing. */
class ReplacingTogetherTest {
  private static final int PROGRAMS = 6;
  private static final int LINES = 25;

  @TempDir private Path root;

  /** One of the programs: adds its lines, each until it stands there. */
  public static void main(String[] arguments) throws IOException {
    Path root = Path.of(arguments[0]);
    for (int i = 0; i < LINES; i++) {
      add(root, "# " + arguments[1] + " " + i + "\n");
    }
  }

  private static void add(Path root, String line) throws IOException {
    while (true) {
      String read = Files.readString(root.resolve("all.yaml"));
      try {
        Replacing.write(root, "all.yaml", read, read + line);
        return;
      } catch (Replacing.Changed meanwhile) {
        Thread.onSpinWait();
      }
    }
  }

  @Test
  void everyLineOfEveryProgramIsThereOnce() throws Exception {
    Path file = Files.writeString(root.resolve("all.yaml"), "# mine\n");
    List<Process> programs = new ArrayList<>();
    for (int i = 0; i < PROGRAMS; i++) {
      programs.add(
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-XX:TieredStopAtLevel=1",
                  "-cp",
                  System.getProperty("java.class.path"),
                  ReplacingTogetherTest.class.getName(),
                  root.toString(),
                  String.valueOf(i))
              .redirectErrorStream(true)
              .start());
    }
    for (Process program : programs) {
      assertThat(program.waitFor(2, TimeUnit.MINUTES)).isTrue();
      assertThat(program.exitValue()).isZero();
    }
    String text = Files.readString(file);
    for (int i = 0; i < PROGRAMS; i++) {
      for (int line = 0; line < LINES; line++) {
        assertThat(text).containsOnlyOnce("# " + i + " " + line + "\n");
      }
    }
    assertThat(root.toFile().list()).containsExactly("all.yaml");
  }
}

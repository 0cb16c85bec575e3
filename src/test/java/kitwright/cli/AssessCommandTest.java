package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** With which code the assessments end. */
class AssessCommandTest {
  private static final String BUILD =
      """
      build:
        name: Tern
        currency: EUR
        started: 2026-01-05
      """;

  @Test
  void whereOneCannotBeReadNotEveryOnePasses(@TempDir Path folder) throws IOException {
    Files.writeString(
        folder.resolve("build.yaml"),
        BUILD
            + """
            assessments:
              - {id: knee, method: section, require: {moment: 1}, load: {tip-force: .nan}}
            """);
    Run run = Run.in(folder, "assess");
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err()).contains("assessment knee cannot be read: nothing is told of it here.");
  }

  @Test
  void whereThereIsNoneNothingFails(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("build.yaml"), BUILD);
    assertThat(Run.in(folder, "assess").code()).isZero();
  }
}

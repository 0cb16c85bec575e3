package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CompletionsTest {
  @ParameterizedTest
  @ValueSource(strings = {"bash", "zsh", "fish"})
  void everyCommandIsOffered(String shell) {
    Run run = Run.in(Path.of(""), "completions", shell);
    assertThat(run.code()).isZero();
    Commands.all().forEach(word -> assertThat(run.out()).contains(word.name()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"bash", "zsh", "fish"})
  void everyOptionOfARecordingWordIsOffered(String shell) {
    String option = shell.equals("fish") ? "-l replaces" : "--replaces";
    assertThat(Run.in(Path.of(""), "completions", shell).out()).contains(option);
  }

  @Test
  void anUnknownShellIsRefused() {
    assertThat(Run.in(Path.of(""), "completions", "sh").code()).isEqualTo(2);
  }

  /** The shell itself completes by the script. */
  @ParameterizedTest
  @CsvSource({"1, fini, finish", "2, shor, shortage", "2, --pri, --print"})
  void bashCompletesByIt(int place, String begun, String whole, @TempDir Path folder)
      throws IOException, InterruptedException {
    assumeThat(Path.of("/bin/bash")).exists();
    Path script = folder.resolve("kitwright");
    Files.writeString(script, Run.in(Path.of(""), "completions", "bash").out());
    String asked =
        ". "
            + script
            + "; COMP_WORDS=(kitwright "
            + (place == 1 ? "" : "new ")
            + begun
            + ");"
            + " COMP_CWORD="
            + place
            + "; _kitwright; echo ${COMPREPLY[@]}";
    Process bash = new ProcessBuilder("/bin/bash", "-c", asked).redirectErrorStream(true).start();
    String said = new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(bash.waitFor()).isZero();
    assertThat(said.strip()).isEqualTo(whole);
  }
}

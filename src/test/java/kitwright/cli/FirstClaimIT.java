package kitwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitwright.OutsideProgram;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A newcomer does what the README says, word for word, through a link on the PATH. */
@DisabledOnOs(OS.WINDOWS)
class FirstClaimIT {
  private static final Pattern SCRIPT = Pattern.compile("(?s)```sh\\n(.*?)```");

  @TempDir Path folder;

  @Test
  void theFirstClaimIsWrittenByFollowingTheReadme() throws Exception {
    OutsideProgram.needed("git", "git");
    Path bin = Files.createDirectories(folder.resolve("bin"));
    Files.createSymbolicLink(
        bin.resolve("kitwright"), Path.of("target/kitwright").toAbsolutePath());

    String said = follow(script(), bin);

    assertThat(said).doesNotContain("kitwright: ");
    assertThat(said)
        .containsSubsequence(
            "Nothing found.",
            "kit/keel-bolts.yaml",
            "count-sheet.md",
            "counted-short-unrecorded",
            "The kit promised 12 × keel-bolts, 8 came",
            "short-keel-bolts.yaml",
            "claim-keel-bolts.yaml",
            "keel bolt M12 x 140",
            "16.40",
            "What we ask",
            "claim-draft-unsent");
    assertThat(folder.resolve("my-boat/.git")).isDirectory();
  }

  private static String script() throws IOException {
    Matcher script = SCRIPT.matcher(Files.readString(Path.of("README.md"), UTF_8));
    assertThat(script.find()).isTrue();
    return script.group(1);
  }

  private String follow(String script, Path bin) throws IOException, InterruptedException {
    ProcessBuilder builder = new ProcessBuilder("sh", "-c", script).directory(folder.toFile());
    var environment = builder.environment();
    environment.merge("PATH", "", (path, none) -> bin + File.pathSeparator + path);
    for (String who : new String[] {"AUTHOR", "COMMITTER"}) {
      environment.put("GIT_" + who + "_NAME", "A newcomer");
      environment.put("GIT_" + who + "_EMAIL", "newcomer@example.org");
    }
    Path log = folder.resolve("said.txt");
    Process process = builder.redirectErrorStream(true).redirectOutput(log.toFile()).start();
    process.getOutputStream().close();
    assertThat(process.waitFor()).as("the last command").isZero();
    return Files.readString(log, UTF_8);
  }
}

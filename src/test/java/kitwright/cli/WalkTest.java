package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Walks {@code src/docs/walk.md}: writes each file, runs each command, compares what is printed.
 */
class WalkTest {
  private static final Path PAGE = Path.of("src/docs/walk.md");
  private static final Pattern STEP =
      Pattern.compile(
          "```yaml (?<file>\\S+)\\n"
              + "(?<text>.*?)```|```shell\\n"
              + "\\$ kitwright (?<command>[^\\n"
              + "]*)\\n"
              + "(?<out>.*?)```",
          Pattern.DOTALL);

  @TempDir Path folder;

  @Test
  void everyStepOfTheWalkComesOutAsThePageSays() throws IOException {
    String page = Files.readString(PAGE);
    Matcher step = STEP.matcher(page);
    List<String> commands = new ArrayList<>();
    while (step.find()) {
      if (step.group("file") != null) {
        Files.writeString(folder.resolve(step.group("file")), step.group("text"));
      } else {
        commands.add(step.group("command"));
        Run run = Run.in(folder, step.group("command").split(" "));
        assertThat(run.out().stripTrailing())
            .as(step.group("command") + run.err())
            .isEqualTo(step.group("out").stripTrailing());
      }
    }
    assertThat(commands).as("commands of the walk").hasSizeGreaterThan(7);
  }
}

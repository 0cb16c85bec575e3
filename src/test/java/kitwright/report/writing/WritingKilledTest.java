package kitwright.report.writing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A writer that is killed leaves the old document or the new one, never a part. */
class WritingKilledTest {
  private static final String PART = ".kitwright-part";
  private static final int LINES = 400_000;
  private static final List<String> TEXTS = List.of(text("low water"), text("high tide"));

  @TempDir Path folder;

  private static String text(String line) {
    return (line + "\n").repeat(LINES);
  }

  /** Writes one text over the other until it is killed. */
  public static void main(String[] folder) {
    for (int i = 0; ; i++) {
      Written written =
          Writing.into(Path.of(folder[0])).write("tide.md", TEXTS.get(i % 2), Existing.REPLACE);
      if (written instanceof Written.Refused) {
        throw new IllegalStateException(written.toString());
      }
      System.out.print('.');
      System.out.flush();
    }
  }

  @Test
  void whatStandsThereIsWhole() throws Exception {
    Set<String> whole = new HashSet<>();
    for (String text : TEXTS) {
      Writing.into(folder).write("tide.md", text, Existing.REPLACE);
      whole.add(Files.readString(folder.resolve("tide.md")));
    }
    boolean partLeft = false;
    for (int round = 0; round < 4 || (!partLeft && round < 40); round++) {
      killInTheMiddle();
      assertThat(whole).contains(Files.readString(folder.resolve("tide.md")));
      assertThat(names()).allMatch(name -> name.equals("tide.md") || name.endsWith(PART));
      partLeft |= names().size() > 1;
    }
    assertThat(partLeft).as("at least one was killed in the middle of writing").isTrue();

    Writing.into(folder).write("tide.md", "slack\n", Existing.REPLACE);
    assertThat(names()).containsExactly("tide.md");
  }

  /** Lets another process write two documents and kills it once it has begun the third. */
  private void killInTheMiddle() throws Exception {
    Process writer =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                WritingKilledTest.class.getName(),
                folder.toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    try (InputStream told = writer.getInputStream()) {
      assertThat(told.readNBytes(2)).hasSize(2);
      while (names().stream().noneMatch(name -> name.endsWith(PART)) && writer.isAlive()) {
        Thread.onSpinWait();
      }
    } finally {
      writer.destroyForcibly().waitFor();
    }
  }

  private Set<String> names() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(path -> path.getFileName().toString()).collect(Collectors.toSet());
    }
  }
}

package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Somebody who watches sees how far it is; a pipe gets nothing of it. */
class ProgressTest {
  private static String shown(boolean terminal, Map<String, String> environment, int all) {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    try (PrintStream stream = new PrintStream(err, true, StandardCharsets.UTF_8)) {
      Session session =
          new Session(
              stream,
              stream,
              Path.of(""),
              () -> LocalDate.EPOCH,
              Screen.of(environment, terminal, Optional::empty),
              Optional::empty);
      try (Progress progress = new Progress(session, "rows")) {
        for (int i = 1; i <= all; i++) {
          assertThat(progress.applyAsInt(i, all)).isEqualTo(i);
        }
      }
    }
    return err.toString(StandardCharsets.UTF_8);
  }

  @Test
  void onATerminalALineIsWrittenOverAndTakenAway() {
    String shown = shown(true, Map.of("TERM", "xterm"), 1000);
    assertThat(shown).startsWith("\rrows: 20 of 1000 \rrows: 40 of 1000 ").endsWith(" \r");
    assertThat(shown.chars().filter(c -> c == '\r')).hasSize(52);
    assertThat(shown).doesNotContain("\n");
  }

  @Test
  void aPipeAndATerminalThatCannotGoBackGetNothing() {
    assertThat(shown(false, Map.of("TERM", "xterm"), 1000)).isEmpty();
    assertThat(shown(true, Map.of("TERM", "dumb"), 1000)).isEmpty();
  }
}

package kitwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;

/**
 * How wide the terminal is, asked of {@code stty}: shells know it, but few hand COLUMNS on.
 *
 * @see "POSIX.1-2024, stty; the operand size is common practice of its makers"
 */
final class TerminalSize {
  private static final int LEAST = 20;

  private TerminalSize() {}

  /** The columns; empty where no terminal answers in a second. */
  static OptionalInt columns() {
    try {
      Process stty =
          new ProcessBuilder("sh", "-c", "stty size </dev/tty 2>/dev/null")
              .redirectErrorStream(true)
              .start();
      if (!stty.waitFor(1, TimeUnit.SECONDS)) {
        stty.destroy();
        return OptionalInt.empty();
      }
      return of(new String(stty.getInputStream().readAllBytes(), StandardCharsets.US_ASCII));
    } catch (IOException noShell) {
      return OptionalInt.empty();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return OptionalInt.empty();
    }
  }

  /** Read from {@code 24 80}: lines, columns. */
  static OptionalInt of(String answer) {
    String[] parts = answer.strip().split(" ", -1);
    return parts.length == 2 && parts[1].matches("\\d{1,4}") && Integer.parseInt(parts[1]) >= LEAST
        ? OptionalInt.of(Integer.parseInt(parts[1]))
        : OptionalInt.empty();
  }
}

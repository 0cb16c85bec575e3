package kitwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * How large the terminal is, asked of {@code stty}: shells know it, but few hand COLUMNS on.
 *
 * @see "POSIX.1-2024, stty; the operand size is common practice of its makers"
 */
record TerminalSize(int lines, int columns) {
  private static final int LEAST = 20;

  /** Empty where no terminal answers in a second. */
  static Optional<TerminalSize> asked() {
    try {
      Process stty =
          new ProcessBuilder("sh", "-c", "stty size </dev/tty 2>/dev/null")
              .redirectErrorStream(true)
              .start();
      if (!stty.waitFor(1, TimeUnit.SECONDS)) {
        stty.destroy();
        return Optional.empty();
      }
      return of(new String(stty.getInputStream().readAllBytes(), StandardCharsets.US_ASCII));
    } catch (IOException noShell) {
      return Optional.empty();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    }
  }

  /** Read from {@code 24 80}: lines, columns. */
  static Optional<TerminalSize> of(String answer) {
    String[] parts = answer.strip().split(" ", -1);
    return parts.length == 2
            && parts[0].matches("\\d{1,4}")
            && parts[1].matches("\\d{1,4}")
            && Integer.parseInt(parts[1]) >= LEAST
        ? Optional.of(new TerminalSize(Integer.parseInt(parts[0]), Integer.parseInt(parts[1])))
        : Optional.empty();
  }
}

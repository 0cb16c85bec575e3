package kitwright.cli;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/**
 * What a run of the program printed.
 *
 * @param code the exit code
 */
public record Run(int code, String out, String err) {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

  /** Runs the program in a folder, as from a shell whose output goes to a file. */
  public static Run in(Path folder, String... arguments) {
    return run(folder, Optional.empty(), arguments);
  }

  /**
   * Runs it as at a terminal.
   *
   * @param typed what somebody types, a line an answer; then the input ends
   */
  public static Run asked(Path folder, String typed, String... arguments) {
    return run(folder, Optional.of(new BufferedReader(new StringReader(typed))), arguments);
  }

  private static Run run(Path folder, Optional<BufferedReader> person, String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    try (PrintStream o = new PrintStream(out, true, StandardCharsets.UTF_8);
        PrintStream e = new PrintStream(err, true, StandardCharsets.UTF_8)) {
      Session session =
          new Session(
              o, e, folder, () -> DAY, Screen.of(Map.of(), false, Optional::empty), () -> person);
      int code = new CommandLineRun(session).run(arguments);
      return new Run(
          code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
  }

  /** Everything printed. */
  public String all() {
    return out + err;
  }
}

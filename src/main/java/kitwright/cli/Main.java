package kitwright.cli;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.function.Supplier;

/** The program's entry: the only place that knows the clock, the terminal and the environment. */
public final class Main {
  private static final int BUFFER = 1 << 13;

  private Main() {}

  /** Runs the command line and ends with its exit code. */
  public static void main(String[] arguments) {
    PrintStream out = stream(FileDescriptor.out);
    PrintStream err = stream(FileDescriptor.err);
    Session session =
        new Session(
            out,
            err,
            Path.of(""),
            new Clock(),
            Screen.of(System.getenv(), isTerminal(), new Terminal()),
            new Person());
    int code = new CommandLineRun(session).run(arguments);
    out.flush();
    err.flush();
    System.exit(code);
  }

  /** Asked only where no day is given: to know the zone Java reads the zones of the world. */
  private static final class Clock implements Supplier<LocalDate> {
    @Override
    public LocalDate get() {
      return LocalDate.now(ZoneId.systemDefault());
    }
  }

  /** A class, not a lambda: the first of those costs the start of every run. */
  private static final class Terminal implements Supplier<Optional<TerminalSize>> {
    private boolean asked;
    private Optional<TerminalSize> told = Optional.empty();

    @Override
    public Optional<TerminalSize> get() {
      if (!asked) {
        asked = true;
        told = TerminalSize.asked();
      }
      return told;
    }
  }

  /** Whoever sits there, where both what is typed and what is printed are a terminal's. */
  @SuppressWarnings("SystemConsoleNull") // as below
  private static final class Person implements Supplier<Optional<BufferedReader>> {
    @Override
    public Optional<BufferedReader> get() {
      return Optional.ofNullable(System.console())
          .map(console -> new BufferedReader(console.reader()));
    }
  }

  /** The sh launcher looks; elsewhere Java's console tells, which is there only for a terminal. */
  @SuppressWarnings(
      "SystemConsoleNull") // the launchers pass jdk.console=java.base, which keeps it so
  private static boolean isTerminal() {
    String told = System.getProperty("kitwright.terminal", "");
    return told.isEmpty() ? System.console() != null : told.equals("yes");
  }

  private static PrintStream stream(FileDescriptor to) {
    return new PrintStream(
        new java.io.BufferedOutputStream(new FileOutputStream(to), BUFFER),
        false,
        StandardCharsets.UTF_8);
  }
}

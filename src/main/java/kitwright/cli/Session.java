package kitwright.cli;

import java.io.BufferedReader;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Supplier;
import kitwright.value.Visible;

/**
 * Where a command runs.
 *
 * @param out for what is clean and may be coloured; all else is printed by {@link #print}
 * @param here the folder it was called in
 * @param clock the day on which it runs, unless {@code --today} says another
 * @param person what somebody types, where one sits at the terminal; asked only when needed
 */
record Session(
    PrintStream out,
    PrintStream err,
    Path here,
    Supplier<LocalDate> clock,
    Screen screen,
    Supplier<Optional<BufferedReader>> person) {
  /** Asks, and leaves the line open for the answer. */
  void ask(String question) {
    out.print(question);
    out.flush();
  }

  /** Prints text of any number of lines; what a record hides in it is written out, here for all. */
  void print(String text) {
    out.print(Visible.lines(text));
  }

  /** Prints a line. */
  void say(String line) {
    out.println(Visible.line(line));
  }

  /** Tells something beside what was asked for. */
  void note(String line) {
    err.println(Visible.line(line));
  }
}

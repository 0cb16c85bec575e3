package kitwright.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.LocalDate;

/**
 * Where a command runs.
 *
 * @param here the folder it was called in
 * @param clock the day on which it runs, unless {@code --today} says another
 */
record Session(PrintStream out, PrintStream err, Path here, LocalDate clock, Screen screen) {}

package kitwright.cutting.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** An integer program in the CPLEX-LP format, solved by the program glpsol of the GLPK. */
final class GlpkProgram {
  private static final Pattern STATUS = Pattern.compile("(?m)^Status: +(.*)$");
  private static final Pattern OBJECTIVE = Pattern.compile("(?m)^Objective: .* = (\\d+) \\(MIN");

  private final StringBuilder objective = new StringBuilder();
  private final StringBuilder rows = new StringBuilder();
  private final StringBuilder limits = new StringBuilder();
  private final StringBuilder names = new StringBuilder();

  /** A whole number from nothing to {@code most}, to be paid for by the piece. */
  String unknown(String name, long most, long cost) {
    objective.append(" + ").append(cost).append(' ').append(name).append('\n');
    limits.append(" 0 <= ").append(name).append(" <= ").append(most).append('\n');
    names.append(' ').append(name).append('\n');
    return name;
  }

  /** Adds a term to the row being written. */
  GlpkProgram term(long times, String name) {
    rows.append(times < 0 ? " - " : " + ").append(Math.abs(times)).append(' ').append(name);
    rows.append('\n');
    return this;
  }

  /** Ends the row being written. */
  void atMost(long limit) {
    rows.append(" <= ").append(limit).append('\n');
  }

  /** Ends the row being written. */
  void exactly(long sum) {
    rows.append(" = ").append(sum).append('\n');
  }

  /** The least cost; fails where the solver cannot prove one. */
  long least(Path folder) throws IOException, InterruptedException {
    Path program = folder.resolve("program.lp");
    Path solution = folder.resolve("solution.txt");
    Path log = folder.resolve("log.txt");
    String text =
        "Minimize\n"
            + objective
            + "Subject To\n"
            + rows
            + "Bounds\n"
            + limits
            + "Generals\n"
            + names;
    Files.writeString(program, text + "End\n", StandardCharsets.US_ASCII);
    Files.deleteIfExists(solution);
    Process process =
        new ProcessBuilder(
                "glpsol", "--lp", program.toString(), "--tmlim", "20", "-o", solution.toString())
            .redirectErrorStream(true)
            .redirectOutput(log.toFile())
            .start();
    assertThat(process.waitFor(1, TimeUnit.MINUTES)).as("glpsol ends").isTrue();
    assertThat(solution).as(Files.readString(log)).exists();
    String found = Files.readString(solution);
    assertThat(first(STATUS, found)).as(Files.readString(log)).isEqualTo("INTEGER OPTIMAL");
    return Long.parseLong(first(OBJECTIVE, found));
  }

  private static String first(Pattern pattern, String text) {
    Matcher matcher = pattern.matcher(text);
    assertThat(matcher.find()).as(text).isTrue();
    return matcher.group(1);
  }
}

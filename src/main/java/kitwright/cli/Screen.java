package kitwright.cli;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import kitwright.finding.BriefFindings;
import kitwright.finding.Ink;
import kitwright.finding.Marks;
import kitwright.finding.TextFindings;

/**
 * What the place that text is printed to can show.
 *
 * @param columns how wide it is; asked only when something is laid out
 * @param lines how many lines it holds
 * @param live whether somebody watches: a terminal that can go back on a line
 */
record Screen(
    Supplier<Integer> columns, Supplier<Integer> lines, Marks marks, Ink ink, boolean live) {
  /**
   * Read from the environment. Colour only on a terminal, and never where NO_COLOR is set (see
   * no-color.org) or TERM says dumb.
   *
   * @param size how large the terminal says it is, where it answers
   */
  static Screen of(
      Map<String, String> environment, boolean terminal, Supplier<Optional<TerminalSize>> size) {
    boolean colour =
        terminal
            && environment.getOrDefault("NO_COLOR", "").isEmpty()
            && !environment.getOrDefault("TERM", "").equals("dumb");
    return new Screen(
        new Width(environment.getOrDefault("COLUMNS", ""), terminal, size),
        new Height(terminal, size),
        terminal && isPlain(environment) ? Marks.DOUBLED_BRACKETS : Marks.WHITE_BRACKETS,
        colour ? Ink.COLOUR : Ink.PLAIN,
        terminal && !environment.getOrDefault("TERM", "").equals("dumb"));
  }

  int width() {
    return columns.get();
  }

  int height() {
    return lines.get();
  }

  private static boolean isPlain(Map<String, String> environment) {
    for (String name : new String[] {"LC_ALL", "LC_CTYPE", "LANG"}) {
      String value = environment.getOrDefault(name, "");
      if (!value.isEmpty()) {
        return !value.toUpperCase(Locale.ROOT).replace("-", "").endsWith("UTF8");
      }
    }
    return true;
  }

  /** COLUMNS where somebody set it, else the terminal's own word, else what most can show. */
  private record Width(String columns, boolean terminal, Supplier<Optional<TerminalSize>> size)
      implements Supplier<Integer> {
    @Override
    public Integer get() {
      if (!columns.isEmpty() && columns.matches("[1-9]\\d{1,3}")) {
        return Integer.valueOf(columns);
      }
      return terminal
          ? size.get().map(TerminalSize::columns).orElse(TextFindings.USUAL_WIDTH)
          : TextFindings.USUAL_WIDTH;
    }
  }

  /** What the terminal says, less the lines of the command and the prompt; else a usual page. */
  private record Height(boolean terminal, Supplier<Optional<TerminalSize>> size)
      implements Supplier<Integer> {
    private static final int PROMPT = 2;
    private static final int LEAST = 12;

    @Override
    public Integer get() {
      return terminal
          ? size.get()
              .filter(told -> told.lines() > 0)
              .map(told -> Math.max(LEAST, told.lines() - PROMPT))
              .orElse(BriefFindings.SCREEN)
          : BriefFindings.SCREEN;
    }
  }
}

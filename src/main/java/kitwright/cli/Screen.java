package kitwright.cli;

import java.util.Locale;
import java.util.Map;
import kitwright.finding.Ink;
import kitwright.finding.Marks;
import kitwright.finding.TextFindings;

/** What the place that text is printed to can show. */
record Screen(int width, Marks marks, Ink ink) {
  /**
   * Read from the environment. Colour only on a terminal, and never where NO_COLOR is set (see
   * no-color.org) or TERM says dumb.
   */
  static Screen of(Map<String, String> environment, boolean terminal) {
    boolean colour =
        terminal
            && environment.getOrDefault("NO_COLOR", "").isEmpty()
            && !environment.getOrDefault("TERM", "").equals("dumb");
    return new Screen(
        width(environment.getOrDefault("COLUMNS", "")),
        terminal && isPlain(environment) ? Marks.DOUBLED_BRACKETS : Marks.WHITE_BRACKETS,
        colour ? Ink.COLOUR : Ink.PLAIN);
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

  private static int width(String columns) {
    return columns.matches("[1-9]\\d{1,3}") ? Integer.parseInt(columns) : TextFindings.USUAL_WIDTH;
  }
}

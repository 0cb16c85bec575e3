package kitwright.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import kitwright.value.ScreenWidth;
import kitwright.value.Unit;

/** Breaks a text into lines at spaces, save between a number and its unit. */
public final class Wrapping {
  private static final Pattern SPACES = Pattern.compile(" +");

  private Wrapping() {}

  /**
   * Lines of at most {@code width} cells of a terminal; a word that is longer than that (a path, a
   * web address) stands whole on a line of its own. At least one line, which may be empty.
   */
  public static List<String> at(int width, String text) {
    var lines = new ArrayList<String>();
    var line = new StringBuilder();
    int cells = 0;
    for (String word : words(text)) {
      int more = ScreenWidth.of(word);
      if (!line.isEmpty() && cells + 1 + more > width) {
        lines.add(line.toString());
        line.setLength(0);
        cells = 0;
      }
      cells += more + (line.isEmpty() ? 0 : 1);
      line.append(line.isEmpty() ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  /** What stays on one line: words, and numbers with their units. */
  public static List<String> words(String text) {
    var words = new ArrayList<String>();
    for (String word : SPACES.split(text.strip(), -1)) {
      int last = words.size() - 1;
      if (last >= 0 && Unit.belongsTo(words.get(last), word)) {
        words.set(last, words.get(last) + " " + word);
      } else {
        words.add(word);
      }
    }
    return words;
  }
}

package kitwright.finding;

import java.util.ArrayList;
import java.util.List;
import kitwright.value.ScreenWidth;

/** Breaks a text into lines at spaces. */
public final class Wrapping {
  private Wrapping() {}

  /**
   * Lines of at most {@code width} cells of a terminal; a word that is longer than that (a path, a
   * web address) stands whole on a line of its own. At least one line, which may be empty.
   */
  public static List<String> at(int width, String text) {
    var lines = new ArrayList<String>();
    var line = new StringBuilder();
    for (String word : text.strip().split(" +", -1)) {
      if (!line.isEmpty() && ScreenWidth.of(line) + 1 + ScreenWidth.of(word) > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.isEmpty() ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }
}

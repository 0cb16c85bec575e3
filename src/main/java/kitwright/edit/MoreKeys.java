package kitwright.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitwright.value.Place;

/**
 * Writes further keys into a record that is there, straight behind its id; every other character of
 * the file stays. Whoever calls reads the new text again before it is kept.
 */
public final class MoreKeys {
  private static final Pattern OWN_LINE = Pattern.compile("(\\s*(?:-\\s+)?)id:\\s+");

  private MoreKeys() {}

  /**
   * A text with the keys put in; empty where the id does not stand as it is usually written.
   *
   * @param id where the record's id stands
   * @param keys as they are written, such as {@code done: 2026-03-29}
   */
  public static Optional<String> after(String text, Place id, List<String> keys) {
    List<String> lines = new ArrayList<>(List.of(text.split("(?<=\n)", -1)));
    if (id.line() > lines.size() || id.line() != id.endLine()) {
      return Optional.empty();
    }
    String line = lines.get(id.line() - 1);
    int start = id.column() - 1;
    int end = Math.min(line.length(), id.endColumn() - 1);
    if (start > end) {
      return Optional.empty();
    }
    Matcher own = OWN_LINE.matcher(line.substring(0, start));
    if (own.matches()) {
      String indent = " ".repeat(own.group(1).length());
      String ending = line.endsWith("\r\n") ? "\r\n" : "\n";
      StringBuilder more = new StringBuilder(line.endsWith("\n") ? line : line + ending);
      keys.forEach(key -> more.append(indent).append(key).append(ending));
      lines.set(id.line() - 1, more.toString());
    } else if (line.substring(0, start).contains("{")) {
      String within = line.substring(0, end) + ", " + String.join(", ", keys);
      lines.set(id.line() - 1, within + line.substring(end));
    } else {
      return Optional.empty();
    }
    return Optional.of(String.join("", lines));
  }
}

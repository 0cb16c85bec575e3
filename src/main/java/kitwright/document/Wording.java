package kitwright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitwright.value.Visible;
import org.commonmark.node.Code;
import org.commonmark.node.Node;
import org.commonmark.node.Text;

/**
 * Text from a ledger as commonmark nodes. Blanks and line ends become single spaces and hidden
 * characters are written out. What a reader of GitHub Flavored Markdown (section 6.9, autolinks) or
 * a forge would turn into a link or a call to a person is shown as code: escaping does not stop
 * such a reader, code does.
 */
final class Wording {
  // Unicode blanks, save those that keep words together (U+00A0, U+2007, U+202F).
  private static final Pattern BLANKS =
      Pattern.compile(
          "[\\s\\u0085\\u1680\\u2000-\\u2006\\u2008-\\u200a\\u2028\\u2029\\u205f\\u3000]+");
  private static final Pattern LINK_LIKE =
      Pattern.compile(
          "(?<![^\\p{Z}|\\\\`])[^\\p{Z}|\\\\`]*(?:://|www\\.|@)[^\\p{Z}|\\\\`]*",
          Pattern.CASE_INSENSITIVE);
  private static final String OPENING = "([{<\"'„“";
  private static final String CLOSING = ".,;:!?)]}>\"'“”";

  private Wording() {}

  /** The text with blanks drawn together and hidden characters written out. */
  static String shown(String text) {
    return Visible.line(BLANKS.matcher(text).replaceAll(" "));
  }

  /** Markdown takes no blank next to its signs, not even one that keeps words together. */
  static String withoutFirstBlanks(String text) {
    int start = 0;
    while (start < text.length() && Character.isSpaceChar(text.charAt(start))) {
      start++;
    }
    return text.substring(start);
  }

  static String withoutLastBlanks(String text) {
    int end = text.length();
    while (end > 0 && Character.isSpaceChar(text.charAt(end - 1))) {
      end--;
    }
    return text.substring(0, end);
  }

  static List<Node> nodes(String text) {
    String shown = shown(text);
    var out = new ArrayList<Node>();
    Matcher matcher = LINK_LIKE.matcher(shown);
    int from = 0;
    while (matcher.find()) {
      int start = matcher.start();
      int end = matcher.end();
      while (start < end && OPENING.indexOf(shown.charAt(start)) >= 0) {
        start++;
      }
      while (end > start && CLOSING.indexOf(shown.charAt(end - 1)) >= 0) {
        end--;
      }
      if (end - start > 1) {
        addText(out, shown.substring(from, start));
        out.add(new Code(shown.substring(start, end)));
        from = end;
      }
    }
    addText(out, shown.substring(from));
    return out;
  }

  /** Without regard to links: for the words of a picture, where nothing is turned into one. */
  static List<Node> plain(String text) {
    var out = new ArrayList<Node>();
    addText(out, shown(text).strip());
    return out;
  }

  /**
   * A code span. A backslash before a stroke has no form that every reader of tables takes alike,
   * so that such a text is shown as words.
   */
  static List<Node> code(String text) {
    String shown = withoutFirstBlanks(withoutLastBlanks(shown(text)));
    if (shown.isEmpty()) {
      return List.of();
    }
    return shown.contains("\\|") ? nodes(shown) : List.of(new Code(shown));
  }

  private static void addText(List<Node> out, String text) {
    if (!text.isEmpty()) {
      out.add(new Text(text));
    }
  }
}

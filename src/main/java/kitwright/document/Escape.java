package kitwright.document;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Text as Markdown that reads back as the same text, in a paragraph, heading or cell alike.
 *
 * @see "CommonMark Spec 0.31.2, sections 2.4 (backslash escapes) and 2.5 (character references);
 *     GitHub Flavored Markdown Spec 0.29, sections 4.10 (tables) and 6.5 (strikethrough)"
 */
final class Escape {
  // An underscore between letters or digits starts nothing; an ampersand before a space neither.
  private static final Pattern ANYWHERE =
      Pattern.compile("[\\\\\\[\\]<`*|~$]|(?<![\\p{L}\\p{N}])_|_(?![\\p{L}\\p{N}])|&(?=[#A-Za-z])");
  private static final Pattern AT_START = Pattern.compile("^([-+#=>:]|[0-9]{1,9}(?=[.)]))");

  private Escape() {}

  /** Where the text stands. */
  enum Where {
    LINE_START,
    WITHIN_LINE
  }

  static String text(String text, Where where) {
    String escaped = ANYWHERE.matcher(text).replaceAll(match -> sign(match.group()));
    return where == Where.LINE_START ? atLineStart(escaped) : escaped;
  }

  /** Escaped text for a heading, which a number sign behind a space could close. */
  static String inHeading(String escaped) {
    String inside = escaped.replace(" #", " \\#");
    return inside.startsWith("#") ? "\\" + inside : inside;
  }

  /** A backslash before a stroke is read differently by different readers, a reference is not. */
  private static String sign(String sign) {
    return sign.equals("\\") ? "&#92;" : Matcher.quoteReplacement("\\" + sign);
  }

  /** Escaped text for the start of a line, where more signs mean something. */
  static String atLineStart(String escaped) {
    Matcher matcher = AT_START.matcher(escaped);
    if (!matcher.find()) {
      return escaped.startsWith(" ") ? "&#32;" + escaped.substring(1) : escaped;
    }
    String first = matcher.group();
    String rest = escaped.substring(matcher.end());
    return Character.isDigit(first.charAt(0)) ? first + "\\" + rest : "\\" + first + rest;
  }
}

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
  // These start nothing and are left alone: an underscore inside a word, an ampersand that no
  // semicolon ends, an asterisk between spaces, a less-than sign before a space or a number, a
  // backslash before a letter. What stands at the end of the text may go on in the next one.
  private static final Pattern ANYWHERE =
      Pattern.compile(
          "\\\\(?![\\p{L}\\p{N}])|[\\[\\]`|~$]|(?<! )\\*|\\*(?! )|<(?![0-9.,]* )"
              + "|(?<![\\p{L}\\p{N}])_|_(?![\\p{L}\\p{N}])|&(?=#?[A-Za-z0-9]*(?:;|$))");
  private static final Pattern AT_START =
      Pattern.compile(
          "^(?:[-+](?![\\p{L}\\p{N}])|#(?=#*(?:\\s|$))|=(?=[=\\s]|$)|:(?=[-:\\s]|$)|>"
              + "|[0-9]{1,9}(?=[.)](?:\\s|$)))");

  private static final Pattern CLOSING = Pattern.compile("(^|\\s)(#+\\s*)$");

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

  /** Escaped text for a heading, which number signs at its end, behind a space, would close. */
  static String inHeading(String escaped) {
    return CLOSING.matcher(escaped).replaceFirst("$1\\\\$2");
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

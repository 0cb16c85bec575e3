package kitwright.report.writing;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * The last line by which Kitwright knows a file as its own. The same in every build and on every
 * day.
 */
public final class Mark {
  private static final String WORDS =
      "Written by Kitwright from the ledger. Changes made here will be lost.";
  private static final int TAIL = 200;

  private Mark() {}

  /** The line for a file of this name; empty where its kind has no place for a remark. */
  static Optional<String> lineFor(String name) {
    String kind = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    return switch (kind) {
      case "md", "html", "svg", "xml" -> Optional.of("<!-- " + WORDS + " -->");
      case "pdf" -> Optional.of("% " + WORDS);
      case "yaml", "yml" -> Optional.of("# " + WORDS);
      default -> Optional.empty();
    };
  }

  /** {@code content} with the mark below it, if the kind has one. */
  public static byte[] put(String name, byte[] content) {
    return lineFor(name)
        .map(line -> joined(content, gap(name, content) + line + "\n"))
        .orElse(content);
  }

  /** Whether the last line of {@code content} is the mark. */
  static boolean isOn(String name, byte[] content) {
    if (name.endsWith(".ics")) { // nothing may follow its last line, so its maker is told above
      return new String(content, ISO_8859_1)
          .contains("\r\nPRODID:" + CalendarFile.PRODUCT + "\r\n");
    }
    int from = Math.max(0, content.length - TAIL);
    String end = new String(content, from, content.length - from, ISO_8859_1).stripTrailing();
    return lineFor(name).filter(line -> end.endsWith("\n" + line)).isPresent();
  }

  /** Markdown needs an empty line, or the mark would join the last paragraph. */
  private static String gap(String name, byte[] content) {
    boolean ended = content.length == 0 || content[content.length - 1] == '\n';
    return (ended ? "" : "\n") + (name.endsWith(".md") ? "\n" : "");
  }

  private static byte[] joined(byte[] content, String line) {
    byte[] tail = line.getBytes(ISO_8859_1);
    byte[] all = Arrays.copyOf(content, content.length + tail.length);
    System.arraycopy(tail, 0, all, content.length, tail.length);
    return all;
  }
}

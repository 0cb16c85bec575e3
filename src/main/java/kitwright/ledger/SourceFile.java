package kitwright.ledger;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.value.Place;

/**
 * A file of the ledger, decoded.
 *
 * @param path from the ledger's root, with forward slashes
 * @param text without a byte order mark; of one that could not be opened, what little can be seen
 * @param opened whether the text is all that stands in it
 */
public record SourceFile(String path, String text, boolean opened) {
  public SourceFile(String path, String text) {
    this(path, text, true);
  }

  /** One that is there and could not be opened: nobody knows what it holds. */
  static SourceFile unopened(String path) {
    return new SourceFile(path, "", false);
  }

  /** Decodes a file, wherever its bytes come from; unopened, and told where, if it is not UTF-8. */
  public static SourceFile decoded(String path, byte[] bytes, Findings out) {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return new SourceFile(path, text.startsWith("\uFEFF") ? text.substring(1) : text);
    } catch (CharacterCodingException notUtf8) {
      out.add(notUtf8(path, bytes));
      String seen = isUtf16(bytes) ? "" : new String(bytes, StandardCharsets.UTF_8);
      return new SourceFile(path, seen, false);
    }
  }

  private static boolean isUtf16(byte[] bytes) {
    return bytes.length > 1 && ((bytes[0] & 0xff) == 0xff || (bytes[0] & 0xff) == 0xfe);
  }

  private static Finding notUtf8(String file, byte[] bytes) {
    boolean utf16 = isUtf16(bytes);
    String readable = new String(bytes, StandardCharsets.UTF_8);
    int bad = utf16 ? 0 : Math.max(0, readable.indexOf('\uFFFD'));
    String before = readable.substring(0, bad);
    int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
    int column = 1 + before.codePointCount(before.lastIndexOf('\n') + 1, before.length());
    return new Finding(
        "file-unreadable",
        Severity.STOP,
        new Place(file, line, column, line, column + 1),
        utf16 ? "The file is UTF-16 text, not UTF-8." : "The text is not UTF-8 here.",
        "The whole file is passed over.",
        "Save the file as UTF-8 in your editor.",
        List.of());
  }

  /** Whether it may be a day of the log: Markdown that starts with front matter. */
  boolean isMarkdown() {
    return path.endsWith(".md");
  }
}

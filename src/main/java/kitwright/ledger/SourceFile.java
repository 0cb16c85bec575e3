package kitwright.ledger;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.value.Place;

/**
 * A file of the ledger, decoded.
 *
 * @param path from the ledger's root, with forward slashes
 * @param text without a byte order mark
 */
public record SourceFile(String path, String text) {
  /** Decodes a file, wherever its bytes come from; empty, and told where, if it is not UTF-8. */
  public static Optional<SourceFile> decoded(String path, byte[] bytes, Findings out) {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return Optional.of(
          new SourceFile(path, text.startsWith("\uFEFF") ? text.substring(1) : text));
    } catch (CharacterCodingException notUtf8) {
      out.add(notUtf8(path, bytes));
      return Optional.empty();
    }
  }

  private static Finding notUtf8(String file, byte[] bytes) {
    boolean utf16 = bytes.length > 1 && ((bytes[0] & 0xff) == 0xff || (bytes[0] & 0xff) == 0xfe);
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

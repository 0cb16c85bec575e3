package kitwright.ledger;

/**
 * A file of the ledger, decoded.
 *
 * @param path from the ledger's root, with forward slashes
 * @param text without a byte order mark
 */
public record SourceFile(String path, String text) {
  /** Whether it may be a day of the log: Markdown that starts with front matter. */
  boolean isMarkdown() {
    return path.endsWith(".md");
  }
}

package kitwright.report.writing;

/** What may become of a file that stands where a document is to go. */
public enum Existing {
  /** Only a file that Kitwright wrote is replaced. */
  KEEP_FOREIGN,
  /** Any file is replaced; a folder or a link never. */
  REPLACE
}

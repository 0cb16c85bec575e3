package kitwright.check;

import java.util.ArrayList;
import java.util.List;

/**
 * The names of all rules: those about the reading of files, about the records, and about the
 * writing of documents.
 */
public final class RuleNames {
  /** Found while files are read, before there is a ledger to judge. */
  private static final List<String> READING =
      List.of(
          "build-twice",
          "file-unreadable",
          "key-missing",
          "key-twice",
          "key-unknown",
          "kind-unknown",
          "link-not-followed",
          "text-cut-by-comma",
          "text-cut-by-hash",
          "file-passed-over",
          "value-unreadable",
          "yaml-not-plain",
          "yaml-unreadable");

  /** Found while documents are written. */
  private static final List<String> WRITING =
      List.of(
          "document-not-written",
          "public-photo-unreadable",
          "public-words-private",
          "report-broken",
          "template-broken");

  private RuleNames() {}

  /** All names, in that order. */
  public static List<String> all() {
    List<String> all = new ArrayList<>(READING);
    Check.rules().forEach(rule -> all.add(rule.name()));
    all.add(Examining.RULE);
    all.addAll(WRITING);
    return List.copyOf(all);
  }
}

package kitwright.check;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import kitwright.finding.Findings;
import kitwright.ledger.Ledger;
import kitwright.ledger.LedgerReader;
import kitwright.ledger.Rule;
import kitwright.ledger.SourceFile;

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
          "value-unreadable",
          "yaml-not-plain",
          "yaml-unreadable");

  /** Found while documents are written. */
  private static final List<String> WRITING = List.of("document-not-written", "template-broken");

  private RuleNames() {}

  /** All names, in that order. */
  public static List<String> all() {
    Ledger empty =
        LedgerReader.read(
                List.of(
                    new SourceFile("", "build: {name: none, currency: EUR, started: 2026-01-01}")),
                paths -> Map.of(),
                new Findings())
            .orElseThrow();
    Stream<String> judging = Check.rules(empty, LocalDate.of(2026, 1, 1)).stream().map(Rule::name);
    return Stream.of(READING.stream(), judging, WRITING.stream()).flatMap(all -> all).toList();
  }
}

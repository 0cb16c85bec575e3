package kitwright.ledger;

import java.util.List;
import java.util.Map;
import kitwright.check.Check;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/** The two things that are set side by side. */
final class Reading {
  private Reading() {}

  /** The parser alone over the same texts (of a log day, the same front matter). */
  static int events(List<SourceFile> files) {
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(Integer.MAX_VALUE);
    int count = 0;
    for (SourceFile file : files) {
      String text =
          file.isMarkdown()
              ? FrontMatter.of(file, new Findings(), unread -> {}).orElseThrow().yaml()
              : file.text();
      ParserImpl parser = new ParserImpl(new StreamReader(text), options);
      while (!parser.checkEvent(Event.ID.StreamEnd)) {
        parser.getEvent();
        count++;
      }
    }
    return count;
  }

  /** The texts to records. */
  static Ledger read(List<SourceFile> files, Findings out) {
    return LedgerReader.read(files, paths -> Map.of(), out).orElseThrow();
  }

  /** The texts to records, every rule, and the findings in order. */
  static List<Finding> check(List<SourceFile> files) {
    Findings out = new Findings();
    Check.examine(Facts.of(read(files, out), GeneratedLedger.TODAY), out);
    return out.inOrder();
  }
}

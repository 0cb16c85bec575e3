package kitwright.finding;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import java.util.function.Function;
import kitwright.value.Visible;

/**
 * Findings in full for a terminal: each with its lines, what is wrong, what follows and how to mend
 * it, and a count at the end. Nothing a ledger holds reaches the terminal raw: see {@link Visible}.
 *
 * @param width columns to fill; fewer than 40 are taken as 40
 * @param marks what stands round the guilty stretch
 * @param ink whether to colour
 */
public record TextFindings(int width, Marks marks, Ink ink) {
  /** Columns where nobody said how wide the terminal is. */
  public static final int USUAL_WIDTH = 88;

  private static final int LEAST_WIDTH = 40;
  private static final String QUOTE = "      ";

  public TextFindings {
    width = Math.max(LEAST_WIDTH, width);
  }

  /**
   * The whole text, each line ended by a line feed.
   *
   * @param matters in the order in which they are to be shown
   * @param source the lines of a file by its path; an empty list where it cannot be read
   */
  public String render(List<Matter> matters, Function<String, List<String>> source) {
    Map<String, Excerpt.Source> files = new HashMap<>();
    var out = new StringBuilder();
    for (Matter matter : matters) {
      for (Finding finding : (Iterable<Finding>) matter.findings()::iterator) {
        Excerpt.Source lines =
            files.computeIfAbsent(
                finding.at().file(), file -> new Excerpt.Source(source.apply(file)));
        out.append(block(finding, !finding.equals(matter.cause()), lines)).append('\n');
      }
    }
    List<Finding> all = Matter.findings(matters);
    return out.append(Tally.of(all).told(Tally.files(all))).append('\n').toString();
  }

  private String block(Finding finding, boolean follows, Excerpt.Source source) {
    var out = new StringBuilder();
    out.append(ink.severity(finding.severity(), finding.severity().title()))
        .append(": ")
        .append(Visible.line(finding.rule()))
        .append(", at ")
        .append(Visible.line(finding.at().toString()))
        .append(follows ? ", follows from the one above" : "")
        .append('\n');
    Excerpt.of(finding.at(), source, marks, ink, width - QUOTE.length())
        .forEach(line -> out.append(QUOTE).append(line).append('\n'));
    out.append(labelled("Wrong:   ", finding.what()));
    out.append(labelled("Follows: ", finding.follows()));
    out.append(labelled("Mend:    ", finding.mend()));
    if (!finding.records().isEmpty()) {
      out.append(labelled("Concerns:", String.join(", ", finding.records())));
    }
    return out.toString();
  }

  private String labelled(String label, String text) {
    String hang = " ".repeat(2 + label.length() + 1);
    var lines = new StringJoiner("\n" + hang, "  " + label + " ", "\n");
    Wrapping.at(width - hang.length(), Visible.line(text)).forEach(lines::add);
    return lines.toString();
  }
}

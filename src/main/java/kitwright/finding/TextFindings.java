package kitwright.finding;

import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import kitwright.value.Visible;

/**
 * Findings for reading in a terminal: by file, each with its lines, what is wrong, what follows and
 * how to mend it, and a count at the end. Nothing a ledger holds reaches the terminal raw: see
 * {@link Visible}.
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

  /** 88 columns, white brackets, no colour. */
  public static TextFindings plain() {
    return new TextFindings(USUAL_WIDTH, Marks.WHITE_BRACKETS, Ink.PLAIN);
  }

  /**
   * The whole text, each line ended by a line feed.
   *
   * @param findings in the order in which each file's are to be shown
   * @param source the lines of a file by its path; an empty list where it cannot be read
   */
  public String render(List<Finding> findings, Function<String, List<String>> source) {
    Map<String, List<Finding>> byFile =
        findings.stream()
            .collect(Collectors.groupingBy(f -> f.at().file(), TreeMap::new, Collectors.toList()));
    var out = new StringBuilder();
    byFile.forEach(
        (file, those) -> {
          Excerpt.Source lines = new Excerpt.Source(source.apply(file));
          out.append(Visible.line(file)).append("\n\n");
          those.forEach(finding -> out.append(block(finding, lines)).append('\n'));
        });
    return out.append(closing(Tally.of(findings), byFile.size())).append('\n').toString();
  }

  private String block(Finding finding, Excerpt.Source source) {
    var out = new StringBuilder();
    out.append("  ")
        .append(ink.severity(finding.severity(), title(finding.severity())))
        .append(": ")
        .append(Visible.line(finding.rule()))
        .append(", at ")
        .append(Visible.line(finding.at().toString()))
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

  private static String closing(Tally tally, int files) {
    if (tally.all() == 0) {
      return "Nothing found.";
    }
    var parts = new StringJoiner(", ");
    part(parts, tally.stop(), Severity.STOP);
    part(parts, tally.warn(), Severity.WARN);
    part(parts, tally.note(), Severity.NOTE);
    String findings = tally.all() == 1 ? "1 finding" : tally.all() + " findings";
    String where = files == 1 ? "1 file" : files + " files";
    return findings + " in " + where + ": " + parts + ".";
  }

  private static void part(StringJoiner parts, int count, Severity severity) {
    if (count > 0) {
      parts.add(count + " " + severity.word());
    }
  }

  private static String title(Severity severity) {
    String word = severity.word();
    return Character.toUpperCase(word.charAt(0)) + word.substring(1);
  }
}

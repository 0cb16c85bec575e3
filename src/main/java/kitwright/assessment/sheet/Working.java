package kitwright.assessment.sheet;

import java.util.List;

/**
 * How the figures of one part came about.
 *
 * @param part what it is called
 * @param columns headings of the table of its pieces
 * @param pieces a row each
 * @param steps in the order in which they are worked out
 */
public record Working(
    String part, List<String> columns, List<List<String>> pieces, List<Step> steps) {
  public Working {
    columns = List.copyOf(columns);
    pieces = pieces.stream().map(List::copyOf).toList();
    steps = List.copyOf(steps);
  }
}

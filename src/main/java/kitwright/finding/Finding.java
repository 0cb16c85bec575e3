package kitwright.finding;

import java.util.Comparator;
import java.util.List;
import kitwright.value.Place;

/**
 * A fault, told for a builder with cold hands.
 *
 * @param rule the rule's plain name, kebab-case
 * @param severity how much it weighs
 * @param at the narrowest place that shows the fault
 * @param what what is wrong, one sentence
 * @param follows what comes of it if nobody acts, one sentence
 * @param mend how to put it right, one sentence
 * @param records the records concerned, each as {@code kind id}; may be empty
 */
public record Finding(
    String rule,
    Severity severity,
    Place at,
    String what,
    String follows,
    String mend,
    List<String> records)
    implements Comparable<Finding> {
  private static final Comparator<Finding> ORDER =
      Comparator.comparing(Finding::at)
          .thenComparing(Finding::severity)
          .thenComparing(Finding::rule)
          .thenComparing(Finding::what)
          .thenComparing(Finding::mend);

  public Finding {
    records = List.copyOf(records);
  }

  /** By place, then gravest first. */
  @Override
  public int compareTo(Finding other) {
    return ORDER.compare(this, other);
  }
}

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

  @Override
  public boolean equals(Object other) {
    return other instanceof Finding that
        && rule.equals(that.rule)
        && severity.equals(that.severity)
        && at.equals(that.at)
        && what.equals(that.what)
        && follows.equals(that.follows)
        && mend.equals(that.mend)
        && records.equals(that.records);
  }

  @Override
  public int hashCode() {
    int hash = rule.hashCode();
    hash = 31 * hash + severity.hashCode();
    hash = 31 * hash + at.hashCode();
    hash = 31 * hash + what.hashCode();
    hash = 31 * hash + follows.hashCode();
    hash = 31 * hash + mend.hashCode();
    hash = 31 * hash + records.hashCode();
    return hash;
  }
}

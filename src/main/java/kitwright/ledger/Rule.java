package kitwright.ledger;

import java.util.Locale;
import kitwright.finding.Findings;

/**
 * Something that must hold of a ledger. The rule's page {@code kitwright/rules/NAME.md} among the
 * resources says what it protects against and shows a ledger that fires it and one that does not.
 * Rules hold nothing: what they need they ask of the {@link Facts}.
 */
public interface Rule {
  /** The fault, in kebab-case words: the name of its class, which says it already. */
  default String name() {
    String type = getClass().getName();
    String words = type.substring(type.lastIndexOf('.') + 1).replaceAll("(?<=.)(?=[A-Z])", "-");
    return words.toLowerCase(Locale.ROOT);
  }

  /** Adds a finding for each place where it does not hold on that day. */
  void examine(Facts day, Findings out);
}

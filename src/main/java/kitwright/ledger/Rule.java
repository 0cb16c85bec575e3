package kitwright.ledger;

import java.util.List;
import java.util.Locale;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.value.Place;

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

  /** What it found, where work on the matter must stop. */
  default Finding stop(Place at, String what, String follows, String mend, List<String> records) {
    return new Finding(name(), Severity.STOP, at, what, follows, mend, records);
  }

  /** What it found, where it will cost something unless somebody acts. */
  default Finding warn(Place at, String what, String follows, String mend, List<String> records) {
    return new Finding(name(), Severity.WARN, at, what, follows, mend, records);
  }

  /** What it found, where it is worth knowing. */
  default Finding note(Place at, String what, String follows, String mend, List<String> records) {
    return new Finding(name(), Severity.NOTE, at, what, follows, mend, records);
  }
}

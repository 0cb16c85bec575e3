package kitwright.ledger;

import java.util.List;
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
    // Letter by letter: a large ledger may hold a finding for every tenth record.
    String type = getClass().getName();
    int from = type.lastIndexOf('.') + 1;
    StringBuilder words = new StringBuilder();
    for (int i = from; i < type.length(); i++) {
      char letter = type.charAt(i);
      words.append(i > from && Character.isUpperCase(letter) ? "-" : "");
      words.append(Character.toLowerCase(letter));
    }
    return words.toString();
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

package kitwright.substitution;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import kitwright.ledger.Ledger;
import kitwright.ledger.Party;
import kitwright.value.Ref;

/** Whether two ids are one person: the same name but for accents, case, signs and order. */
final class Persons {
  private static final Pattern MARKS = Pattern.compile("\\p{M}+");
  private static final Pattern NO_LETTER = Pattern.compile("[^\\p{L}\\p{N}]+");

  private Persons() {}

  /** Whether both are one id, or have one name. */
  static boolean areOne(Ref one, Ref other, Ledger ledger) {
    if (one.id().equals(other.id())) {
      return true;
    }
    Optional<Party> first = ledger.party(one);
    Optional<Party> second = ledger.party(other);
    return first.isPresent() && second.isPresent() && name(first.get()).equals(name(second.get()));
  }

  /** The words of the name, folded, in alphabetical order. */
  static String name(Party party) {
    return Arrays.stream(NO_LETTER.split(folded(party.name())))
        .filter(word -> !word.isEmpty())
        .sorted()
        .collect(Collectors.joining(" "));
  }

  /** Where somebody is reached, folded; empty where that is not said. */
  static Optional<String> contact(Party party) {
    return party
        .contact()
        .map(contact -> NO_LETTER.matcher(folded(contact)).replaceAll(""))
        .filter(contact -> !contact.isEmpty());
  }

  private static String folded(String text) {
    String plain = MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD)).replaceAll("");
    return plain
        .toLowerCase(Locale.ROOT)
        .replace("ø", "o")
        .replace("æ", "ae")
        .replace("œ", "oe")
        .replace("ß", "ss")
        .replace("ł", "l")
        .replace("đ", "d");
  }
}

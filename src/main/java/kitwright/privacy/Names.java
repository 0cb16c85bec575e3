package kitwright.privacy;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitwright.ledger.Ledger;

/**
 * Names of people and firms, whole and word by word, with a genitive s, however joined; long ones
 * within other words too.
 */
final class Names implements Ear {
  private static final int LONG = 5;
  private static final String BETWEEN_WORDS = "[^\\p{L}\\p{M}\\p{N}'’.\\-]+";
  private static final String WITHIN_WORDS = "[^\\p{L}\\p{M}\\p{N}]+";

  private final CommonWords common = CommonWords.read();

  /** Searched for without accents, signs and case; each with what it gives away. */
  private final Map<String, Pattern> folded = new LinkedHashMap<>();

  /** Searched for as they are written. */
  private final Map<String, Pattern> written = new LinkedHashMap<>();

  private final Map<String, String> why = new LinkedHashMap<>();

  static Names in(Ledger ledger) {
    Names names = new Names();
    People.in(ledger).forEach(each -> names.add(each.name(), each.why()));
    return names;
  }

  private void add(String name, String reason) {
    joined(name, reason);
    for (String word : name.split(BETWEEN_WORDS)) {
      joined(word, reason);
      for (String part : word.split(WITHIN_WORDS)) {
        word(part, reason);
      }
    }
  }

  /** A name of several words, with or without what stands between them. */
  private void joined(String name, String reason) {
    for (String form : Folded.forms(name.replaceAll("['’.]", " "))) {
      String[] words = form.split("[^\\p{L}\\p{N}]+");
      if (Stream.of(words).filter(word -> !word.isEmpty()).count() > 1) {
        String all =
            Stream.of(words)
                .filter(word -> !word.isEmpty())
                .map(Pattern::quote)
                .collect(Collectors.joining("[ .&,]{0,3}"));
        keep(folded, form, Pattern.compile(alone(all)), reason);
      }
    }
  }

  private void word(String word, String reason) {
    if (word.codePointCount(0, word.length()) < 2 || word.chars().allMatch(Character::isDigit)) {
      return;
    }
    for (String form : Folded.forms(word)) {
      if (common.isOfFirms(form)) {
        continue;
      }
      if (common.isEnglish(form)) {
        capital(word, reason);
      } else {
        String quoted = Pattern.quote(form);
        keep(folded, form, Pattern.compile(form.length() >= LONG ? quoted : alone(quoted)), reason);
      }
    }
  }

  private static String alone(String form) {
    return "(?<![\\p{L}\\p{N}])" + form + "s?(?![\\p{L}\\p{N}])";
  }

  /** A common word is a name where it is written with a capital, as the record does. */
  private void capital(String word, String reason) {
    if (Character.isUpperCase(word.codePointAt(0))) {
      String either =
          Pattern.quote(word) + "(?:['’]?s)?|" + Pattern.quote(word.toUpperCase(Locale.ROOT));
      keep(written, word, Pattern.compile("(?<![\\p{L}])(?:" + either + ")(?![\\p{L}])"), reason);
    }
  }

  private void keep(Map<String, Pattern> among, String form, Pattern pattern, String reason) {
    among.putIfAbsent(form, pattern);
    why.putIfAbsent(form, reason);
  }

  @Override
  public void hear(AsRead text, Heard heard) {
    folded.forEach((form, pattern) -> heard.first(pattern, text.folded(), reason(form)));
    written.forEach((form, pattern) -> heard.first(pattern, text.seen(), reason(form)));
  }

  private String reason(String form) {
    return why.getOrDefault(form, "a name");
  }
}

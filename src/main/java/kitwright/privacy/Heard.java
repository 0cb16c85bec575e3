package kitwright.privacy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What was heard in one text, each thing once. */
final class Heard {
  private final Map<String, Suspicion> found = new LinkedHashMap<>();

  void put(String words, String why) {
    String tidy = words.strip();
    found.putIfAbsent(tidy.toLowerCase(Locale.ROOT), new Suspicion(tidy, why));
  }

  /** Each place where a pattern is found. */
  void all(Pattern pattern, String text, String why) {
    Matcher matcher = pattern.matcher(text);
    while (matcher.find()) {
      put(matcher.group(), why);
    }
  }

  /** The first place where a pattern is found: a name said twice is one name. */
  void first(Pattern pattern, String text, String why) {
    Matcher matcher = pattern.matcher(text);
    if (matcher.find()) {
      put(matcher.group(), why);
    }
  }

  List<Suspicion> suspicions() {
    return List.copyOf(found.values());
  }
}

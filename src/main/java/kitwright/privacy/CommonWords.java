package kitwright.privacy;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Set;
import kitwright.value.English;

/**
 * English words that people and firms are called by too. Such a word is a name where it is written
 * with a capital; a word of a trade or of a firm's form is none at all.
 *
 * @param english the common words
 * @param firms what firms are called alike
 */
record CommonWords(Set<String> english, Set<String> firms) {
  static CommonWords read() {
    Set<String> english = new HashSet<>(English.words());
    english.addAll(words("names"));
    return new CommonWords(english, words("firms"));
  }

  /** Whether it is a word of English, or several of one. */
  boolean isEnglish(String word) {
    return english.contains(word)
        || firms.contains(word)
        || (word.endsWith("s") && english.contains(word.substring(0, word.length() - 1)));
  }

  /** Whether firms are called so alike, or names hold it as a little word. */
  boolean isOfFirms(String word) {
    return firms.contains(word);
  }

  /** One a line; what begins with # is a remark. */
  private static Set<String> words(String name) {
    String path = "/kitwright/words/" + name + ".txt";
    try (InputStream in = CommonWords.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException(path + " is not in the program");
      }
      Set<String> all = new HashSet<>();
      new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#"))
          .flatMap(line -> java.util.Arrays.stream(line.split(" ")))
          .filter(word -> !word.isEmpty())
          .forEach(all::add);
      return all;
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}

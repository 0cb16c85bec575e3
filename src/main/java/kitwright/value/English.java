package kitwright.value;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.stream.Collectors;

/** The common words of English, in small letters: levels 10 and 20 of SCOWL 2020.12.07. */
public final class English {
  private static final String LIST = "/kitwright/words/english.txt";

  private English() {}

  /** Read when the first of them is asked for, which a ledger without faults never does. */
  private static final class Words {
    static final Set<String> ALL = read();
  }

  public static Set<String> words() {
    return Words.ALL;
  }

  private static Set<String> read() {
    try (InputStream in = English.class.getResourceAsStream(LIST)) {
      if (in == null) {
        throw new IllegalStateException(LIST + " is not in the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#"))
          .collect(Collectors.toUnmodifiableSet());
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}

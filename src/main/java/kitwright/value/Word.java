package kitwright.value;

import java.util.Locale;

/** How words of closed lists are written, and how a sentence begins. */
public final class Word {
  private Word() {}

  /** As a ledger has it: {@code not-packed}. */
  public static String key(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** As people say it: {@code not packed}. */
  public static String spoken(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** {@code a task}, {@code an assessment}. */
  public static String withArticle(String noun) {
    return ("aeiou".indexOf(noun.charAt(0)) < 0 ? "a " : "an ") + noun;
  }

  /** With a capital at the start. */
  public static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}

package kitwright.edit;

import java.text.Normalizer;
import java.time.LocalDate;
import java.util.Locale;
import java.util.function.Predicate;
import kitwright.ledger.Kind;

/**
 * An id that nobody has yet: of things that happen on a day, a word, the day and what it is about;
 * of things that are named, the name. Never a number counted up, so that two branches of a ledger
 * do not make the same one.
 */
final class FreshId {
  private static final int LONGEST = 48;

  private FreshId() {}

  /**
   * @param about in the user's words; may be empty
   * @param taken whether the ledger has an id already
   */
  static String of(Kind kind, String about, LocalDate today, Predicate<String> taken) {
    String slug = slug(about);
    String id = isNamed(kind) && !slug.isEmpty() ? slug : on(today.toString(), kind, slug);
    String free = id;
    for (char letter = 'b'; taken.test(free) && letter <= 'z'; letter++) {
      free = id + "-" + letter;
    }
    return free;
  }

  /**
   * Of what happens on a day.
   *
   * @param day as a record has it
   * @param slug what it is about; may be empty
   */
  static String on(String day, Kind kind, String slug) {
    return prefix(kind) + "-" + day + (slug.isEmpty() ? "" : "-" + slug);
  }

  private static boolean isNamed(Kind kind) {
    return switch (kind) {
      case PARTIES, BUDGET, KIT, TASKS, MATERIALS, SECTIONS -> true;
      default -> false;
    };
  }

  private static String prefix(Kind kind) {
    return switch (kind) {
      case PARTIES -> "party";
      case BUDGET -> "line";
      case KIT -> "item";
      case DELIVERIES -> "delivery";
      case STOCK -> "stock";
      case TASKS -> "task";
      case SHORTAGES -> "short";
      case CLAIMS -> "claim";
      case SUBSTITUTIONS -> "sub";
      case MATERIALS -> "material";
      case SECTIONS -> "section";
      case ASSESSMENTS -> "check";
      case SPENDING -> "spend";
      case BORROWED -> "loan";
      case CUTS -> "cut";
      case BUILD, RATES, FORECAST, LOG -> kind.key();
    };
  }

  /** Words as part of an id: letters a to z, digits and hyphens. */
  static String slug(String words) {
    String folded =
        Normalizer.normalize(words.replace("ß", "ss").replace("ø", "o"), Normalizer.Form.NFKD)
            .replaceAll("\\p{M}+", "")
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z0-9]+", "-");
    String cut = folded.length() > LONGEST ? folded.substring(0, LONGEST) : folded;
    return cut.replaceAll("^-+|-+$", "");
  }
}

package kitwright.privacy;

import java.text.Normalizer;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Words brought to one spelling, so that a name is known again however it is written. */
final class Folded {
  private Folded() {}

  /** One case, no accents, no signs within words, single spaces. */
  static String of(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFKD)
        .toLowerCase(Locale.ROOT)
        .replaceAll("[\\p{M}\\p{Cf}'’`´*\\\\]+", "")
        .replace("ø", "o")
        .replace("æ", "ae")
        .replace("œ", "oe")
        .replace("ß", "ss")
        .replace("ł", "l")
        .replace("đ", "d")
        .replace("ð", "d")
        .replace("þ", "th")
        .replace("ı", "i")
        .replaceAll("[\\s\\p{Z}\\p{Pd}_]+", " ")
        .strip();
  }

  /** A name as it may be written: without accents, or with the letters that stand for them. */
  static Set<String> forms(String name) {
    String lower = Normalizer.normalize(name, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
    String doubled =
        lower
            .replace("å", "aa")
            .replace("ä", "ae")
            .replace("ö", "oe")
            .replace("ø", "oe")
            .replace("ü", "ue");
    return new LinkedHashSet<>(List.of(of(lower), of(doubled)));
  }
}

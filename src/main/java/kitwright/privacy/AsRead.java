package kitwright.privacy;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitwright.document.Prose;

/**
 * A text in every way in which somebody may take it, one below the other: as it was written, as a
 * page shows it, with letters drawn together that signs or blanks keep apart, and with letters of
 * other scripts taken for the Latin ones that look alike.
 *
 * @param seen with its capitals, digits as 0 to 9, nothing that cannot be seen
 * @param folded the same without accents, signs and case
 */
record AsRead(String seen, String folded) {
  /** A sentence’s end, so that no reading runs into the next. */
  private static final String NEXT = "\n.\n";

  private static final Pattern SPELT =
      Pattern.compile(
          "(?<![\\p{L}\\p{M}])\\p{L}\\p{M}*(?:["
              + " .·\\p{Pd}]{1,2}\\p{L}\\p{M}*){2,}(?![\\p{L}\\p{M}])");
  private static final Pattern ENTITY = Pattern.compile("&#(?:[xX]([0-9A-Fa-f]{1,6})|(\\d{1,7}));");

  /** Letters that look alike in common type (common practice, no source). */
  private static final String ELSEWHERE = "авеёкмнорстухіїјѕԁһАВЕЁКМНОРСТУХІЇЈЅΑΒΕΖΗΙΚΜΝΟΡΤΥΧαορν";

  private static final String LATIN = "abeekmhopctyxiijsdhABEEKMHOPCTYXIIJSABEZHIKMNOPTYXaopv";

  static AsRead of(String text) {
    Set<String> ways = new LinkedHashSet<>();
    ways.add(plain(unescaped(text)));
    String shown = plain(shown(text));
    ways.add(shown);
    ways.add(plain(drawnTogether(shown)));
    ways.add(latin(shown));
    String seen = String.join(NEXT, ways);
    return new AsRead(seen, Folded.of(seen));
  }

  /** What a page would show, and what its addresses say. */
  private static String shown(String text) {
    return String.join("\n", new Prose(text, 0, Map.of()).everyText())
        .replaceAll("</?\\p{Alpha}[^<>]*>", "");
  }

  private static String drawnTogether(String text) {
    return SPELT
        .matcher(text.replaceAll("[*_`~\\\\]+", ""))
        .replaceAll(found -> Matcher.quoteReplacement(letters(found)));
  }

  private static String letters(MatchResult found) {
    return found.group().replaceAll("[^\\p{L}\\p{M}]+", "");
  }

  private static String latin(String text) {
    StringBuilder out = new StringBuilder(text);
    for (int i = 0; i < out.length(); i++) {
      int at = ELSEWHERE.indexOf(out.charAt(i));
      if (at >= 0) {
        out.setCharAt(i, LATIN.charAt(at));
      }
    }
    return out.toString();
  }

  /** Compatible forms made plain (Unicode Standard Annex 15, NFKC), digits of any script 0 to 9. */
  private static String plain(String text) {
    StringBuilder out = new StringBuilder(text.length());
    Normalizer.normalize(text, Normalizer.Form.NFKC)
        .codePoints()
        .filter(point -> Character.getType(point) != Character.FORMAT)
        .forEach(
            point -> {
              if (Character.isDigit(point)) {
                out.append(Character.digit(point, 10));
              } else {
                out.appendCodePoint(point);
              }
            });
    return out.toString();
  }

  /** What percent signs and numbered characters stand for, where there are any. */
  private static String unescaped(String text) {
    String numbered = text.contains("&#") ? ENTITY.matcher(text).replaceAll(AsRead::letter) : text;
    if (!numbered.contains("%")) {
      return numbered;
    }
    try {
      return URLDecoder.decode(numbered.replace("+", "%2B"), StandardCharsets.UTF_8);
    } catch (IllegalArgumentException notEncoded) {
      return numbered;
    }
  }

  private static String letter(MatchResult found) {
    String hexadecimal = found.group(1);
    int code =
        hexadecimal != null ? Integer.parseInt(hexadecimal, 16) : Integer.parseInt(found.group(2));
    return Character.isValidCodePoint(code)
        ? Matcher.quoteReplacement(new String(Character.toChars(code)))
        : "";
  }
}

package kitwright.report.week;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import kitwright.finding.Finding;
import kitwright.finding.Severity;
import kitwright.ledger.Ledger;
import kitwright.privacy.Overheard;
import kitwright.privacy.Suspicion;
import kitwright.value.Place;

/** Words of the ledger that go out to the public, each with its place, read for their author. */
public final class Spoken {
  private static final String RULE = "public-words-private";

  /**
   * Words that go out.
   *
   * @param at where they stand
   * @param allow what in them may stand though it looks private
   */
  private record Piece(String words, Place at, List<String> allow) {}

  private final List<Piece> pieces = new ArrayList<>();

  /** Notes words that go out, and hands them back. */
  String say(String words, Place at, List<String> allow) {
    pieces.add(new Piece(words, at, allow));
    return words;
  }

  /**
   * What in them looks private and is not allowed there; by place.
   *
   * @param lines the lines of a file, so that a word of a long text is shown where it stands
   */
  public List<Finding> read(Ledger ledger, Function<String, List<String>> lines) {
    Overheard overheard = Overheard.of(ledger);
    List<Finding> all = new ArrayList<>();
    for (Piece piece : pieces) {
      for (Suspicion suspicion : overheard.in(piece.words())) {
        if (!isAllowed(suspicion.words(), piece.allow())) {
          all.add(finding(suspicion, piece, lines));
        }
      }
    }
    return all.stream().distinct().sorted().toList();
  }

  private static boolean isAllowed(String words, List<String> allow) {
    return allow.stream()
        .anyMatch(
            each ->
                each.strip().toLowerCase(Locale.ROOT).equals(words.toLowerCase(Locale.ROOT))
                    || Overheard.isSame(each, words));
  }

  private static Finding finding(
      Suspicion suspicion, Piece piece, Function<String, List<String>> lines) {
    Place at = where(suspicion.words(), piece, lines);
    String words = as(suspicion.words(), piece.words());
    return new Finding(
        RULE,
        Severity.STOP,
        at,
        "“" + words + "” looks private: " + suspicion.why() + ".",
        "It would be read by everybody who follows the build, so nothing is told to the public.",
        "Say it in other words, keep it for the crew, or let it stand by “allow: ["
            + quoted(words)
            + "]” in that record.",
        List.of());
  }

  /** The words as they were written there, where they are found again. */
  private static String as(String words, String text) {
    int from = text.toLowerCase(Locale.ROOT).indexOf(words.toLowerCase(Locale.ROOT));
    return from < 0 ? words : text.substring(from, from + words.length());
  }

  private static String quoted(String words) {
    return words.matches("[\\p{L}][\\p{L} ]*") ? words : "\"" + words.replace("\"", "\\\"") + "\"";
  }

  /** The line that holds the words, from the piece's place on; the place itself where none does. */
  private static Place where(String words, Piece piece, Function<String, List<String>> lines) {
    List<String> all = lines.apply(piece.at().file());
    int first = start(piece, all);
    int last = Math.min(all.size(), first + (int) piece.words().lines().count() + 1);
    for (int i = first; i < last; i++) {
      int column = indexOf(all.get(i), words);
      if (column >= 0) {
        int at = 1 + all.get(i).codePointCount(0, column);
        return new Place(
            piece.at().file(), i + 1, at, i + 1, at + words.codePointCount(0, words.length()));
      }
    }
    return piece.at();
  }

  /** Where its first line stands as a whole, from its place on; else its place. */
  private static int start(Piece piece, List<String> all) {
    int from = Math.max(0, piece.at().line() - 1);
    String head = piece.words().lines().filter(line -> !line.isBlank()).findFirst().orElse("");
    for (int i = from; i < all.size(); i++) {
      if (all.get(i).equals(head)) {
        return i;
      }
    }
    return from;
  }

  /** Of a genitive the name alone is found, since a sign stands before its s. */
  private static int indexOf(String line, String words) {
    String low = line.toLowerCase(Locale.ROOT);
    int at = low.indexOf(words.toLowerCase(Locale.ROOT));
    return at >= 0 || !words.endsWith("s")
        ? at
        : low.indexOf(words.substring(0, words.length() - 1).toLowerCase(Locale.ROOT));
  }
}

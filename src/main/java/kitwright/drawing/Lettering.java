package kitwright.drawing;

import java.util.ArrayList;
import java.util.List;
import kitwright.value.Word;

/**
 * How words are set.
 *
 * @param size height of the letters, in the drawing's units
 * @param anchor which end of the words stands at their point
 * @param weight plain or bold
 * @param shade of the letters
 * @param turn degrees clockwise about the point
 */
public record Lettering(double size, Anchor anchor, Weight weight, Shade shade, double turn) {
  /** Mean width of a sans-serif letter over its size; measured on Latin text, rounded up. */
  private static final double SET = 0.56;

  /** The same of bold letters. */
  private static final double BOLD_SET = 0.62;

  /** Which end of the words stands at their point. */
  public enum Anchor {
    START,
    MIDDLE,
    END;

    String word() {
      return Word.key(this);
    }
  }

  /** Thickness of the letters. */
  public enum Weight {
    PLAIN,
    BOLD
  }

  /** Plain black words that begin at their point. */
  public static Lettering of(double size) {
    return new Lettering(size, Anchor.START, Weight.PLAIN, Shade.BLACK, 0);
  }

  public Lettering anchored(Anchor where) {
    return new Lettering(size, where, weight, shade, turn);
  }

  public Lettering bold() {
    return new Lettering(size, anchor, Weight.BOLD, shade, turn);
  }

  public Lettering in(Shade other) {
    return new Lettering(size, anchor, weight, other, turn);
  }

  public Lettering turned(double degrees) {
    return new Lettering(size, anchor, weight, shade, degrees);
  }

  private double set() {
    return weight == Weight.BOLD ? BOLD_SET : SET;
  }

  /** About how wide words become; nobody knows which letters a viewer has. */
  public double widthOf(String words) {
    return words.codePointCount(0, words.length()) * size * set();
  }

  /** The words, cut with an ellipsis where they would be wider than {@code room}. */
  public String fitted(String words, double room) {
    if (widthOf(words) <= room) {
      return words;
    }
    int most = Math.max(1, (int) (room / (size * set())) - 1);
    int end = words.offsetByCodePoints(0, Math.min(most, words.codePointCount(0, words.length())));
    return words.substring(0, end).stripTrailing() + "…";
  }

  /** The words in no more than so many lines, broken between words; the last is cut to fit. */
  public List<String> lines(String words, double room, int most) {
    List<String> lines = new ArrayList<>();
    String rest = words;
    while (lines.size() + 1 < most && widthOf(rest) > room) {
      int fits = rest.offsetByCodePoints(0, Math.max(1, (int) (room / (size * set()))));
      int end = rest.lastIndexOf(' ', fits);
      if (end <= 0) {
        break;
      }
      lines.add(rest.substring(0, end));
      rest = rest.substring(end + 1);
    }
    lines.add(fitted(rest, room));
    return lines;
  }
}

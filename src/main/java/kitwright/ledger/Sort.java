package kitwright.ledger;

import java.util.List;
import java.util.Optional;
import kitwright.value.Misread;
import kitwright.value.Unit;

/**
 * What a key holds: how its text is read, and what pages and schemas tell of it. Small nested
 * classes rather than lambdas, which cost more at start. The sorts are few; {@link Sorts} has them.
 *
 * @param <T> what a text becomes
 */
public abstract class Sort<T> {
  /** A plain number as a part of a pattern. */
  protected static final String NUMBER = "[+-]?([0-9]+(\\.[0-9]+)?|\\.[0-9]+)";

  private final String word;
  private final String pattern;

  /**
   * @param word what a person calls it: {@code day}
   * @param pattern an ECMA 262 regular expression that every text read by it fits; empty where any
   *     text may do
   */
  protected Sort(String word, String pattern) {
    this.word = word;
    this.pattern = pattern;
  }

  /**
   * Reads a text.
   *
   * @param keys the record it stands in, for what bare numbers mean there
   * @throws Misread where the text is none of this sort
   */
  public abstract T read(String text, Keys keys) throws Misread;

  /** What a person calls it. */
  public String word() {
    return word;
  }

  /** What every text of it looks like; empty where any text may do. */
  public String pattern() {
    return pattern;
  }

  /** The words of a closed list; empty where it is none. */
  public List<String> words() {
    return List.of();
  }

  /** Whether YAML may take a text of it for a number. */
  public boolean mayLookLikeNumber() {
    return pattern.isEmpty() || bare().isPresent();
  }

  /** Whether none of it lies below nothing. */
  public boolean isNeverNegative() {
    return false;
  }

  /** Whether it is a whole number. */
  public boolean isWhole() {
    return false;
  }

  /** What a bare number is so many of, where one may stand. */
  public Optional<Unit> bare() {
    return Optional.empty();
  }
}

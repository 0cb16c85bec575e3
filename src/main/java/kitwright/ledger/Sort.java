package kitwright.ledger;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitwright.value.Misread;
import kitwright.value.Unit;

/**
 * What a key holds: how its text is read, and what pages and schemas tell of it. The sorts are few;
 * {@link Sorts} has them.
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

  /** How a text is read. */
  @FunctionalInterface
  interface Reading<T> {
    /** As {@link Sort#read} does. */
    T read(String text, Keys keys) throws Misread;
  }

  /** What else may be known of a sort. */
  enum Trait {
    NEVER_NEGATIVE,
    WHOLE,
    MAY_LOOK_LIKE_NUMBER
  }

  /** A sort of which a bare number is nothing. */
  static <T> Sort<T> of(String word, String pattern, Reading<T> reading, Trait... traits) {
    return new Plain<>(word, pattern, Optional.empty(), reading, Set.of(traits));
  }

  /** A sort of which a bare number is so many of a unit. */
  static <T> Sort<T> in(
      Unit bare, String word, String pattern, Reading<T> reading, Trait... traits) {
    return new Plain<>(word, pattern, Optional.of(bare), reading, Set.of(traits));
  }

  private static final class Plain<T> extends Sort<T> {
    private final Optional<Unit> bare;
    private final Reading<T> reading;
    private final Set<Trait> traits;

    Plain(String word, String pattern, Optional<Unit> bare, Reading<T> reading, Set<Trait> traits) {
      super(word, pattern);
      this.bare = bare;
      this.reading = reading;
      this.traits = traits;
    }

    @Override
    public T read(String text, Keys keys) throws Misread {
      return reading.read(text, keys);
    }

    @Override
    public boolean mayLookLikeNumber() {
      return super.mayLookLikeNumber() || traits.contains(Trait.MAY_LOOK_LIKE_NUMBER);
    }

    @Override
    public boolean isNeverNegative() {
      return traits.contains(Trait.NEVER_NEGATIVE);
    }

    @Override
    public boolean isWhole() {
      return traits.contains(Trait.WHOLE);
    }

    @Override
    public Optional<Unit> bare() {
      return bare;
    }
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

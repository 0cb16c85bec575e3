package kitwright.ledger;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitwright.value.Misread;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * A key of a record or of a group in it, as its record declares it. All that is known of it stands
 * here: reading, rules, the reference page, the schema and new records ask nobody else.
 *
 * @param says what it means, one sentence without a full stop
 * @param example how a value of it is written
 * @param kinds what it refers to, where it is a reference; more than one where any of them may be
 * @param inner the keys of a group
 * @param shorthand the key that a plain value in place of a group gives; empty where there is none
 * @param notBefore keys whose day is no later than this one: of its own group, else of the one
 *     around it, or behind a reference ({@code shortages.found})
 * @param band between what it plausibly lies
 * @param begins what a new record starts with
 * @param toldBy the rule that tells its faults in place of the general ones
 * @param unknown of a reference, a sentence of what follows where nothing has that name; empty
 *     where sums and dates leave it out
 */
public record Key(
    String name,
    String says,
    String example,
    Sort<?> sort,
    Form form,
    boolean needed,
    List<Kind> kinds,
    Optional<Layout> inner,
    String shorthand,
    List<String> notBefore,
    Optional<Band> band,
    Set<Trait> traits,
    Optional<String> begins,
    Optional<String> toldBy,
    Optional<String> unknown) {
  /** In which shape values stand. */
  public enum Form {
    ONE,
    /** Several; one alone may stand without brackets. */
    LIST,
    /** One, or low, likely and high. */
    RANGE,
    GROUP,
    /** Several groups; one alone may stand without brackets. */
    GROUPS,
    /** Keys of the user’s own choice, each with one value. */
    NAMED
  }

  /** What else is known of a key. */
  public enum Trait {
    /** Its day may lie before the build began. */
    EVER,
    /** The record is there only from this day on. */
    OPENS
  }

  /** Between what a quantity plausibly lies, both included. */
  public record Band(Quantity low, Quantity high) {
    /** Whether a measure of its dimension lies outside; most often a slip of the unit. */
    public boolean misses(Quantity measure) {
      return measure.convertsTo(low)
          && (measure.compareAmount(low) < 0 || measure.compareAmount(high) > 0);
    }
  }

  public Key {
    kinds = List.copyOf(kinds);
    notBefore = List.copyOf(notBefore);
    traits = Set.copyOf(traits);
  }

  /** Whether it is a day that has happened. */
  public boolean isHappened() {
    return sort == Sorts.HAPPENED;
  }

  /** Whether its record, or its group, is there only from its day on. */
  boolean isOpening() {
    return isHappened() && (needed || traits.contains(Trait.OPENS));
  }

  /** Whether it is a day or days, come or to come. */
  public boolean isDay() {
    return sort == Sorts.HAPPENED || sort == Sorts.PLANNED || sort == Sorts.DAYS;
  }

  /** Whether it is an amount of money, which is never below zero. */
  public boolean isMoney() {
    return sort == Sorts.MONEY;
  }

  /** Whether it is the path of a file of evidence. */
  public boolean isFile() {
    return sort == Sorts.FILE;
  }

  /**
   * Refuses a text that is none of its sort.
   *
   * @param reader of values that stand in no record: {@link Keys#ofNoRecord}
   * @throws Misread with what is wrong and how to mend it
   */
  public void requireReads(String text, Keys reader) throws Misread {
    sort.read(text, reader);
  }

  /**
   * What follows the name of a measure that lies outside its band: {@code is outside what it
   * plausibly is, 1 mm to 2 m}. Empty where it lies within, or is none of that dimension.
   */
  public Optional<String> implausible(Object value) {
    return value instanceof Quantity measure
        ? band.filter(one -> one.misses(measure))
            .map(one -> "is outside what it plausibly is, " + one.low() + " to " + one.high())
        : Optional.empty();
  }

  /** Whether a text is one of its sort. */
  public boolean reads(String text, Keys reader) {
    try {
      requireReads(text, reader);
      return true;
    } catch (Misread none) {
      return false;
    }
  }

  /** Whether a text says what a record holds, which is a reference where the key is one. */
  public boolean means(String text, Object value, Keys reader) {
    try {
      Object read = sort.read(text, reader);
      return value instanceof Ref ref ? ref.id().equals(read) : value.equals(read);
    } catch (Misread none) {
      return false;
    }
  }
}

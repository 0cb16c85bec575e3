package kitwright.ledger;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import kitwright.value.Word;

/**
 * What takes from the strength or stiffness of a part.
 *
 * @param on what it is for
 * @param value what it leaves, above 0 to 2
 * @param slope of a scarf: its length over the thickness
 * @param lasts how long the load lies on wood
 * @param serviceClass of wood: 1 indoors, 2 under cover, 3 in the open
 * @param side which part it is on
 * @param layer the only layer that it is on, counted from 1 at the bottom
 */
public record KnockDown(
    For on,
    Optional<BigDecimal> value,
    Optional<BigDecimal> slope,
    Optional<Lasts> lasts,
    Optional<Integer> serviceClass,
    Side side,
    Optional<Integer> layer,
    Optional<String> source,
    At at) {
  /**
   * What it is for; stiffness to metal name what they are on, a design stress is of all strengths,
   * the others are of timber.
   */
  public enum For {
    MOISTURE,
    DURATION,
    GRADE,
    TEMPERATURE,
    SCARF,
    SLOPE_OF_GRAIN,
    STIFFNESS,
    LAMINATE,
    CORE,
    METAL,
    DESIGN_STRESS;

    /** As a ledger writes it. */
    public String word() {
      return Word.key(this);
    }

    /** All of them, as a ledger writes them. */
    public static List<String> words() {
      return Arrays.stream(values()).map(For::word).toList();
    }

    public static Optional<For> of(String word) {
      return Arrays.stream(values()).filter(one -> one.word().equals(word)).findFirst();
    }
  }

  /** How long a load lies on wood, as EN 1995-1-1 sorts it. */
  public enum Lasts {
    PERMANENT,
    LONG,
    MEDIUM,
    SHORT,
    INSTANTANEOUS
  }

  /** Which part it is on. */
  public enum Side {
    DESIGNED,
    BUILT,
    BOTH
  }

  static KnockDown read(Keys k) {
    return new KnockDown(
        k.key("for", "what takes from the strength", "scarf").choice(For.class, For.GRADE),
        k.key(
                "value",
                "what it leaves, above 0 to 2; of a design-stress by ISO 12215-5 without one a"
                    + " share that is not confirmed",
                "0.85")
            .maybe(Sorts.RATIO),
        k.key("slope", "of a scarf: its length over the thickness", "12").maybeNumber(),
        k.key("lasts", "how long the load lies on wood, where no value is stated", "short")
            .maybeChoice(Lasts.class),
        k.key("service-class", "of wood: 1 indoors, 2 under cover, 3 in the open", "3")
            .maybeCount(),
        k.key("on", "which part it is on; both where not said", "built")
            .maybeChoice(Side.class)
            .orElse(Side.BOTH),
        k.key("layer", "the only layer that it is on, counted from the bottom", "1").maybeCount(),
        k.key("source", "where the value comes from; without one nothing passes", "EN 1912:2012")
            .maybeText(),
        k.at());
  }
}

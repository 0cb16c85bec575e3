package kitwright.assessment.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One measure, the part as designed beside the part as built.
 *
 * @param limit what is asked, where something is
 * @param lacking why it cannot be told, where it cannot
 * @param alike what is held against the limit with both parts judged in one way, where they are
 *     judged in two: what meets the limit in one way only cannot be told
 */
public record Row(
    Measure measure,
    Optional<Figure> designed,
    Optional<Figure> built,
    Optional<Limit> limit,
    List<String> lacking,
    OptionalDouble alike) {
  /** Both parts judged in one way. */
  public Row(
      Measure measure,
      Optional<Figure> designed,
      Optional<Figure> built,
      Optional<Limit> limit,
      List<String> lacking) {
    this(measure, designed, built, limit, lacking, OptionalDouble.empty());
  }

  /** The least or the most that is asked. */
  public record Limit(Side side, double value) {
    /** On which side of the limit it must be. */
    public enum Side {
      AT_LEAST("at least"),
      AT_MOST("at most");

      private final String words;

      Side(String words) {
        this.words = words;
      }

      public String words() {
        return words;
      }
    }
  }

  /** A ratio this little below its limit is rounding of decimals, not weakness. */
  private static final double ROUNDING = 1e-9;

  public Row {
    lacking = List.copyOf(lacking);
  }

  /** The same, and one reason more why it cannot be told. */
  public Row lacking(String more) {
    List<String> all = new ArrayList<>(lacking);
    all.add(more);
    return new Row(measure, designed, built, limit, all, alike);
  }

  /** The same with what it is with both parts judged in one way. */
  public Row judgedAlike(double other) {
    return new Row(measure, designed, built, limit, lacking, OptionalDouble.of(other));
  }

  /** Where it meets what is asked judged in one way and misses it in the other, in one sentence. */
  Optional<String> divided() {
    OptionalDouble number = compared();
    if (limit.isEmpty() || number.isEmpty() || alike.isEmpty()) {
      return Optional.empty();
    }
    boolean one = isMissed(limit.get(), number.getAsDouble());
    if (one == isMissed(limit.get(), alike.getAsDouble())) {
      return Optional.empty();
    }
    return Optional.of(
        measure.words()
            + " is "
            + Print.ratio(number.getAsDouble())
            + (measure.absolute() ? "" : " of the design value")
            + " with the solid part judged by its modulus of rupture, and "
            + Print.ratio(alike.getAsDouble())
            + " with both judged by tension and compression: whether it is "
            + limit.get().side().words()
            + " "
            + Print.number(limit.get().value())
            + " depends on the way of judging");
  }

  /** Whether something is asked and not met. */
  public boolean fails() {
    return outcome().filter(Verdict.Outcome.FAIL::equals).isPresent();
  }

  /** Built over designed. */
  public OptionalDouble ratio() {
    if (designed.isEmpty() || built.isEmpty() || !(designed.get().value() > 0)) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(built.get().value() / designed.get().value());
  }

  /** Built over designed as it is printed: never as if a limit were met that is just missed. */
  public Optional<String> printedRatio() {
    OptionalDouble ratio = ratio();
    boolean most = limit.filter(one -> one.side() == Limit.Side.AT_MOST).isPresent();
    return ratio.isEmpty()
        ? Optional.empty()
        : Optional.of(most ? Print.ratioUp(ratio.getAsDouble()) : Print.ratio(ratio.getAsDouble()));
  }

  /** The number that is held against the limit. */
  public OptionalDouble compared() {
    if (!measure.absolute()) {
      return ratio();
    }
    return built.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(built.get().value());
  }

  /** How far on the right side of the limit it is, as a share of the limit; negative if not. */
  public OptionalDouble margin() {
    OptionalDouble compared = compared();
    if (limit.isEmpty() || compared.isEmpty() || !(limit.get().value() > 0)) {
      return OptionalDouble.empty();
    }
    double share = compared.getAsDouble() / limit.get().value() - 1;
    return OptionalDouble.of(limit.get().side() == Limit.Side.AT_LEAST ? share : -share);
  }

  /** How it stands; nothing where nothing is asked. */
  public Optional<Verdict.Outcome> outcome() {
    if (limit.isEmpty()) {
      return Optional.empty();
    }
    OptionalDouble compared = compared();
    if (divided().isPresent()) {
      return Optional.of(Verdict.Outcome.CANNOT_TELL);
    }
    if (compared.isPresent() && isMissed(limit.get(), compared.getAsDouble())) {
      return Optional.of(Verdict.Outcome.FAIL);
    }
    return Optional.of(
        compared.isEmpty() || !lacking.isEmpty()
            ? Verdict.Outcome.CANNOT_TELL
            : Verdict.Outcome.PASS);
  }

  private static boolean isMissed(Limit limit, double number) {
    return limit.side() == Limit.Side.AT_LEAST
        ? number < limit.value() - ROUNDING
        : number > limit.value() + ROUNDING;
  }
}

package kitwright.choice;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import kitwright.value.ThreePoint;

/** What ways out are compared in; less is better in each. Empty where it cannot be told. */
enum Measuring {
  COST(
      "cheaper",
      way ->
          number(way.outlay().cost().map(ThreePoint::likely).map(m -> m.amount().doubleValue()))),
  HOURS("less work", way -> OptionalDouble.of(way.outlay().hours().doubleValue())),
  LAUNCH(
      "done sooner",
      way -> number(way.timing().launch().map(day -> (double) day.on().toEpochDay()))),
  ARRIVAL(
      "here sooner", way -> number(way.timing().arrives().map(day -> (double) day.toEpochDay()))),
  STRENGTH("stronger", Measuring::weakness),
  MASS("lighter", way -> way.strength().map(Strength::mass).orElse(OptionalDouble.of(1))),
  SIGNATURES(
      "less to be signed",
      way -> OptionalDouble.of(way.signing().map(s -> s.lacks().size()).orElse(0))),
  LOSERS(
      "taking less from other work",
      way -> OptionalDouble.of(way.taken().stream().mapToInt(t -> t.losers().size()).sum()));

  private final String better;
  private final Function<WayOut, OptionalDouble> of;

  Measuring(String better, Function<WayOut, OptionalDouble> of) {
    this.better = better;
    this.of = of;
  }

  /** What a way is that has less of it. */
  String better() {
    return better;
  }

  OptionalDouble of(WayOut way) {
    return of.apply(way);
  }

  private static OptionalDouble number(Optional<Double> value) {
    return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }

  /** As drawn or proved as strong, not told, too weak. */
  private static OptionalDouble weakness(WayOut way) {
    if (way.strength().isEmpty()) {
      return OptionalDouble.of(0);
    }
    return way.strength()
        .flatMap(Strength::verdict)
        .map(
            verdict ->
                switch (verdict.outcome()) {
                  case PASS -> OptionalDouble.of(0);
                  case CANNOT_TELL -> OptionalDouble.empty();
                  case FAIL -> OptionalDouble.of(1);
                })
        .orElse(OptionalDouble.empty());
  }

  /**
   * Whether the first is known to be at least as good as the second in this: of one that nobody
   * knows only what has none at all, for nothing can have less.
   */
  boolean atLeastAsGood(WayOut first, WayOut second) {
    OptionalDouble one = of(first);
    return one.isPresent() && one.getAsDouble() <= of(second).orElse(0);
  }

  /** Whether the first is known to be better than the second in this. */
  boolean isBetter(WayOut first, WayOut second) {
    OptionalDouble one = of(first);
    OptionalDouble other = of(second);
    return one.isPresent() && other.isPresent() && one.getAsDouble() < other.getAsDouble();
  }

  static boolean allAtLeastAsGood(WayOut first, WayOut second) {
    return Arrays.stream(values()).allMatch(each -> each.atLeastAsGood(first, second));
  }
}

package kitwright.shortage;

import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import kitwright.ledger.Facts;
import kitwright.ledger.Shortage;
import kitwright.ledger.Substitution;
import kitwright.network.Plan;
import kitwright.network.Planned;
import kitwright.value.Ref;
import kitwright.value.Unit;

/**
 * The own hours that chosen ways out add to the work: to the first task that lacks the thing or
 * leans on what took its place, or that the substitution holds.
 */
final class OwnWork {
  /** So many working minutes more for a task. */
  private record More(String task, long minutes) {}

  private final Map<String, More> byShortage = new HashMap<>();

  OwnWork(Facts day, Function<ShortageStanding, Stream<String>> tasks) {
    Plan plan = Plan.on(day);
    for (ShortageStanding standing : ShortageStandings.on(day).all()) {
      standing
          .chosen()
          .filter(option -> minutes(option) > 0)
          .ifPresent(
              option ->
                  Stream.concat(tasks.apply(standing), held(option, day).stream())
                      .filter(plan::isOpen)
                      .map(plan.schedule()::of)
                      .min(Comparator.comparing(Planned::earliestStart).thenComparing(Planned::id))
                      .ifPresent(
                          first ->
                              byShortage.put(
                                  standing.shortage().id(),
                                  new More(first.id(), minutes(option)))));
    }
  }

  private static Optional<String> held(Shortage.Option option, Facts day) {
    return option
        .substitution()
        .flatMap(day.ledger()::substitution)
        .flatMap(Substitution::hold)
        .map(Ref::id);
  }

  /** Hours of an option in minutes. */
  private static long minutes(Shortage.Option option) {
    return option.hours().map(hours -> hours.in(Unit.MINUTE).amount().longValue()).orElse(0L);
  }

  /** Minutes by task, without those that one shortage brings. */
  Map<String, Long> without(String shortage) {
    Map<String, Long> all = new HashMap<>();
    byShortage.forEach(
        (id, more) -> {
          if (!id.equals(shortage)) {
            all.merge(more.task(), more.minutes(), Long::sum);
          }
        });
    return all;
  }
}

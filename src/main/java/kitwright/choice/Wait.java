package kitwright.choice;

import java.time.LocalDate;
import java.util.Optional;
import kitwright.ledger.Facts;
import kitwright.ledger.Shortage;
import kitwright.shortage.ShortageStanding;
import kitwright.shortage.ShortageStandings;
import kitwright.value.Ref;

/**
 * What {@link Choice} says of waiting alone: neither money nor strength is worked out for it.
 *
 * @param timing of the first way out that waits; empty where the shortage lists none
 * @param neededBy as in {@link Choice}
 */
public record Wait(Optional<Timing> timing, Optional<LocalDate> neededBy) {
  /**
   * For a shortage.
   *
   * @return empty where the ledger has no such shortage on that day
   */
  public static Optional<Wait> of(Facts now, Ref shortage) {
    return ShortageStandings.on(now).of(shortage).map(standing -> of(now, standing));
  }

  private static Wait of(Facts now, ShortageStanding standing) {
    Waiting waiting = new Waiting(now, standing);
    Optional<Shortage.Option> option =
        standing.shortage().options().stream()
            .filter(each -> each.way() == Shortage.Way.WAIT)
            .findFirst();
    return new Wait(
        option.map(each -> waiting.timing(each, Choice.substitution(each, standing, now))),
        waiting.neededBy());
  }
}

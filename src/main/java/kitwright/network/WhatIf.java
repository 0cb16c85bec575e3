package kitwright.network;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * The same build without and with something late.
 *
 * @param without the schedule as it stands
 * @param with the schedule if it comes so
 */
public record WhatIf(Schedule without, Schedule with) {
  /**
   * A task that the delay touches.
   *
   * @param without its dates as it stands
   * @param with its dates if it comes so
   */
  public record Shift(Planned without, Planned with) {}

  /** What follows if tasks are late; several delays of one task add up. */
  public static WhatIf late(
      Network network, WorkCalendar calendar, LocalDate today, List<Lateness> late) {
    Map<String, Long> minutes =
        late.stream().collect(Collectors.toMap(Lateness::task, Lateness::minutes, (a, b) -> a + b));
    return new WhatIf(
        Schedule.of(network, calendar, today),
        Schedule.of(network.longerBy(minutes), calendar, today));
  }

  /** Calendar days by which the end moves. */
  public long daysLater() {
    return ChronoUnit.DAYS.between(without.lastDay(), with.lastDay());
  }

  /** The tasks whose earliest start or total float differs, by id. */
  public List<Shift> shifts() {
    return without.all().stream()
        .map(before -> new Shift(before, with.of(before.id())))
        .filter(
            shift ->
                !Objects.equals(shift.without().earliestStart(), shift.with().earliestStart())
                    || !Objects.equals(shift.without().total(), shift.with().total()))
        .toList();
  }
}

package kitwright.report.ahead;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import kitwright.network.Planned;
import kitwright.network.Schedule;

/**
 * What follows if something comes later than said.
 *
 * @param said as given on the command line
 * @param without the schedule as promised, or ordered today
 * @param with the schedule if it comes so
 */
public record Suppose(List<String> said, Schedule without, Schedule with) {
  public Suppose {
    said = List.copyOf(said);
  }

  /** A task that comes later, or has less float. */
  record Shift(Planned without, Planned with) {}

  /** Every task that it touches, by earliest start. */
  List<Shift> shifts() {
    return without.all().stream()
        .map(before -> new Shift(before, with.of(before.id())))
        .filter(
            shift ->
                !Objects.equals(shift.without().earliestStart(), shift.with().earliestStart())
                    || !Objects.equals(shift.without().total(), shift.with().total()))
        .sorted(Comparator.comparing(shift -> shift.with().earliestStart()))
        .toList();
  }
}

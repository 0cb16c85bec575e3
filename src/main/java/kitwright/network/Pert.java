package kitwright.network;

import java.time.LocalDate;
import kitwright.numbers.Normal;

/**
 * The classical estimate: the length of the critical chain taken as normal, with the sums of its
 * means and variances. It overlooks chains that are nearly critical, so the true chance is at most
 * about this good; {@link Simulation} counts them.
 *
 * @see "Malcolm, Roseboom, Clark and Fazar, Operations Research 7 (1959) 646-669 (from memory)"
 */
public final class Pert {
  private final WorkCalendar calendar;
  private final long today;
  private final long mean;
  private final double variance;

  Pert(WorkCalendar calendar, long today, long mean, double variance) {
    this.calendar = calendar;
    this.today = today;
    this.mean = mean;
    this.variance = variance;
  }

  /** The chance, 0 to 1, that all is ready by the closing of that day. */
  public double chanceBy(LocalDate day) {
    return chance(calendar.worked(calendar.closing(day)) - today);
  }

  private double chance(long minutes) {
    if (variance == 0) {
      return minutes >= mean ? 1 : 0;
    }
    return Normal.below((minutes - mean) / Math.sqrt(variance));
  }
}

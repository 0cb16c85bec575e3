package kitwright.network;

/**
 * Float: working time that a task can lose.
 *
 * @param minutes working minutes
 * @param minutesADay working minutes of one working day
 */
public record Slack(long minutes, int minutesADay) implements Comparable<Slack> {
  /** Working days, with fraction. */
  public double days() {
    return (double) minutes / minutesADay;
  }

  /** Working days that are there in full. */
  public long wholeDays() {
    return Math.floorDiv(minutes, minutesADay);
  }

  /** By length of time. */
  @Override
  public int compareTo(Slack other) {
    return Double.compare(days(), other.days());
  }
}

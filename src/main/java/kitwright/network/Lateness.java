package kitwright.network;

/**
 * A task supposed to be late.
 *
 * @param task its id
 * @param minutes working minutes by which it is finished later than planned
 */
public record Lateness(String task, long minutes) {
  public Lateness {
    if (minutes < 0) {
      throw new IllegalArgumentException("a delay is never negative: " + minutes);
    }
  }
}

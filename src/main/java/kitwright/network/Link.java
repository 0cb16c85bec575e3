package kitwright.network;

/**
 * Finish to start: {@code after} may begin when {@code before} is finished and cured.
 *
 * @param before id of the earlier task
 * @param after id of the later task
 * @param lag working minutes between the two, not negative
 */
public record Link(String before, String after, long lag) {
  public Link {
    if (lag < 0 || lag > Estimate.MOST) {
      throw new IllegalArgumentException("a lag is never negative: " + lag);
    }
  }
}

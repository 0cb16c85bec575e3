package kitwright.finding;

import java.util.List;

/**
 * How many findings of each weight.
 *
 * @param stop how many stop work
 * @param warn how many will cost time, money or strength
 * @param note how many are worth knowing
 */
public record Tally(int stop, int warn, int note) {
  /** Counts {@code findings}. */
  public static Tally of(List<Finding> findings) {
    return new Tally(
        count(findings, Severity.STOP),
        count(findings, Severity.WARN),
        count(findings, Severity.NOTE));
  }

  /** All of them. */
  public int all() {
    return stop + warn + note;
  }

  private static int count(List<Finding> findings, Severity severity) {
    return (int) findings.stream().filter(f -> f.severity() == severity).count();
  }
}

package kitwright.finding;

import java.util.List;
import java.util.StringJoiner;

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

  public int all() {
    return stop + warn + note;
  }

  /** In how many files they were found. */
  public static int files(List<Finding> findings) {
    return (int) findings.stream().map(finding -> finding.at().file()).distinct().count();
  }

  /** Such as {@code 5 stop, 10 warn}; empty where there are none. */
  String words() {
    var parts = new StringJoiner(", ");
    part(parts, stop, Severity.STOP);
    part(parts, warn, Severity.WARN);
    part(parts, note, Severity.NOTE);
    return parts.toString();
  }

  /** The sentence that closes a list of findings. */
  String told(int files) {
    if (all() == 0) {
      return "Nothing found.";
    }
    String findings = all() == 1 ? "1 finding" : all() + " findings";
    return findings + " in " + (files == 1 ? "1 file" : files + " files") + ": " + words() + ".";
  }

  private static void part(StringJoiner parts, int count, Severity severity) {
    if (count > 0) {
      parts.add(count + " " + severity.word());
    }
  }

  private static int count(List<Finding> findings, Severity severity) {
    return (int) findings.stream().filter(f -> f.severity() == severity).count();
  }
}

package kitwright.history;

import java.time.LocalDate;
import java.time.ZonedDateTime;

/**
 * A commit that touched the ledger.
 *
 * @param id in full
 * @param by its author's name
 * @param at when it was made, by its committer's clock
 * @param subject the first line of its message
 */
public record Commit(String id, String by, ZonedDateTime at, String subject) {
  /** How git is asked for one: parts kept apart by a sign that no name holds. */
  static final String FORMAT = "%H%x1f%aN%x1f%cI%x1f%s";

  private static final int DIGITS = 10;

  static Commit read(String line) {
    String[] parts = line.split("\u001f", -1);
    return new Commit(parts[0], parts[1], ZonedDateTime.parse(parts[2]), parts[3]);
  }

  /** So many digits of the id as people give. */
  public String shortId() {
    return id.substring(0, DIGITS);
  }

  /** The day on which it was made, where it was made. */
  public LocalDate day() {
    return at.toLocalDate();
  }
}

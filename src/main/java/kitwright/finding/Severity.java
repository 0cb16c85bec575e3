package kitwright.finding;

import java.util.Locale;

/** How much a finding weighs, gravest first. */
public enum Severity {
  /** Work on the matter must stop until it is mended. */
  STOP,
  /** It will cost time, money or strength unless somebody acts. */
  WARN,
  /** Worth knowing. */
  NOTE;

  /** The word a person reads: {@code stop}, {@code warn} or {@code note}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The word as a line begins with it. */
  String title() {
    String word = word();
    return Character.toUpperCase(word.charAt(0)) + word.substring(1);
  }

  /** Whether this weighs at least as much as {@code other}. */
  public boolean atLeast(Severity other) {
    return compareTo(other) <= 0;
  }
}

package kitwright.weather;

import java.time.LocalDate;
import java.util.Locale;

/**
 * Why a day does not fit.
 *
 * @param day the day
 * @param kind what is wrong with it
 * @param found what the forecast says, in the unit of the kind; not a number where it is silent
 * @param wanted what the task asks
 */
public record Obstacle(LocalDate day, Kind kind, double found, double wanted) {
  /** What can be wrong with a day. */
  public enum Kind {
    RAIN("%.1f mm rain"),
    COLD("down to %.0f °C, wanted %.0f"),
    DEW("%.1f K above the dew point, wanted %.1f"),
    HUMIDITY_UNKNOWN("no humidity in the forecast"),
    NO_FORECAST("no forecast");

    private final String words;

    Kind(String words) {
      this.words = words;
    }
  }

  /** In a builder's words, without the day. */
  public String words() {
    return String.format(Locale.ROOT, kind.words, found, wanted);
  }
}

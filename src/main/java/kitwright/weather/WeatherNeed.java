package kitwright.weather;

import java.util.OptionalDouble;

/**
 * What a task asks of the weather.
 *
 * @param dry days in a row without rain, counted on the calendar from the day it begins; 0 if rain
 *     does not matter
 * @param above lowest temperature in °C at any hour of work and cure; empty if it does not matter
 * @param dewMargin how far the surface must lie above the dew point while the work goes on, in K
 */
public record WeatherNeed(int dry, OptionalDouble above, OptionalDouble dewMargin) {
  /**
   * The usual margin above the dew point, 3 K.
   *
   * @see "MIL-HDBK-1110 section 9.6.6 (5 °F and rising); ISO 8502-4:2017 is the guidance standard"
   */
  public static final double USUAL_DEW_MARGIN = 3;

  public WeatherNeed {
    if (dry < 0) {
      throw new IllegalArgumentException("so many dry days do not stand: " + dry);
    }
  }
}

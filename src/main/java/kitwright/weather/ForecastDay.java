package kitwright.weather;

import java.time.LocalDate;
import java.util.OptionalDouble;

/**
 * One day of the forecast.
 *
 * @param day the day
 * @param rain mm in the day, not negative
 * @param low lowest temperature in °C
 * @param high highest temperature in °C
 * @param dewPoint in °C, given or worked out; empty where the forecast is silent
 */
public record ForecastDay(
    LocalDate day, double rain, double low, double high, OptionalDouble dewPoint) {
  public ForecastDay {
    if (!(rain >= 0)) {
      throw new IllegalArgumentException("rain is never negative: " + rain);
    }
    if (!(low <= high)) {
      throw new IllegalArgumentException("low " + low + " °C lies above high " + high + " °C");
    }
  }

  /** A day of which the humidity in % is known, taken at the middle between low and high. */
  public static ForecastDay humid(
      LocalDate day, double rain, double low, double high, double humidity) {
    return new ForecastDay(
        day, rain, low, high, OptionalDouble.of(DewPoint.of((low + high) / 2, humidity)));
  }

  /**
   * How far a surface in the shade lies above the dew point, in K; its temperature is taken as the
   * middle between low and high (common practice, no source: measure before you begin).
   */
  public OptionalDouble dewMargin() {
    return dewPoint.isPresent()
        ? OptionalDouble.of((low + high) / 2 - dewPoint.getAsDouble())
        : OptionalDouble.empty();
  }
}

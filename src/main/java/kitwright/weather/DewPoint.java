package kitwright.weather;

/**
 * The temperature at which air begins to leave water on a surface, by the Magnus form
 *
 * <p>γ = ln(RH/100) + aT/(b + T), Td = bγ/(a - γ), a = 17.625, b = 243.04 °C.
 *
 * <p>Within 0.35 K from -40 to 60 °C by its authors.
 *
 * @see "Alduchov and Eskridge, Improved Magnus form approximation of saturation vapor pressure,
 *     Journal of Applied Meteorology 35 (1996) 601-609"
 */
public final class DewPoint {
  private static final double A = 17.625;
  private static final double B = 243.04;
  private static final double COLDEST = -45;
  private static final double HOTTEST = 60;

  private DewPoint() {}

  /**
   * Dew point in °C.
   *
   * @param air temperature of the air in °C, -45 to 60
   * @param humidity relative humidity in %, more than 0 and at most 100
   */
  public static double of(double air, double humidity) {
    if (!(air >= COLDEST && air <= HOTTEST)) {
      throw new IllegalArgumentException("air between -45 and 60 °C, not " + air);
    }
    if (!(humidity > 0 && humidity <= 100)) {
      throw new IllegalArgumentException("humidity above 0 and up to 100 %, not " + humidity);
    }
    double gamma = StrictMath.log(humidity / 100) + A * air / (B + air);
    return B * gamma / (A - gamma);
  }
}

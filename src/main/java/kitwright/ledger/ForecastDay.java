package kitwright.ledger;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import kitwright.value.Decimal;
import kitwright.value.Dimension;
import kitwright.value.Misread;
import kitwright.value.Quantity;
import kitwright.value.Unit;

/**
 * The weather expected on a day.
 *
 * @param rain fallen in the day, in mm
 * @param low lowest air temperature, °C
 * @param high highest air temperature, °C
 * @param humidity relative, 0 to 1
 * @param dewPoint °C
 */
public record ForecastDay(
    LocalDate day,
    Quantity rain,
    BigDecimal low,
    BigDecimal high,
    Optional<BigDecimal> humidity,
    Optional<BigDecimal> dewPoint,
    Optional<String> source,
    At at)
    implements Entry {
  private static final Sort<BigDecimal> CELSIUS =
      Sort.in(
          Unit.CELSIUS,
          "degrees Celsius",
          "^\\s*" + Sort.NUMBER + "\\s*(°?C)?\\s*$",
          ForecastDay::celsius);

  private static BigDecimal celsius(String text, Keys keys) throws Misread {
    if (text.strip().matches(".*[0-9]\\s*°?\\s*[FK]")) {
      throw new Misread(
          "“" + text.strip() + "” is not in degrees Celsius",
          "convert it, and write degrees Celsius, such as 12 or -3");
    }
    BigDecimal degrees = Decimal.parse(text.strip().replaceFirst("\\s*(°?C)$", ""));
    if (degrees.abs().compareTo(BigDecimal.valueOf(70)) > 0) {
      throw new Misread("a temperature of " + text, "write degrees Celsius, such as 12 or -3");
    }
    return degrees;
  }

  static ForecastDay read(Keys k) {
    return new ForecastDay(
        k.key("day", "the day that is foretold", "2026-03-03").begins("TODAY").planned(),
        k.key("rain", "rain fallen in the day", "2 mm")
            .between("0 mm", "500 mm")
            .measure(Unit.MM, Dimension.LENGTH),
        k.key("low", "the lowest air temperature, in degrees Celsius", "1")
            .need(CELSIUS, BigDecimal.ZERO),
        k.key("high", "the highest air temperature, in degrees Celsius", "7")
            .need(CELSIUS, BigDecimal.ZERO),
        k.key("humidity", "relative humidity of the air", "85 %").maybeShare(),
        k.key("dew-point", "the dew point, in degrees Celsius", "3").maybe(CELSIUS),
        k.key("source", "who foretold it", "the weather service").maybeText(),
        k.at());
  }

  @Override
  public String id() {
    return day.toString();
  }

  @Override
  public Kind kind() {
    return Kind.FORECAST;
  }
}

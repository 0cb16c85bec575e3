package kitwright.ledger;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import kitwright.value.Decimal;
import kitwright.value.Dimension;
import kitwright.value.Misread;
import kitwright.value.Quantity;
import kitwright.value.Unit;
import kitwright.yaml.Fields;

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
  private static BigDecimal celsius(String text) throws Misread {
    BigDecimal degrees = Decimal.parse(text.strip().replaceFirst("\\s*(°?C)$", ""));
    if (degrees.abs().compareTo(BigDecimal.valueOf(70)) > 0) {
      throw new Misread("a temperature of " + text, "write degrees Celsius, such as 12 or -3");
    }
    return degrees;
  }

  static ForecastDay read(Fields f) {
    return new ForecastDay(
        f.day("day"),
        f.measure("rain", Unit.MM, Dimension.LENGTH),
        f.need("low", ForecastDay::celsius, BigDecimal.ZERO),
        f.need("high", ForecastDay::celsius, BigDecimal.ZERO),
        f.maybeShare("humidity"),
        f.maybe("dew-point", ForecastDay::celsius),
        f.maybeText("source"),
        At.of(f));
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

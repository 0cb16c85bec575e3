package kitwright.weather;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.value.Unit;

/** The ledger's forecast in plain numbers; fires where a row contradicts itself and is left out. */
public final class Outlook implements Rule {
  private static final Facts.Fact<Forecast> FACT = new Work();

  private static final int COLDEST = -45;
  private static final int HOTTEST = 60;

  @Override
  public String name() {
    return "forecast-contradictory";
  }

  /** The forecast; rows that contradict themselves are left out. */
  public static Forecast on(Facts day) {
    return FACT.on(day);
  }

  private static final class Work extends Facts.Fact<Forecast> {
    @Override
    protected Forecast work(Facts day) {
      return Forecast.of(
          day.ledger().forecast().stream()
              .filter(row -> fault(row).isEmpty())
              .map(Outlook::plain)
              .toList());
    }
  }

  @Override
  public void examine(Facts day, Findings out) {
    day.ledger()
        .forecast()
        .forEach(row -> fault(row).ifPresent(what -> out.add(finding(row, what))));
  }

  private Finding finding(kitwright.ledger.ForecastDay row, String what) {
    return new Finding(
        name(),
        Severity.WARN,
        row.at().of("day"),
        "The forecast for " + row.day() + " says " + what + ".",
        "The row is left out, and no window is found across that day.",
        "Look the forecast up and correct the number.",
        List.of(row.named()));
  }

  private static Optional<String> fault(kitwright.ledger.ForecastDay row) {
    if (row.low().compareTo(row.high()) > 0) {
      return Optional.of(
          "a lowest temperature of " + row.low() + " °C and a highest of " + row.high());
    }
    if (row.low().intValue() < COLDEST || row.high().intValue() >= HOTTEST) {
      return Optional.of("temperatures that no work is done in");
    }
    if (row.humidity().filter(share -> share.signum() <= 0 || isMoreThanAll(share)).isPresent()) {
      return Optional.of("a humidity that is not between 0 and 100 %");
    }
    if (row.dewPoint().filter(dew -> dew.compareTo(row.high()) > 0).isPresent()) {
      return Optional.of("a dew point above the highest temperature");
    }
    return Optional.empty();
  }

  private static boolean isMoreThanAll(BigDecimal share) {
    return share.compareTo(BigDecimal.ONE) > 0;
  }

  private static ForecastDay plain(kitwright.ledger.ForecastDay row) {
    double rain = row.rain().in(Unit.MM).amount().doubleValue();
    double low = row.low().doubleValue();
    double high = row.high().doubleValue();
    if (row.dewPoint().isEmpty() && row.humidity().isPresent()) {
      double percent = row.humidity().get().movePointRight(2).doubleValue();
      return ForecastDay.humid(row.day(), rain, low, high, percent);
    }
    OptionalDouble dew =
        row.dewPoint().isPresent()
            ? OptionalDouble.of(row.dewPoint().get().doubleValue())
            : OptionalDouble.empty();
    return new ForecastDay(row.day(), rain, low, high, dew);
  }
}

package kitwright.weather;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.value.Days;
import kitwright.value.Unit;

/**
 * The forecast that can be leaned on; fires where a row contradicts itself. A day of which one row
 * says what cannot be, or of which two rows say different things, is as if nobody had foretold it.
 */
public final class Outlook implements Rule {
  private static final Facts.Fact<List<kitwright.ledger.ForecastDay>> ROWS = Outlook::rowsOf;
  private static final Facts.Fact<Forecast> FACT =
      day -> Forecast.of(rows(day).stream().map(Outlook::plain).toList());

  private static final BigDecimal COLDEST = BigDecimal.valueOf(-45);
  private static final BigDecimal HOTTEST = BigDecimal.valueOf(60);

  @Override
  public String name() {
    return "forecast-contradictory";
  }

  /** The forecast in plain numbers. */
  public static Forecast on(Facts day) {
    return FACT.on(day);
  }

  /** The rows that count, one a day, in the ledger's order. */
  public static List<kitwright.ledger.ForecastDay> rows(Facts day) {
    return ROWS.on(day);
  }

  /** The row that counts for a day; empty where nothing is foretold that can be leaned on. */
  public static Optional<kitwright.ledger.ForecastDay> row(LocalDate of, Facts day) {
    return rows(day).stream().filter(row -> row.day().equals(of)).findFirst();
  }

  private static List<kitwright.ledger.ForecastDay> rowsOf(Facts day) {
    Map<LocalDate, kitwright.ledger.ForecastDay> rows = new LinkedHashMap<>();
    Set<LocalDate> doubtful = new HashSet<>();
    for (kitwright.ledger.ForecastDay row : day.ledger().forecast()) {
      kitwright.ledger.ForecastDay first = rows.putIfAbsent(row.day(), row);
      if (fault(row).isPresent() || (first != null && !sayTheSame(first, row))) {
        doubtful.add(row.day());
      }
    }
    rows.keySet().removeAll(doubtful);
    return List.copyOf(rows.values());
  }

  /** Whether two rows foretell the same weather, whoever foretold it. */
  static boolean sayTheSame(kitwright.ledger.ForecastDay one, kitwright.ledger.ForecastDay other) {
    return one.rain().compareAmount(other.rain()) == 0
        && one.low().compareTo(other.low()) == 0
        && one.high().compareTo(other.high()) == 0
        && same(one.humidity(), other.humidity())
        && same(one.dewPoint(), other.dewPoint());
  }

  private static boolean same(Optional<BigDecimal> one, Optional<BigDecimal> other) {
    return one.map(BigDecimal::stripTrailingZeros)
        .equals(other.map(BigDecimal::stripTrailingZeros));
  }

  @Override
  public void examine(Facts day, Findings out) {
    day.ledger()
        .forecast()
        .forEach(row -> fault(row).ifPresent(what -> out.add(finding(row, what))));
  }

  private Finding finding(kitwright.ledger.ForecastDay row, String what) {
    return warn(
        row.at().of("day"),
        "The forecast for " + Days.named(row.day()) + " says " + what + ".",
        "The day counts as not foretold, and no window is found across it.",
        "Look the forecast up and correct the number.",
        List.of(row.named()));
  }

  private static Optional<String> fault(kitwright.ledger.ForecastDay row) {
    if (row.low().compareTo(row.high()) > 0) {
      return Optional.of(
          "a lowest temperature of " + row.low() + " °C and a highest of " + row.high() + " °C");
    }
    if (row.low().compareTo(COLDEST) < 0 || row.high().compareTo(HOTTEST) >= 0) {
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

package kitwright.ledger;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.Optional;
import kitwright.value.Money;
import kitwright.yaml.Fields;

/**
 * An exchange rate: one {@code from} is {@code rate} of {@code to}.
 *
 * @param source who published it
 */
public record Rate(
    LocalDate on, Currency from, Currency to, BigDecimal rate, Optional<String> source, At at)
    implements Entry {

  static Rate read(Fields f) {
    return new Rate(
        f.day("on"),
        f.need("from", Money::currency, f.currency()),
        f.need("to", Money::currency, f.currency()),
        f.number("rate"),
        f.maybeText("source"),
        At.of(f));
  }

  @Override
  public String id() {
    return from + "-" + to + "-" + on;
  }

  @Override
  public Kind kind() {
    return Kind.RATES;
  }
}

package kitwright.ledger;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.Optional;

/**
 * An exchange rate: one {@code from} is {@code rate} of {@code to}.
 *
 * @param source who published it
 */
public record Rate(
    LocalDate on, Currency from, Currency to, BigDecimal rate, Optional<String> source, At at)
    implements Entry {

  static Rate read(Keys k) {
    return new Rate(
        k.key("on", "the day of the rate", "2026-02-02").begins("TODAY").ever().happened(),
        k.key("from", "the currency one unit of which is changed", "NZD")
            .need(Sorts.CURRENCY, k.currency()),
        k.key("to", "the currency it is changed into", "EUR").need(Sorts.CURRENCY, k.currency()),
        k.key("rate", "what one unit of the first was worth in the second", "0.54").number(),
        k.key(
                "source",
                "who published it; best what the bank really gave you",
                "the bank’s statement")
            .maybeText(),
        k.at());
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

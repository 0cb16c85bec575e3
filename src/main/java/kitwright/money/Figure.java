package kitwright.money;

import java.math.BigDecimal;
import java.util.Optional;
import kitwright.value.Money;

/**
 * A figure of the earned-value method, for a builder who never heard of it.
 *
 * @param name in plain words
 * @param abbreviation the usual abbreviation, such as {@code CPI}
 * @param value an amount, or a number, or why there is none
 * @param sum the amount, where it is one
 * @param index the number, where it is one
 * @param says one sentence that says what it means for this build
 */
public record Figure(
    String name,
    String abbreviation,
    String value,
    Optional<Money> sum,
    Optional<BigDecimal> index,
    String says) {
  /** The value as a person reads it, with a true minus. */
  public String shown() {
    return value.replaceFirst("^-", "−");
  }
}

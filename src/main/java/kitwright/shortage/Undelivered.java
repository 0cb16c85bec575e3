package kitwright.shortage;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.ledger.Facts;
import kitwright.ledger.Spend;
import kitwright.value.Quantity;

/**
 * Something ordered, or paid before it comes, of which nothing shows that it came.
 *
 * @param spend the order, or the payment that stands for it or for its part
 * @param rest how much of it, where the rest has its own payment, has come or went back
 * @param expected the day for which it is said
 */
public record Undelivered(Spend spend, Optional<Quantity> rest, Optional<LocalDate> expected) {
  /** All of it by the end of the day, in the ledger's order. */
  public static Stream<Undelivered> on(Facts day) {
    return new Purchases(day.ledger(), day.day()).undelivered();
  }
}

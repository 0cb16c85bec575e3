package kitwright.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Price and quantity variances of two published exercises. Their printed values are whole amounts
 * and are met to the cent.
 *
 * <p>1: Warren, Reeve and Duchac, Accounting, exercise 23-5 (the book from memory, its figures at
 * second hand): 450 units bought at 6.50 where 430 at 6.90 were planned: price −180, quantity +138,
 * together −42.
 *
 * <p>2: at second hand, without its name: “(21,200 − 20,000) × $8.00 = $9,600”. The purchase is
 * entered at the standard price, so that the price variance is none.
 */
class WhyPublishedTest {
  @ParameterizedTest
  @CsvSource({
    "430, 6.90, 450, 2925.00, -180.00, 138.00, -42.00",
    "20000, 8.00, 21200, 169600.00, 0.00, 9600.00, 9600.00"
  })
  void theyAreMetAndAddUpToTheWhole(
      String planned,
      String standard,
      String bought,
      String paid,
      String price,
      String quantity,
      String whole) {
    Ledger ledger =
        Sample.ledger(
            """
            budget: [{line: m, title: Material, amount: %s, remaining: 0}]
            kit: [{id: unit, what: unit, qty: %s, price: %s EUR}]
            spending:
              - {id: a, on: 2026-02-02, line: m, what: units, amount: %s, state: paid, item: unit, qty: %s}
            """
                .formatted(
                    new BigDecimal(planned).multiply(new BigDecimal(standard)),
                    planned,
                    standard,
                    paid,
                    bought));
    Account account = Account.on(Facts.of(ledger, Sample.TODAY));
    assertThat(account.whole().over()).hasToString(whole + " EUR");
    assertThat(amount(ledger, account, Cause.PRICE)).isEqualTo(price + " EUR");
    assertThat(amount(ledger, account, Cause.QUANTITY)).isEqualTo(quantity + " EUR");
    assertThat(amount(ledger, account, Cause.REST)).isEqualTo("0.00 EUR");
  }

  private static String amount(Ledger ledger, Account account, Cause cause) {
    return Why.of(ledger, account).stream()
        .filter(part -> part.cause() == cause)
        .map(part -> part.amount().toString())
        .findFirst()
        .orElse("0.00 EUR");
  }
}

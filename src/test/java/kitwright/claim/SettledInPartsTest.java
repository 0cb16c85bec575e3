package kitwright.claim;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.ledger.Facts;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** When a line of a claim is at its end. Four bolts are short. */
class SettledInPartsTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "''; false",
        "'{on: 2026-01-26, how: replaced}'; true",
        "'{on: 2026-01-26, how: replaced, qty: 3}'; false",
        "'{on: 2026-01-26, how: replaced, qty: 3}, {on: 2026-01-27, how: refused, qty: 1}'; true",
        "'{on: 2026-01-26, how: replaced, qty: 3}, {on: 2026-01-27, how: refused}'; true",
        // Nobody knows how many bolts a kilogram is.
        "'{on: 2026-01-26, how: replaced, qty: 1 kg}'; false",
        "'{on: 2026-01-26, how: replaced, qty: 1 kg}, {on: 2026-01-27, how: refused, qty: 4}'; true"
      })
  void itIsSettledOnceAllOfItHasAnEnd(String ends, boolean settled) {
    var ledger =
        Sample.ledger(
            """
            kit: [{id: bolt, what: bolt, qty: 10, price: 30 EUR}]
            shortages: [{id: b, item: bolt, qty: 4, found: 2026-01-06, cause: not-packed}]
            claims: [{id: c, against: kit-maker, sent: 2026-01-25, remedy: refund, shortages: [{shortage: b, settled: [%s]}]}]
            """
                .formatted(ends));
    assertThat(Asking.of(ledger.claims().get(0), Facts.of(ledger, Sample.TODAY)).get(0).isSettled())
        .isEqualTo(settled);
  }
}

package kitwright.shortage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.ledger.Facts;
import org.junit.jupiter.api.Test;

/** What was bought and is not here. Sample's today is Monday, 2 March 2026. */
class UndeliveredTest {
  private static final String ORDER =
      "  - {id: o, what: boards, line: timber, state: ordered, on: 2026-02-01, amount: 400 EUR,"
          + " qty: 8, expected: 2026-03-20}\n";

  private static List<String> undelivered(String spending) {
    return Undelivered.on(Facts.of(Sample.ledger("spending:\n" + spending), Sample.TODAY))
        .map(
            each ->
                each.spend().id()
                    + each.rest().map(rest -> " " + rest.amount()).orElse("")
                    + each.expected().map(day -> " " + day).orElse(""))
        .toList();
  }

  private static String paid(String id, String more) {
    return "  - {id: %s, what: boards, line: timber, state: paid, on: 2026-02-10, amount: 150 EUR, %s}\n"
        .formatted(id, more);
  }

  @Test
  void ofAnOrderThatCameInPartTheRestIsStillToCome() {
    assertThat(undelivered(ORDER + paid("p", "pays: o, qty: 3, came: 2026-02-10")))
        .containsExactly("o 5 2026-03-20");
    assertThat(undelivered(ORDER + paid("p", "pays: o, qty: 3, expected: 2026-03-09")))
        .containsExactly("p 3 2026-03-09", "o 5 2026-03-20");
    assertThat(
            undelivered(
                ORDER
                    + paid("p", "pays: o, qty: 3, came: 2026-02-10")
                    + paid("q", "pays: o, qty: 5, came: 2026-02-20")))
        .isEmpty();
  }

  @Test
  void aPaymentThatNamesNoPartStandsForAllOfItsOrder() {
    assertThat(undelivered(ORDER)).containsExactly("o 2026-03-20");
    assertThat(undelivered(ORDER + paid("p", "pays: o"))).containsExactly("p 2026-03-20");
    assertThat(undelivered(ORDER.replace("qty: 8, ", "") + paid("p", "pays: o")))
        .containsExactly("p 2026-03-20");
  }

  @Test
  void whatWentBackForItsMoneyIsWaitedForNoMore() {
    String back =
        "  - {id: r, what: back, line: timber, state: refunded, on: 2026-02-20, amount: %s,"
            + " refunds: p%s}\n";
    String paid = paid("p", "qty: 8, expected: 2026-03-20");
    assertThat(undelivered(paid + back.formatted("150 EUR", ""))).isEmpty();
    assertThat(undelivered(paid + back.formatted("50 EUR", ", qty: 2")))
        .containsExactly("p 6 2026-03-20");
  }

  @Test
  void whatWasPaidAtTheCounterOrGivenUpIsNotWaitedFor() {
    assertThat(undelivered(paid("p", "qty: 8"))).isEmpty();
    assertThat(undelivered(ORDER.replace("qty: 8", "qty: 8, withdrawn: 2026-02-20"))).isEmpty();
  }
}

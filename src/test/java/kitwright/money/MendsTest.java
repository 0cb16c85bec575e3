package kitwright.money;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.finding.Finding;
import org.junit.jupiter.api.Test;

/** What a mend asks for ends what was found. */
class MendsTest {
  private static final String ORDER =
      """
      budget: [{line: spars, title: Spars, amount: 300}]
      spending:
        - {id: o, on: 2026-02-01, line: spars, what: staves, amount: 20, state: ordered}
        - {id: p, on: 2026-02-02, line: spars, what: staves, amount: 20, state: paid, pays: o}
      """;

  private static final String AGAIN =
      "  - {id: q, on: 2026-02-09, line: spars, what: staves, amount: 20, state: paid, pays:"
          + " o%s}\n";

  private static final String BACK =
      "  - {id: r, on: 2026-02-12, line: spars, what: back, amount: %s, state: refunded, refunds:"
          + " %s}\n";

  @Test
  void aPaymentBeyondItsOrderIsExplainedByItsCause() {
    PaidBeyondOrder rule = new PaidBeyondOrder();
    assertThat(Sample.findings(rule, ORDER + AGAIN.formatted(""))).hasSize(1);
    assertThat(Sample.findings(rule, ORDER + AGAIN.formatted(", cause: price"))).isEmpty();
  }

  @Test
  void aPaymentBeyondItsOrderEndsWithWhatCameBack() {
    PaidBeyondOrder rule = new PaidBeyondOrder();
    String twice = ORDER + AGAIN.formatted("");
    assertThat(Sample.findings(rule, twice + BACK.formatted("20", "q"))).isEmpty();
    assertThat(Sample.findings(rule, twice + BACK.formatted("20", "o"))).isEmpty();
    assertThat(Sample.findings(rule, twice + BACK.formatted("19", "q"))).hasSize(1);
    assertThat(
            Sample.findings(
                rule,
                twice
                    + BACK.formatted("20", "x")
                    + AGAIN.formatted("").replace("q,", "x,").replace(", pays: o", "")))
        .hasSize(1);
  }

  @Test
  void aKeyWithoutEffectIsMendedWhereItIsWrong() {
    SpendContradictory rule = new SpendContradictory();
    assertThat(
            Sample.findings(
                rule, ORDER + AGAIN.formatted(", in-full: yes").replace(", pays: o", "")))
        .extracting(Finding::what, Finding::mend)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(
                "The spend q says that nothing more is owed, and names no order.",
                "Name the order under “pays”, or take “in-full” out."));
    assertThat(Sample.findings(rule, ORDER.replace("state: paid", "state: ordered")))
        .extracting(Finding::what, Finding::mend)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(
                "Only a payment pays an order; the spend p is in state “ordered”.",
                "Correct “state”, or take “pays” out."));
  }
}

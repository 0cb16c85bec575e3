package kitwright.shortage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.ledger.Rule;
import org.junit.jupiter.api.Test;

/** A note that says more than came. Today is Monday, 2 March 2026. */
class PackedNotCountedTest {
  private static final Rule RULE = new PackedNotCounted();
  private static final String TWO_CRATES =
      """
      kit: [{id: cleat, what: cleat, qty: 10}]
      deliveries:
        - {id: d1, received: 2026-02-03, from: kit-maker, counted: [{item: cleat, qty: 8}]}
        - {id: d2, received: 2026-02-24, from: kit-maker, packed: [{item: cleat, qty: 2}], counted: [%s]}
      shortages: [{id: short, item: cleat, qty: 2, found: 2026-02-03, cause: not-packed}]
      """;
  private static final String ONE_CAME = TWO_CRATES.formatted("{item: cleat, qty: 1}");

  private static List<Finding> told(String yaml) {
    return Sample.findings(RULE, yaml);
  }

  private static String claim(String more) {
    return "claims: [{id: c, against: kit-maker, shortages: [short], sent: 2026-02-04, remedy:"
        + " replacement"
        + more
        + "}]\n";
  }

  @Test
  void itIsToldHoweverTheClaimEnded() {
    for (String end :
        List.of(
            "",
            ", settled: {on: 2026-02-24, how: replaced}",
            ", settled: {on: 2026-02-24, how: withdrawn}")) {
      assertThat(told(ONE_CAME + claim(end)))
          .as(end)
          .extracting(Finding::what)
          .containsExactly("The note of delivery d2 says 2 × cleat, 1 came.");
    }
  }

  @Test
  void theMendOfAnEndedClaimIsANewOneAndSettlesIt() {
    String ended = ONE_CAME + claim(", settled: {on: 2026-02-24, how: replaced}");
    String mend = told(ended).get(0).mend();
    String record = mend.substring(mend.indexOf('{'), mend.lastIndexOf('}') + 1);
    assertThat(record).contains("qty: 1 each");
    String mended = ended.replace("claims: [", "claims: [" + record + ", ");
    assertThat(told(mended)).isEmpty();
    assertThat(Sample.findings(new kitwright.claim.ClaimAsksTwice(), mended)).isEmpty();
  }

  @Test
  void theMendOfALiveClaimIsToWriteOnceMore() {
    String live = ONE_CAME + claim("");
    String mend = told(live).get(0).mend();
    String event = mend.substring(mend.indexOf('{'), mend.lastIndexOf('}') + 1);
    assertThat(told(ONE_CAME + claim(", events: [" + event + "]"))).isEmpty();
  }

  @Test
  void whatIsRecordedSinceOrHereOtherwiseIsNotToldAgain() {
    String recorded =
        ONE_CAME
            .replace("qty: 2, found: 2026-02-03", "qty: 1, found: 2026-02-03")
            .replace(
                "shortages: [",
                "shortages: [{id: later, item: cleat, qty: 1, found: 2026-02-24, cause:"
                    + " not-packed}, ");
    assertThat(told(recorded)).isEmpty();
    String bought =
        ONE_CAME
            + "spending: [{id: s, on: 2026-02-26, line: l, what: cleat, amount: 9, state: paid,"
            + " replaces: short, qty: 1}]\n";
    assertThat(told(bought)).isEmpty();
    assertThat(told(TWO_CRATES.formatted("{item: cleat, qty: 2}"))).isEmpty();
  }

  @Test
  void whatIsStillInItsBoxIsNotToldAsShort() {
    String yaml =
        """
        kit: [{id: cleat, what: cleat, qty: 2}, {id: hoop, what: hoop, qty: 3}]
        deliveries:
          - {id: d1, received: 2026-02-03, from: kit-maker, packed: [{item: cleat, qty: 2}, {item: hoop, qty: 3}], counted: [{item: cleat, qty: 2}]}
        """;
    assertThat(told(yaml)).isEmpty();
  }
}

package kitwright.report.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import kitwright.Sample;
import kitwright.claim.ClaimStandings;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;

/** What shows that goods went back is named among the evidence of their claim. */
class SentBackToldTest {
  private static final String YAML =
      """
      build: {name: T, currency: EUR, started: 2026-01-05}
      parties: [{id: maker, name: Redshank, role: supplier}, {id: me, name: Nora, role: builder}]
      kit: [{id: plank, what: plank, qty: 4, price: 9 EUR}]
      deliveries:
        - id: d
          received: 2026-01-22
          from: maker
          counted: [{item: plank, qty: 4, damaged: 1}]
          sent-back: [{on: 2026-01-28, item: plank, qty: 1, by: carrier, evidence: [slip.jpg]}]
      shortages: [{id: s, item: plank, qty: 1, found: 2026-01-24, cause: damaged}]
      claims: [{id: c, against: maker, shortages: [s], remedy: replacement, sent: 2026-02-01}]
      """;

  @Test
  void theLetterNamesTheFileThatShowsWhatWentBack() {
    Ledger ledger = Sample.ledger(YAML);
    Facts now = Facts.of(ledger, Sample.TODAY);
    var claim = ClaimStandings.on(now).all().get(0);
    assertThat(ClaimFile.of(claim, now).pieces())
        .extracting(piece -> piece.file())
        .contains("slip.jpg");
  }

  /** What shows that an order was paid is the receipt of its payment. */
  @Test
  void theLetterNamesTheReceiptsOfAnOrderAndOfItsPayments() {
    String bought =
        YAML.replace("sent: 2026-02-01", "sent: 2026-02-01, costs: [%s]")
            + """
            budget: [{line: a, title: A, amount: 100}]
            spending:
              - {id: o, on: 2026-01-25, line: a, what: plank, amount: 20, state: ordered, replaces: s, receipt: order.pdf}
              - {id: p, on: 2026-01-26, line: a, what: half, amount: 10, state: paid, pays: o, receipt: half.pdf}
              - {id: q, on: 2026-01-27, line: a, what: rest, amount: 10, state: paid, pays: o, receipt: rest.pdf}
              - {id: late, on: 2026-02-09, line: a, what: tip, amount: 1, state: paid, pays: o, receipt: late.pdf}
            """;
    assertThat(files(bought.formatted("o")))
        .contains("order.pdf", "half.pdf", "rest.pdf")
        .doesNotContain("late.pdf");
    assertThat(files(bought.formatted("p")))
        .contains("half.pdf")
        .doesNotContain("order.pdf", "rest.pdf");
  }

  private static List<String> files(String yaml) {
    Facts sent = Facts.of(Sample.ledger(yaml), LocalDate.of(2026, 2, 1));
    return ClaimFile.of(ClaimStandings.on(sent).all().get(0), sent).pieces().stream()
        .map(piece -> piece.file())
        .toList();
  }
}

package kitwright.report.claim;

import static org.assertj.core.api.Assertions.assertThat;

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
    assertThat(ClaimFile.of(claim, ledger).pieces())
        .extracting(piece -> piece.file())
        .contains("slip.jpg");
  }
}

package kitwright.report.budget;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Locale;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.money.Account;
import kitwright.money.CostRange;
import org.junit.jupiter.api.Test;

/** The drawing says the same as the table beside it. */
class BudgetPictureTest {
  /** On the third day the words do not fit left of today, and would run over the axis. */
  @Test
  void theNamesOfAYoungBuildStandInsideTheDrawing() {
    Ledger ledger =
        Sample.ledger(
            """
            build: {name: Sample, currency: EUR, started: 2026-02-28, launch: 2026-09-26}
            budget: [{line: a, title: A, amount: 1000}]
            spending:
              - {id: p, on: 2026-02-28, line: a, what: wood, amount: 300, state: paid}
              - {id: o, on: 2026-03-01, line: a, what: glue, amount: 55, state: ordered}
            """);
    Facts now = Facts.of(ledger, LocalDate.of(2026, 3, 2));
    String svg = BudgetPicture.of(now, CostRange.of(ledger, Account.on(now))).text();
    assertThat(svg.lines().filter(line -> line.contains("with ordered")))
        .singleElement()
        .asString()
        .contains("text-anchor=\"start\"");
  }

  @Test
  void theCurvesEndWhereTheAccountStands() {
    Ledger ledger =
        Sample.ledger(
            """
            budget: [{line: a, title: A, amount: 1000, remaining: [50, 100, 200]}]
            spending:
              - {id: p, on: 2026-02-01, line: a, what: wood, amount: 300, state: paid}
              - {id: r, on: 2026-02-10, line: a, what: wood back, amount: 40, state: refunded, refunds: p}
              - {id: o, on: 2026-02-20, line: a, what: glue, amount: 55, state: ordered}
            """);
    Facts now = Facts.of(ledger, LocalDate.of(2026, 3, 2));
    String svg = BudgetPicture.of(now, CostRange.of(ledger, Account.on(now))).text();
    assertThat(svg)
        .contains(
            String.format(
                Locale.ROOT, "Paid so far %.0f EUR, with what is ordered %.0f", 260.0, 315.0))
        .contains("budget 1000");
  }
}

package kitwright.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;

class OverTimeTest {
  private static List<String> over(String yaml) {
    Ledger ledger = Sample.ledger(yaml);
    return OverTime.of(ledger, Account.on(Facts.of(ledger, Sample.TODAY))).stream()
        .map(each -> each.day() + " " + each.paid().amount() + " " + each.ordered().amount())
        .toList();
  }

  @Test
  void anOrderPaidSinceStillShowsOnTheDaysOnWhichItWasOpen() {
    assertThat(
            over(
                """
                budget: [{line: spars, title: Spars, amount: 1000}]
                spending:
                  - {id: o, on: 2026-02-01, line: spars, what: spruce, amount: 300, state: ordered}
                  - {id: p, on: 2026-02-10, line: spars, what: deposit, amount: 90, state: paid, pays: o}
                  - {id: q, on: 2026-02-20, line: spars, what: rest, amount: 210, state: paid, pays: o}
                  - {id: r, on: 2026-02-25, line: spars, what: one split, amount: 40, state: refunded, refunds: q}
                  - {id: later, on: 2026-03-25, line: spars, what: varnish, amount: 40, state: paid}
                """))
        .containsExactly(
            "2026-01-05 0.00 0.00",
            "2026-02-01 0.00 300.00",
            "2026-02-10 90.00 210.00",
            "2026-02-20 300.00 0.00",
            "2026-02-25 260.00 0.00",
            "2026-03-02 260.00 0.00");
  }

  @Test
  void manyDaysOfChangeAreToldByTheEndsOfTheirMonths() {
    StringBuilder yaml =
        new StringBuilder(
            """
            build: {name: Sample, currency: EUR, started: 2025-01-05}
            budget: [{line: spars, title: Spars, amount: 1000}]
            spending:
            """);
    for (int day = 0; day < 140; day++) {
      yaml.append("  - {id: p")
          .append(day)
          .append(", on: ")
          .append(java.time.LocalDate.of(2025, 1, 5).plusDays(day * 3L))
          .append(", line: spars, what: nails, amount: 1, state: paid}\n");
    }
    List<String> told = over(yaml.toString());
    assertThat(told).hasSize(15).endsWith("2026-03-02 140.00 0.00");
    assertThat(told.get(0)).isEqualTo("2025-01-31 9.00 0.00");
  }
}

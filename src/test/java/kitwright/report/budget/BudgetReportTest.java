package kitwright.report.budget;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import kitwright.ledger.Facts;
import kitwright.report.Told;
import org.junit.jupiter.api.Test;

class BudgetReportTest {
  private static final String SPARS =
      """
      budget:
        - {line: spars, title: Spars, amount: 100, remaining: [10, 20, 30]}
        - {line: tools, title: Tools, amount: 50, remaining: [0, 0, 0]}
      kit: [{id: stave, what: stave, qty: 4, price: 3}]
      deliveries: [{id: d, received: 2026-02-01, from: kit-maker, counted: [{item: stave, qty: 3}]}]
      shortages: [{id: s, item: stave, qty: 1, found: 2026-02-02, cause: not-packed}]
      claims: [{id: c, against: kit-maker, shortages: [s], sent: 2026-02-03, remedy: refund, costs: [glue]}]
      spending:
        - {id: glue, on: 2026-02-10, line: spars, what: glue, amount: 25, state: paid, because: s}
        - {id: wood, on: 2026-02-11, line: spars, what: wood, amount: 80, state: ordered}
        - {id: saw, on: 2026-02-12, line: tools, what: saw, amount: 12345.60, state: paid}
      """;

  @Test
  void addsUpLineByLine() {
    assertThat(Told.tables(Told.markdown(BudgetReport::sheets, SPARS)).get(0))
        .containsExactly(
            List.of("Line", "Budget", "Paid", "Ordered", "Forecast", "Over"),
            List.of("Spars", "100.00", "25.00", "80.00", "125.00", "+25.00"),
            List.of("Tools", "50.00", "12 345.60", "0.00", "12 345.60", "+12 295.60"),
            List.of("All", "150.00", "12 370.60", "80.00", "12 470.60", "+12 320.60"));
  }

  @Test
  void saysWhyALineIsOverAndWhatAClaimMayBringBack() {
    assertThat(Told.tables(Told.markdown(BudgetReport::sheets, SPARS)).get(2))
        .containsExactly(
            List.of("Cause", "Adds", "May come back", "By"),
            List.of("missing: stave", "+25.00", "25.00", "c"),
            List.of("Over", "+25.00", "25.00", ""));
  }

  @Test
  void explainsEveryOverrunOfTheDemonstrationToTheCent() {
    String markdown =
        Told.markdown(BudgetReport.sheets(Facts.of(Told.demonstration(), Told.SUNDAY)).get(0));
    List<List<List<String>>> causes =
        Told.tables(markdown).stream().filter(t -> t.get(0).get(0).equals("Cause")).toList();
    assertThat(causes).hasSize(2);
    for (List<List<String>> table : causes) {
      int last = table.size() - 1;
      BigDecimal sum =
          table.subList(1, last).stream()
              .map(row -> number(row.get(1)))
              .reduce(BigDecimal.ZERO, BigDecimal::add);
      assertThat(sum).isEqualByComparingTo(number(table.get(last).get(1)));
    }
  }

  private static BigDecimal number(String cell) {
    return new BigDecimal(cell.replace("−", "-").replace(" ", ""));
  }
}

package kitwright.report.stores;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.report.Told;
import org.junit.jupiter.api.Test;

class ToolsReportTest {
  private static final String YAML =
      """
      tasks: [{id: saw-it, what: saw, takes: 1 d}, {id: sawn, what: sawn, takes: 1 d, finished: 2026-02-12}]
      borrowed:
        - {id: saw, tool: saw, from: pell, on: 2026-02-23, due: 2026-02-28, condition: good, hire-rate: 4, needed-for: [saw-it, sawn]}
        - {id: plane, tool: plane, from: pell, on: 2026-02-01, returned: 2026-02-10, condition: dull, back: sharp, hire-rate: 3 EUR/d}
      """;

  @Test
  void putsTheLateOneFirstWithWhatStillNeedsIt() {
    assertThat(Told.tables(Told.markdown(ToolsReport::sheets, YAML)).get(0).get(1))
        .containsExactly("saw", "Pell", "2026-02-28", "late by 2", "good", "saw-it");
  }

  @Test
  void addsUpWhatHiringWouldHaveCost() {
    assertThat(Told.tables(Told.markdown(ToolsReport::sheets, YAML)).get(2))
        .containsExactly(
            List.of("Tool", "Days", "Hire would be", "Saved, EUR"),
            // six days until it was due; a tool that is late saves nothing more
            List.of("saw", "8", "4 EUR", "24.00"),
            List.of("plane", "10", "3 EUR/d", "30.00"),
            List.of("All", "", "", "54.00"));
  }
}

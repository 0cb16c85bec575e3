package kitwright.daybook;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import kitwright.Sample;
import kitwright.finding.Findings;
import kitwright.ledger.Ledger;

/** A small ledger with some days of log, for the tests here. */
final class LoggedWeek {
  /** The Sunday that ends the week of most days. */
  static final LocalDate SUNDAY = LocalDate.of(2026, 3, 1);

  private LoggedWeek() {}

  static Ledger ledger(String yaml, String... days) {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("build.yaml", "build: {name: Sample, currency: EUR, started: 2026-01-05}\n");
    files.put(
        "parties.yaml",
        """
        parties:
          - {id: nora, name: Nora, role: builder}
          - {id: pell, name: Pell, role: lender}
        """);
    files.put("sample.yaml", yaml);
    for (String day : days) {
      files.put("log/" + day.substring(day.indexOf("day: ") + 5).substring(0, 10) + ".md", day);
    }
    Findings faults = new Findings();
    Ledger ledger = Sample.read(files, faults).orElseThrow();
    assertThat(faults.inOrder()).isEmpty();
    return ledger;
  }

  static WeekLog log(String yaml, String... days) {
    return WeekLog.of(Week.of(SUNDAY), ledger(yaml, days));
  }
}

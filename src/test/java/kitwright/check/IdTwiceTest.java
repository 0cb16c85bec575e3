package kitwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.finding.Finding;
import org.junit.jupiter.api.Test;

/** A mend is right when it is followed literally: nobody gives a day another id. */
class IdTwiceTest {
  @Test
  void twoLogsOfADayAreNotGivenIds() {
    String log = "---\nday: 2026-02-20\n---\n---\nday: 2026-02-20\n---\n";
    assertThat(Sample.findings(new IdTwice(), log))
        .extracting(Finding::mend)
        .containsExactly(
            "Correct the day of one of them, write both into one file, or delete one if it was"
                + " recorded twice.");
  }

  @Test
  void twoRowsOfADayOfTheForecastHaveARuleOfTheirOwn() {
    String row = "{day: 2026-03-03, rain: 0 mm, low: 12, high: 18}";
    assertThat(Sample.findings(new IdTwice(), "forecast: [" + row + ", " + row + "]\n")).isEmpty();
  }

  @Test
  void everyOtherRecordIs() {
    String task = "{id: a, what: A, takes: 1 d}";
    assertThat(Sample.findings(new IdTwice(), "tasks: [" + task + ", " + task + "]\n"))
        .extracting(Finding::mend)
        .containsExactly("Give one of them another id, or delete it if it was recorded twice.");
  }
}

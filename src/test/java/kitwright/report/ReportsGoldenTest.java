package kitwright.report;

import java.util.HashSet;
import java.util.Set;
import kitwright.Golden;
import kitwright.claim.ClaimStanding;
import kitwright.claim.ClaimStandings;
import kitwright.daybook.Week;
import kitwright.ledger.Facts;
import kitwright.ledger.LogDay.Audience;
import kitwright.report.claim.ClaimLetter;
import kitwright.report.week.WeekReport;
import kitwright.report.words.Sheet;
import org.junit.jupiter.api.Test;

/** Every document on the demonstration, on Sunday 29 March 2026. */
class ReportsGoldenTest {
  private static final Facts NOW = Facts.of(Told.demonstration(), Told.SUNDAY);

  @Test
  void everyDocumentReadsAsItDid() {
    Set<String> names = new HashSet<>();
    Reports.all().forEach(report -> report.sheets(NOW).forEach(sheet -> check(sheet, names)));
    for (ClaimStanding claim : ClaimStandings.on(NOW).all()) {
      check(ClaimLetter.of(claim, NOW), names);
    }
    for (Audience audience : Audience.values()) {
      check(WeekReport.of(NOW.ledger(), Week.ending(Told.SUNDAY), audience), names);
    }
    Golden.checkFolder("report", names);
  }

  private static void check(Sheet sheet, Set<String> names) {
    String name = "report/" + sheet.file();
    Golden.check(name, Told.markdown(sheet));
    names.add(name);
  }
}

package kitwright.report;

import java.util.List;
import java.util.Optional;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Fault;
import kitwright.report.ahead.AheadReport;
import kitwright.report.ahead.OpenReport;
import kitwright.report.budget.BudgetReport;
import kitwright.report.claim.ClaimsReport;
import kitwright.report.claim.ShortagesReport;
import kitwright.report.stores.CountSheetReport;
import kitwright.report.stores.ToolsReport;
import kitwright.report.strength.SheetsReport;
import kitwright.report.strength.SubstitutionsReport;
import kitwright.report.words.Report;
import kitwright.report.words.Sheet;

/** Every report there is, in the order in which a builder asks for them. */
public final class Reports {
  private static final String BROKEN = "report-broken";

  private static final List<Report> ALL =
      List.of(
          new BudgetReport(),
          new ShortagesReport(),
          new ClaimsReport(),
          new SubstitutionsReport(),
          new SheetsReport(),
          new ToolsReport(),
          new CountSheetReport(),
          new OpenReport(),
          new AheadReport());

  private Reports() {}

  public static List<Report> all() {
    return ALL;
  }

  /** The documents of a report; one that breaks inside has none and becomes a finding. */
  public static List<Sheet> sheets(Report report, Facts now, Findings out) {
    try {
      return report.sheets(now);
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError thrown) {
      out.add(
          Fault.of(thrown)
              .finding(
                  BROKEN,
                  "The report “" + report.name() + "” breaks inside",
                  "It is not written; the others are.",
                  now.ledger().build()));
      return List.of();
    }
  }

  public static Optional<Report> named(String name) {
    return ALL.stream().filter(report -> report.name().equals(name)).findFirst();
  }
}

package kitwright.report;

import java.util.List;
import java.util.Optional;
import kitwright.assessment.Assessments;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Fault;
import kitwright.openmatter.OpenMatters;
import kitwright.report.ahead.AheadReport;
import kitwright.report.ahead.OpenTold;
import kitwright.report.budget.BudgetReport;
import kitwright.report.claim.ClaimsReport;
import kitwright.report.claim.ShortagesReport;
import kitwright.report.stores.CountSheetReport;
import kitwright.report.stores.ToolsReport;
import kitwright.report.strength.CalculationSheet;
import kitwright.report.strength.SubstitutionsReport;
import kitwright.report.words.Report;
import kitwright.report.words.Sheet;

/** Every report there is, in the order in which a builder asks for them. */
public final class Reports {
  private static final String BROKEN = "report-broken";

  private static final List<Report> ALL =
      List.of(
          new Report(
              "budget",
              "budget, paid, ordered, remaining, forecast and the causes of overruns",
              BudgetReport::sheets),
          new Report(
              "shortages",
              "open shortages by state and age, with claim, substitution and value",
              ShortagesReport::sheets),
          new Report(
              "claims",
              "claims with their ages, answers awaited and what they ask",
              ClaimsReport::sheets),
          new Report(
              "substitutions",
              "substitutions: assessment, sign-off, fingerprint, hold point",
              SubstitutionsReport::sheets),
          new Report(
              "sheets",
              "calculation sheets: every assessment, line by line",
              now ->
                  Assessments.on(now).all().stream()
                      .map(result -> CalculationSheet.of(result, now.ledger()))
                      .toList()),
          new Report(
              "tools",
              "borrowed tools: due, lender, condition, what borrowing saved against hire",
              ToolsReport::sheets),
          new Report(
              "count-sheet",
              "a sheet per delivery, to print and tick at the crate",
              CountSheetReport::sheets),
          new Report(
              "open",
              "every open matter by the day it stops work, whom it waits for and what to do next",
              now -> List.of(OpenTold.sheet(now.ledger(), now.day(), OpenMatters.on(now).all()))),
          new Report(
              "ahead",
              "the work ahead with its float, material not there, last days to order, weather",
              AheadReport::sheets));

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

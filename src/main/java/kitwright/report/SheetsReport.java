package kitwright.report;

import java.util.List;

/** A calculation sheet for every assessment. */
final class SheetsReport implements Report {
  @Override
  public String name() {
    return "sheets";
  }

  @Override
  public String does() {
    return "calculation sheets: every assessment, line by line";
  }

  @Override
  public List<Sheet> sheets(Situation now) {
    return now.assessments().all().stream()
        .map(result -> CalculationSheet.of(result, now.ledger()))
        .toList();
  }
}

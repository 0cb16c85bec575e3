package kitwright.report;

import java.util.List;
import kitwright.assessment.Assessments;
import kitwright.ledger.Facts;

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
  public List<Sheet> sheets(Facts now) {
    return Assessments.on(now).all().stream()
        .map(result -> CalculationSheet.of(result, now.ledger()))
        .toList();
  }
}

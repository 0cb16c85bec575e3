package kitwright.report.strength;

import java.util.List;
import kitwright.assessment.Assessments;
import kitwright.ledger.Facts;
import kitwright.report.words.Report;
import kitwright.report.words.Sheet;

/** A calculation sheet for every assessment. */
public final class SheetsReport implements Report {
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

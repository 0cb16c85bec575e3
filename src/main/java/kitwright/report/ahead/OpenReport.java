package kitwright.report.ahead;

import java.util.List;
import kitwright.ledger.Facts;
import kitwright.openmatter.OpenMatters;
import kitwright.report.words.Report;
import kitwright.report.words.Sheet;

/** Every open matter, by the day on which it starts to stop work. */
public final class OpenReport implements Report {
  @Override
  public String name() {
    return "open";
  }

  @Override
  public String does() {
    return "every open matter by the day it stops work, whom it waits for and what to do next";
  }

  @Override
  public List<Sheet> sheets(Facts now) {
    return List.of(OpenTold.sheet(now.ledger(), now.day(), OpenMatters.on(now).all()));
  }
}

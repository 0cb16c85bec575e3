package kitwright.report;

import java.util.List;
import java.util.Optional;

/** Every report there is, in the order in which a builder asks for them. */
public final class Reports {
  private static final List<Report> ALL =
      List.of(
          new BudgetReport(),
          new ShortagesReport(),
          new ClaimsReport(),
          new SubstitutionsReport(),
          new SheetsReport(),
          new ToolsReport(),
          new CountSheetReport(),
          new AheadReport());

  private Reports() {}

  /** All of them. */
  public static List<Report> all() {
    return ALL;
  }

  /** The one of that name. */
  public static Optional<Report> named(String name) {
    return ALL.stream().filter(report -> report.name().equals(name)).findFirst();
  }
}

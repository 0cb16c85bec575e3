package kitwright.cli;

import java.util.ArrayList;
import java.util.List;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.report.Report;
import kitwright.report.Reports;
import kitwright.report.Sheet;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Writes reports. */
@picocli.CommandLine.Command(
    name = "report",
    description = {
      "Writes reports in Markdown into “reports” in the ledger’s folder: all, or those named.",
      "They are laid out by templates; a file of the same name in “templates” in the ledger’s"
          + " folder takes a template’s place."
    })
final class ReportCommand implements Command {
  @Mixin private LedgerOptions options = new LedgerOptions();

  @Mixin private OutOptions out = new OutOptions();

  @Parameters(
      paramLabel = "NAME",
      arity = "0..*",
      description = "Which reports; “list” tells what there is.")
  private List<String> names = List.of();

  @Override
  public int run(Session session) {
    if (names.equals(List.of("list"))) {
      Listing list = Listing.of("report", "tells");
      Reports.all().forEach(report -> list.row(report.name(), report.does()));
      session.out().print(list.text());
      return CLEAN;
    }
    List<Report> wanted =
        names.isEmpty() ? Reports.all() : names.stream().map(ReportCommand::named).toList();
    Opened opened = Opened.of(options, session);
    Ledger ledger = opened.ledger(session);
    Facts now = Facts.of(ledger, opened.today());
    List<Sheet> sheets = new ArrayList<>();
    Findings broken = new Findings();
    wanted.forEach(report -> sheets.addAll(Reports.sheets(report, now, broken)));
    return out.tell(sheets, broken.inOrder(), "reports", opened, session);
  }

  private static Report named(String name) {
    List<String> known = Reports.all().stream().map(Report::name).toList();
    return Reports.named(name)
        .orElseThrow(
            () ->
                Refusal.unknown(
                    "There is no report “" + name + "”.",
                    name,
                    known,
                    "The reports are: " + String.join(", ", known) + "."));
  }
}

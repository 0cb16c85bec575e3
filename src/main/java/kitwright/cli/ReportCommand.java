package kitwright.cli;

import java.util.ArrayList;
import java.util.List;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.document.Table;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.report.Reports;
import kitwright.report.words.Report;
import kitwright.report.words.Sheet;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Writes reports. */
@picocli.CommandLine.Command(
    name = "report",
    description = {
      "Writes reports in Markdown into “reports” in the ledger’s folder: all, or those named.",
      "They are laid out by templates; a file of the same name in “templates” in the ledger’s"
          + " folder takes a template’s place.",
      "For example: kitwright report list"
    })
final class ReportCommand implements Command {
  @Mixin private LedgerOptions options = new LedgerOptions();

  @Mixin private Telling telling = new Telling();

  @Mixin private OutOptions out = new OutOptions();

  @Parameters(
      paramLabel = "NAME",
      arity = "0..*",
      description = "Which reports; “list” tells what there is.")
  private List<String> names = List.of();

  @Override
  public int run(Session session) {
    if (names.equals(List.of("list"))) {
      return telling.tell(list(), session);
    }
    List<Report> wanted =
        names.isEmpty() ? Reports.all() : names.stream().map(ReportCommand::named).toList();
    Opened opened = Opened.of(options, session);
    Ledger ledger = opened.ledger(session);
    Facts now = Facts.of(ledger, opened.today());
    List<Sheet> sheets = new ArrayList<>();
    Findings broken = new Findings();
    wanted.forEach(report -> sheets.addAll(Reports.sheets(report, now, broken)));
    if (telling.isChosen() && !out.isNamed()) {
      int told = broken.inOrder().isEmpty() ? CLEAN : opened.refuse(broken.inOrder(), session);
      for (Sheet sheet : sheets) {
        told = Math.max(told, telling.tell(sheet, opened, session));
      }
      return told;
    }
    return out.tell(sheets, broken.inOrder(), telling.forFiles(), "reports", opened, session);
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

  private static Sheet list() {
    return new Sheet(
        "reports.md",
        "reports",
        Slots.none()
            .table(
                "reports",
                new Table(
                    "The reports",
                    Column.columns(
                        Column.head("Name"), Column.left("What it tells").named("tells")),
                    Reports.all().stream()
                        .map(each -> Row.row(Cell.text(each.name()), Cell.text(each.does())))
                        .toList())));
  }
}

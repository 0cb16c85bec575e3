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
import kitwright.value.Nearest;

/** Writes reports. */
final class ReportCommand implements Command {
  private final LedgerOptions options = new LedgerOptions();
  private final Telling telling = new Telling();
  private final OutOptions out = new OutOptions();
  private List<String> names = List.of();

  @Override
  public void declare(Declaring to) {
    to.says(
        "Writes reports in Markdown into “reports” in the ledger’s folder: all, or those named.",
        "They are laid out by templates; a file of the same name in “templates” in the ledger’s"
            + " folder takes a template’s place.",
        "For example: kitwright report list");
    options.declare(to);
    telling.declare(to);
    out.declare(to);
    to.places(
        0, "0..*", "NAME", given -> names = given, "Which reports; “list” tells what there is.");
  }

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
                    Nearest.ofWords(name, known),
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

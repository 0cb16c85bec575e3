package kitwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kitwright.assessment.Assessments;
import kitwright.assessment.Chances;
import kitwright.assessment.Print;
import kitwright.assessment.Remedies;
import kitwright.assessment.Result;
import kitwright.assessment.Row;
import kitwright.assessment.Verdict;
import kitwright.ledger.Assessment;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.report.AssessmentJson;
import kitwright.report.CalculationSheet;
import kitwright.report.Sheet;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Works assessments out and tells how they stand. */
@picocli.CommandLine.Command(
    name = "assess",
    description = {
      "Works out the engineering checks of the ledger: as designed beside as built.",
      "A screening calculation: it replaces no designer and no licensed engineer.",
      "Ends with 0 where every one passes, 1 where one fails or cannot be told."
    })
final class AssessCommand implements Command {
  @Mixin private LedgerOptions options = new LedgerOptions();

  @Parameters(
      paramLabel = "ASSESSMENT",
      arity = "0..*",
      description = "Which; all where none is named.")
  private List<String> ids = List.of();

  @Option(names = "--format", paramLabel = "HOW", description = "text, or json with every input.")
  private Format format = Format.TEXT;

  @Option(
      names = "--sheet",
      description = "Write the calculation sheets with their drawings; into reports, or --out DIR.")
  private boolean sheet;

  @Option(
      names = "--remedy",
      description = "Search the menu of each for what makes it meet everything that is asked.")
  private boolean remedy;

  @Option(
      names = "--least",
      paramLabel = "WHAT",
      description = "What a remedy shall be least in: mass or cost; mass where not said.")
  private Remedies.Least least = Remedies.Least.MASS;

  @Option(
      names = "--scatter",
      description = "How likely the built part is below the designed one, by 100000 samples.")
  private boolean scatter;

  @Mixin private OutOptions out = new OutOptions();

  /** How results are told. */
  enum Format {
    TEXT,
    JSON
  }

  @Override
  public int run(Session session) {
    Opened opened = Opened.of(options, session);
    Ledger ledger = opened.ledger(session);
    List<Result> results = chosen(Facts.of(ledger, opened.today()));
    if (sheet) {
      List<Sheet> sheets =
          results.stream().map(result -> CalculationSheet.of(result, ledger)).toList();
      int written = out.tell(sheets, "reports", opened, session);
      return written == CLEAN ? how(results) : written;
    }
    if (format == Format.JSON) {
      session.out().print(AssessmentJson.of(results));
      return how(results);
    }
    for (Result result : results) {
      tell(session, result);
      if (remedy) {
        remedy(session, result.assessment(), ledger);
      }
      if (scatter) {
        scatter(session, result.assessment(), ledger);
      }
      session.out().println();
    }
    return how(results);
  }

  private static int how(List<Result> results) {
    return results.stream().allMatch(result -> result.verdict().passes()) ? CLEAN : FOUND;
  }

  private void remedy(Session session, Assessment assessment, Ledger ledger) {
    Remedies.Answer answer = Remedies.of(assessment, ledger, least);
    if (answer.none().isPresent()) {
      session.out().println("  remedy: " + answer.none().get());
      return;
    }
    session
        .out()
        .println(
            answer.additions().isEmpty()
                ? "  remedy: none is needed"
                : "  remedy: "
                    + String.join(", ", answer.additions())
                    + " (least "
                    + least.name().toLowerCase(Locale.ROOT)
                    + "; "
                    + answer.tried()
                    + " combinations worked out)");
    if (!answer.additions().isEmpty()) {
      answer.result().ifPresent(result -> session.out().print(rows(result, true)));
    }
  }

  private static void scatter(Session session, Assessment assessment, Ledger ledger) {
    Chances.Told told = Chances.of(assessment, ledger);
    for (Chances.Line line : told.lines()) {
      session
          .out()
          .println(
              "  chance: "
                  + line.what()
                  + ": "
                  + line.chance().words()
                  + " ("
                  + line.chance().samples()
                  + " samples; what follows ± is one standard error)");
    }
    told.notes().forEach(note -> session.out().println("  - " + note));
  }

  private List<Result> chosen(Facts day) {
    Ledger ledger = day.ledger();
    Assessments all = Assessments.on(day);
    if (ids.isEmpty()) {
      return all.all();
    }
    List<Result> chosen = new ArrayList<>();
    for (String id : ids) {
      chosen.add(
          all.of(id)
              .orElseThrow(
                  () ->
                      Refusal.unknown(
                          "There is no assessment “" + id + "”.",
                          id,
                          ledger.ids(Kind.ASSESSMENTS),
                          "“kitwright assess” alone lists them.")));
    }
    return chosen;
  }

  private void tell(Session session, Result result) {
    session.out().println(word(result.verdict().outcome()) + "  " + result.assessment().id());
    session.out().print(rows(result, ids.isEmpty()));
    result.verdict().reasons().forEach(why -> session.out().println("  - " + why));
    result.cautions().forEach(caution -> session.out().println("  caution: " + caution));
  }

  private static String rows(Result result, boolean askedOnly) {
    Listing rows = Listing.of("  ", ">designed", ">built", ">ratio", "asked", ">margin", "set by");
    for (Row row : askedOnly ? result.asked() : result.rows()) {
      rows.row(cells(row));
    }
    return rows.isEmpty() ? "" : rows.text();
  }

  private static String word(Verdict.Outcome outcome) {
    return outcome.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static String[] cells(Row row) {
    String unit = row.measure().unit();
    return new String[] {
      "  " + row.measure().words() + (unit.isEmpty() ? "" : ", " + unit),
      row.designed().map(figure -> Print.number(figure.value())).orElse("–"),
      row.built().map(figure -> Print.number(figure.value())).orElse("–"),
      row.printedRatio().orElse("–"),
      row.limit().map(limit -> limit.side().words() + " " + Print.number(limit.value())).orElse(""),
      row.margin().isPresent() ? Print.margin(row.margin().getAsDouble()) : "",
      row.built().flatMap(kitwright.assessment.Figure::governing).orElse("")
    };
  }
}

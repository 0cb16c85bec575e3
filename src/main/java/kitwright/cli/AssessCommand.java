package kitwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.assessment.Assessments;
import kitwright.assessment.Chances;
import kitwright.assessment.Remedies;
import kitwright.assessment.Result;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.report.strength.AssessTold;
import kitwright.report.strength.CalculationSheet;
import kitwright.report.strength.DesignerSheet;
import kitwright.report.words.Sheet;

/** Works assessments out and tells how they stand. */
final class AssessCommand implements Command {
  private final LedgerOptions options = new LedgerOptions();
  private List<String> ids = List.of();
  private final Telling telling = new Telling();
  private boolean sheet;
  private boolean page;
  private boolean remedy;
  private Remedies.Least least = Remedies.Least.MASS;
  private boolean scatter;
  private final OutOptions out = new OutOptions();

  @Override
  public void declare(Declaring to) {
    to.says(
        "Works out the engineering checks of the ledger: as designed beside as built.",
        "A screening calculation: it replaces no designer and no licensed engineer.",
        "Ends with 0 where every one passes, 1 where one fails or cannot be told.",
        "For example: kitwright assess rudder-spine --sheet");
    options.declare(to);
    to.places(0, "0..*", "ASSESSMENT", given -> ids = given, "Which; all where none is named.");
    telling.declare(to);
    to.flag(
        "--sheet",
        () -> sheet = true,
        "Write the calculation sheets with their drawings; into reports, or --out DIR.");
    to.flag(
        "--page",
        () -> page = true,
        "Write one page of each for its designer: verdict, what governs, what to confirm.");
    to.flag(
        "--remedy",
        () -> remedy = true,
        "Search the menu of each for what makes it meet everything that is asked.");
    to.option(
        "--least",
        "WHAT",
        Remedies.Least.class,
        given -> least = given,
        "What to keep least in a remedy: mass or cost; mass where not said.");
    to.flag(
        "--scatter",
        () -> scatter = true,
        "How likely the built part is below the designed one, by 100 000 samples.");
    out.declare(to);
  }

  @Override
  public int run(Session session) {
    Opened opened = Opened.of(options, session);
    Facts now = Facts.of(opened.ledger(session), opened.today());
    Ledger ledger = now.ledger();
    List<Result> results = chosen(now);
    List<String> unread = ids.isEmpty() ? unread(ledger) : List.of();
    if (sheet || page) {
      List<Sheet> sheets =
          results.stream()
              .map(
                  result ->
                      page ? DesignerSheet.of(result, ledger) : CalculationSheet.of(result, ledger))
              .toList();
      int written = out.tell(sheets, telling.forFiles(), "reports", opened, session);
      return written == CLEAN ? how(results, unread, session) : written;
    }
    int told =
        telling.tell(
            AssessTold.sheet(ledger, asked(results, ledger), !ids.isEmpty(), least),
            opened,
            session);
    return told == CLEAN ? how(results, unread, session) : told;
  }

  private List<AssessTold.Asked> asked(List<Result> results, Ledger ledger) {
    return results.stream()
        .map(
            result ->
                new AssessTold.Asked(
                    result,
                    remedy
                        ? Optional.of(Remedies.of(result.assessment(), ledger, least))
                        : Optional.empty(),
                    scatter
                        ? Optional.of(Chances.of(result.assessment(), ledger))
                        : Optional.empty()))
        .toList();
  }

  /** Assessments that cannot be read, or may stand in what cannot: of those nothing is told. */
  private static List<String> unread(Ledger ledger) {
    return ledger.unread().stream()
        .filter(each -> each.mayBe(Kind.ASSESSMENTS))
        .map(
            each ->
                each.named()
                    + " cannot be read"
                    + (each.kind().isPresent() ? "" : " and may hold assessments")
                    + ": nothing is told of it here.")
        .toList();
  }

  private static int how(List<Result> results, List<String> unread, Session session) {
    unread.forEach(session::note);
    return unread.isEmpty() && results.stream().allMatch(result -> result.verdict().passes())
        ? CLEAN
        : FOUND;
  }

  private List<Result> chosen(Facts now) {
    Assessments all = Assessments.on(now);
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
                          now.ledger(),
                          Kind.ASSESSMENTS,
                          id,
                          "“kitwright assess” alone lists them.")));
    }
    return chosen;
  }
}

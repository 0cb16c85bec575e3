package kitwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kitwright.assessment.Assessments;
import kitwright.assessment.Print;
import kitwright.assessment.Result;
import kitwright.assessment.Row;
import kitwright.assessment.Verdict;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.value.Nearest;
import picocli.CommandLine.Mixin;
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

  @Override
  public int run(Session session) {
    Ledger ledger = Opened.of(options, session).ledger(session);
    List<Result> results = chosen(ledger);
    for (Result result : results) {
      tell(session, result);
    }
    return results.stream().allMatch(result -> result.verdict().passes()) ? CLEAN : FOUND;
  }

  private List<Result> chosen(Ledger ledger) {
    Assessments all = Assessments.of(ledger);
    if (ids.isEmpty()) {
      return all.all();
    }
    List<Result> chosen = new ArrayList<>();
    for (String id : ids) {
      chosen.add(
          all.of(id)
              .orElseThrow(
                  () ->
                      new Refusal(
                          "There is no assessment “" + id + "”.",
                          Nearest.to(id, ledger.ids(Kind.ASSESSMENTS))
                              .map(near -> "Did you mean “" + near + "”?")
                              .orElse("“kitwright assess” alone lists them."))));
    }
    return chosen;
  }

  private void tell(Session session, Result result) {
    session.out().println(word(result.verdict().outcome()) + "  " + result.assessment().id());
    Listing rows = Listing.of("  ", ">designed", ">built", ">ratio", "asked", ">margin", "set by");
    for (Row row : result.rows()) {
      if (ids.isEmpty() && row.limit().isEmpty()) {
        continue;
      }
      rows.row(cells(row));
    }
    if (!rows.isEmpty()) {
      session.out().print(rows.text());
    }
    result.verdict().reasons().forEach(why -> session.out().println("  - " + why));
    session.out().println();
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
      row.ratio().isPresent() ? Print.ratio(row.ratio().getAsDouble()) : "–",
      row.limit().map(limit -> limit.side().words() + " " + Print.number(limit.value())).orElse(""),
      row.margin().isPresent() ? Print.margin(row.margin().getAsDouble()) : "",
      row.built().flatMap(kitwright.assessment.Figure::governing).orElse("")
    };
  }
}

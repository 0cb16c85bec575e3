package kitwright.cli;

import java.util.Optional;
import kitwright.choice.Choice;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.report.WaysOutPage;
import kitwright.value.Ref;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lays the ways out of a shortage side by side. */
@picocli.CommandLine.Command(
    name = "options",
    description = {
      "Lays the ways out of a shortage side by side: wait, buy, substitute; with money, days,"
          + " strength, weight, off-cuts and signatures.",
      "It decides nothing: write “decided: {option: …, on: …, by: …, why: …}” in the shortage."
    })
final class OptionsCommand implements Command {
  /** How they are told. */
  enum Format {
    TEXT,
    MARKDOWN,
    JSON
  }

  @Mixin private LedgerOptions options = new LedgerOptions();

  @Parameters(
      paramLabel = "SHORTAGE",
      arity = "0..1",
      description = "Which; without one, lists those that are open.")
  private Optional<String> id = Optional.empty();

  @Option(
      names = "--format",
      paramLabel = "HOW",
      description = "text, markdown or json; text where not said.")
  private Format format = Format.TEXT;

  @Override
  public int run(Session session) {
    Opened opened = Opened.of(options, session);
    Ledger ledger = opened.ledger(session);
    Facts now = Facts.of(ledger, opened.today());
    if (id.isEmpty()) {
      session.out().print(list(now));
      return CLEAN;
    }
    Optional<Shortage> shortage = ledger.find(Kind.SHORTAGES, id.get());
    Choice choice =
        shortage
            .flatMap(found -> Choice.of(now, new Ref(found.id(), found.at().record())))
            .orElseThrow(() -> unknown(ledger, id.get()));
    session.out().print(told(choice, session));
    return CLEAN;
  }

  private String told(Choice choice, Session session) {
    return switch (format) {
      case TEXT -> new OptionsText(choice, session.screen().width()).text();
      case MARKDOWN -> WaysOutPage.of(choice).markdown();
      case JSON -> OptionsJson.of(choice);
    };
  }

  private static String list(Facts now) {
    Listing list = Listing.of("shortage", ">open", "ways out", "decided");
    kitwright.shortage.Standings.on(now)
        .open()
        .forEach(
            each ->
                list.row(
                    each.shortage().id(),
                    each.open().toString(),
                    each.shortage().options().isEmpty()
                        ? "none written down"
                        : String.join(
                            ", ",
                            each.shortage().options().stream().map(Shortage.Option::name).toList()),
                    each.shortage().decided().map(Shortage.Decision::option).orElse("–")));
    return list.isEmpty() ? "No shortage is open.\n" : list.text();
  }

  private static Refusal unknown(Ledger ledger, String id) {
    return Refusal.unknown(
        "There is no shortage “" + id + "” on that day.",
        id,
        ledger.ids(Kind.SHORTAGES),
        "“kitwright options” alone lists them.");
  }
}

package kitwright.cli;

import java.util.Optional;
import kitwright.choice.Choice;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.report.claim.OptionsTold;
import kitwright.shortage.ShortageStandings;
import kitwright.value.Ref;

/** Lays the ways out of a shortage side by side. */
final class OptionsCommand implements Command {
  private final LedgerOptions options = new LedgerOptions();
  private Optional<String> id = Optional.empty();
  private final Telling telling = new Telling();

  @Override
  public void declare(Declaring to) {
    to.says(
        "Lays the ways out of a shortage side by side: wait, buy, substitute; with money, days,"
            + " strength, weight, off-cuts and signatures.",
        "It decides nothing: write “decided: {option: …, on: …, by: …, why: …}” in the shortage.",
        "For example: kitwright options short-2026-03-20-board-winch");
    options.declare(to);
    to.mayPlace(
        "SHORTAGE",
        given -> id = Optional.of(given),
        "Which; without one, lists those that are open.");
    telling.declare(to);
  }

  @Override
  public int run(Session session) {
    Opened opened = Opened.of(options, session);
    Ledger ledger = opened.ledger(session);
    Facts now = Facts.of(ledger, opened.today());
    if (id.isEmpty()) {
      return telling.tell(
          OptionsTold.list(ledger, ShortageStandings.on(now).open()), opened, session);
    }
    Optional<Shortage> shortage = ledger.find(Kind.SHORTAGES, id.get());
    Choice choice =
        shortage
            .flatMap(found -> Choice.of(now, new Ref(found.id(), found.at().record())))
            .orElseThrow(() -> unknown(ledger, id.get()));
    return telling.tell(OptionsTold.of(choice, now), opened, session);
  }

  private static Refusal unknown(Ledger ledger, String id) {
    return Refusal.unknown(
        ledger, Kind.SHORTAGES, id, "“kitwright options” alone lists those of the day.");
  }
}

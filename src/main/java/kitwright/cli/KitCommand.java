package kitwright.cli;

import java.util.List;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.report.stores.KitTold;
import kitwright.shortage.Balance;
import kitwright.shortage.ShortageStandings;

/** Tells how the kit's items stand. */
final class KitCommand implements Command {
  private final LedgerOptions options = new LedgerOptions();
  private final Telling telling = new Telling();
  private List<String> ids = List.of();
  private boolean open;

  @Override
  public void declare(Declaring to) {
    to.says(
        "Lists the kit’s items: promised, counted good, damaged, wrong, still open, coming, here."
            + " What covers it otherwise stands in its story.",
        "With an ID, tells the item’s story day by day. --today shows an earlier day.",
        "For example: kitwright kit plank");
    options.declare(to);
    telling.declare(to);
    to.places(0, "0..*", "ID", given -> ids = given, "Which items; all where none is named.");
    to.flag(
        "--open",
        () -> open = true,
        "Only items of which something is still open, or nobody counted.");
  }

  @Override
  public int run(Session session) {
    Opened opened = Opened.of(options, session);
    Ledger ledger = opened.ledger(session);
    for (String id : ids) {
      if (ledger.find(Kind.KIT, id).isEmpty()) {
        throw Refusal.unknown(ledger, Kind.KIT, id, "“kitwright kit” alone lists them.");
      }
    }
    Facts now = Facts.of(ledger, opened.today());
    List<Balance> wanted =
        ShortageStandings.on(now).balances().stream()
            .filter(each -> ids.isEmpty() || ids.contains(each.position().item().id()))
            .filter(each -> !open || !each.position().isCounted() || !each.open().isNone())
            .toList();
    return telling.tell(KitTold.sheet(now, wanted, !ids.isEmpty()), opened, session);
  }
}

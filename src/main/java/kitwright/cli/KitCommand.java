package kitwright.cli;

import java.util.List;
import kitwright.kit.Count;
import kitwright.kit.Position;
import kitwright.kit.Use;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.shortage.Balance;
import kitwright.value.Quantity;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells how the kit's items stand. */
@picocli.CommandLine.Command(
    name = "kit",
    description = {
      "Lists the kit’s items: promised, counted good, damaged, wrong, covered otherwise, still"
          + " open, used.",
      "With an ID, tells the item’s story day by day. --today shows an earlier day."
    })
final class KitCommand implements Command {
  @Mixin private LedgerOptions options = new LedgerOptions();

  @Parameters(
      paramLabel = "ID",
      arity = "0..*",
      description = "Which items; all where none is named.")
  private List<String> ids = List.of();

  @Option(
      names = "--open",
      description = "Only items of which something is still open, or nobody counted.")
  private boolean open;

  @Override
  public int run(Session session) {
    Opened opened = Opened.of(options, session);
    Ledger ledger = opened.ledger(session);
    for (String id : ids) {
      if (ledger.find(Kind.KIT, id).isEmpty()) {
        throw Refusal.unknown(
            "There is no kit item “" + id + "”.",
            id,
            ledger.ids(Kind.KIT),
            "“kitwright kit” alone lists them.");
      }
    }
    Facts now = Facts.of(ledger, opened.today());
    List<Balance> wanted =
        kitwright.shortage.Standings.on(now).balances().stream()
            .filter(each -> ids.isEmpty() || ids.contains(each.position().item().id()))
            .filter(each -> !open || !each.position().isCounted() || !each.open().isNone())
            .toList();
    session.out().print(table(wanted));
    if (!ids.isEmpty()) {
      wanted.forEach(each -> session.out().print("\n" + story(each)));
    }
    return CLEAN;
  }

  private static String table(List<Balance> balances) {
    Listing list =
        Listing.of(
            "item", ">promised", ">good", ">damaged", ">wrong", ">covered", ">open", ">used");
    for (Balance each : balances) {
      Position position = each.position();
      list.row(
          position.item().id(),
          position.promised().toString(),
          position.isCounted() ? amount(position.good()) : "uncounted",
          amount(position.damaged()),
          amount(position.wrong()),
          amount(each.covered()),
          amount(each.open()),
          amount(position.used()));
    }
    return list.isEmpty() ? "Nothing.\n" : list.text();
  }

  private static String amount(Quantity quantity) {
    return quantity.isNone() ? "–" : quantity.toString();
  }

  private static String story(Balance balance) {
    Position position = balance.position();
    StringBuilder out =
        new StringBuilder(position.item().id() + ": " + position.item().what() + "\n");
    for (Count count : position.counts()) {
      out.append("  ")
          .append(count.on())
          .append("  ")
          .append(count.good())
          .append(" good in ")
          .append(count.delivery().id());
      out.append(count.damaged().isNone() ? "" : ", " + count.damaged() + " damaged");
      out.append(count.wrong().isNone() ? "" : ", " + count.wrong() + " wrong").append('\n');
    }
    for (Use use : position.uses()) {
      out.append("  ").append(use.on()).append("  ").append(use.qty()).append(" used\n");
    }
    position
        .awaited()
        .forEach(
            each ->
                out.append("  on its way: ")
                    .append(each.qty())
                    .append(" in ")
                    .append(each.delivery().id())
                    .append('\n'));
    return out.toString();
  }
}

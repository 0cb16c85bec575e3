package kitwright.cli;

import java.util.List;
import kitwright.ledger.Entry;
import kitwright.ledger.Kind;

/** Sets keys of a record. */
final class AmendCommand implements Command {
  private final LedgerOptions options = new LedgerOptions();
  private boolean print;
  private String kind = "";
  private String id = "";
  private List<String> words = List.of();

  @Override
  public void declare(Declaring to) {
    to.says(
        "Sets keys of a record, or adds to its lists; the rest of its file stays as it is.",
        "For example: kitwright amend task lay-sole started=2026-03-02 tools+=jigsaw");
    options.declare(to);
    to.flag("--print", () -> print = true, "Print the changed file instead of writing it.");
    to.place(0, "KIND", given -> kind = given, "task, claim, loan …");
    to.place(1, "ID", given -> id = given, "The record.");
    to.places(
        2,
        "1..*",
        "KEY=VALUE | KEY+=ITEM",
        given -> words = given,
        "What to set, and what to add to a list.");
  }

  @Override
  public int run(Session session) {
    Recording recording = new Recording(options, session, print);
    Kind wanted = KeysCommand.named(kind);
    Entry entry = recording.record(wanted, id);
    return recording.make(entry, Recording.change(words));
  }
}

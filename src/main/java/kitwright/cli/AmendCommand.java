package kitwright.cli;

import java.util.List;
import kitwright.ledger.Kind;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Sets keys of a record. */
@picocli.CommandLine.Command(
    name = "amend",
    description = {
      "Sets keys of a record, or adds to its lists; the rest of its file stays as it is.",
      "For example: kitwright amend task lay-sole started=2026-03-02 tools+=jigsaw"
    })
final class AmendCommand implements Command {
  @Mixin private LedgerOptions options = new LedgerOptions();

  @Option(names = "--print", description = "Print the changed file instead of writing it.")
  private boolean print;

  @Parameters(index = "0", paramLabel = "KIND", description = "task, claim, loan …")
  private String kind = "";

  @Parameters(index = "1", paramLabel = "ID", description = "The record.")
  private String id = "";

  @Parameters(
      index = "2..*",
      arity = "1..*",
      paramLabel = "KEY=VALUE | KEY+=ITEM",
      description = "What to set, and what to add to a list.")
  private List<String> words = List.of();

  @Override
  public int run(Session session) {
    Recording recording = new Recording(options, session, print);
    Kind wanted = KeysCommand.named(kind);
    return recording.make(recording.record(wanted, id), Recording.change(words));
  }
}

package kitwright.cli;

import java.util.List;
import java.util.Optional;
import kitwright.edit.Export;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints records as a flat table. */
@picocli.CommandLine.Command(
    name = "export",
    description = {
      "Prints the records of a kind as a table, for a spreadsheet or a database; without a name,"
          + " the tables.",
      "For example: kitwright export spending > spending.csv"
    })
final class ExportCommand implements Command {
  @Mixin private LedgerOptions options = new LedgerOptions();

  /** How a table is written. */
  enum Format {
    CSV,
    JSONL
  }

  @Parameters(
      paramLabel = "TABLE",
      arity = "0..1",
      description = "A kind, or a kind and a key of groups: claims.events.")
  private Optional<String> table = Optional.empty();

  @Option(
      names = "--format",
      paramLabel = "csv|jsonl",
      description = "CSV (RFC 4180), or JSON Lines; csv where nothing is said.")
  private Format format = Format.CSV;

  @Override
  public int run(Session session) {
    List<String> tables = Export.tables();
    if (table.isEmpty()) {
      tables.forEach(session.out()::println);
      return CLEAN;
    }
    if (!tables.contains(table.get())) {
      throw Refusal.unknown(
          "There is no table “" + table.get() + "”.",
          table.get(),
          tables,
          "“kitwright export” lists them.");
    }
    Export export = Export.of(Opened.of(options, session).ledger(session), table.get());
    session.out().print(format == Format.CSV ? export.csv() : export.jsonLines());
    return CLEAN;
  }
}

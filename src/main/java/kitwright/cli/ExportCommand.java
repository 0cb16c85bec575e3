package kitwright.cli;

import java.util.List;
import java.util.Optional;
import kitwright.edit.Export;
import kitwright.value.Nearest;

/** Prints records as a flat table. */
final class ExportCommand implements Command {
  private final LedgerOptions options = new LedgerOptions();

  /** How a table is written. */
  enum Format {
    CSV,
    JSONL
  }

  private Optional<String> table = Optional.empty();
  private Format format = Format.CSV;

  @Override
  public void declare(Declaring to) {
    to.says(
        "Prints the records of a kind as a table, for a spreadsheet or a database; without a name,"
            + " the tables.",
        "For example: kitwright export spending > spending.csv");
    options.declare(to);
    to.mayPlace(
        "TABLE",
        given -> table = Optional.of(given),
        "A kind, or a kind and a key of groups: claims.events.");
    to.option(
        "--format",
        "csv|jsonl",
        Format.class,
        given -> format = given,
        "CSV (RFC 4180), or JSON Lines; csv where nothing is said.");
  }

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
          Nearest.ofWords(table.get(), tables),
          "“kitwright export” lists them.");
    }
    Export export = Export.of(Opened.of(options, session).ledger(session), table.get());
    session.out().print(format == Format.CSV ? export.csv() : export.jsonLines());
    return CLEAN;
  }
}

package kitwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import kitwright.edit.Change;
import kitwright.edit.ColumnNames;
import kitwright.edit.Import;
import kitwright.edit.NewFiles;
import kitwright.ledger.Entry;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.value.Misread;

/** Takes the rows of a list as records. */
final class ImportCommand implements Command {
  private static final long LARGEST = 256L << 20;

  private final LedgerOptions options = new LedgerOptions();
  private String kind = "";
  private String file = "";
  private Map<String, String> columns = new LinkedHashMap<>();
  private Map<String, String> every = Map.of();
  private boolean print;

  @Override
  public void declare(Declaring to) {
    to.says(
        "Takes the rows of a CSV file, or of a workbook’s first sheet (xlsx), as records of a kind:"
            + " a packing list, a price list, a list of payments.",
        "A row whose record is there changes only what differs; a row that cannot be read is told"
            + " and left out.",
        "For example: kitwright import kit packing.csv --columns \"Description=what,Quantity=qty\""
            + " --print");
    options.declare(to);
    to.place(0, "KIND", given -> kind = given, "kit, spend, stock …");
    to.place(1, "FILE", given -> file = given, "The list, as CSV or xlsx.");
    to.pairs(
        "--columns",
        "TITLE=KEY,…",
        given -> columns = given,
        "Which key each column holds, two for a number and its unit; kept for the next time.");
    to.pairs(
        "--every",
        "KEY=VALUE,…",
        given -> every = given,
        "What each new record says where its row does not, such as state=paid,line=timber.");
    to.flag("--print", () -> print = true, "Print what would be done, and do nothing.");
  }

  @Override
  public int run(Session session) {
    Recording recording = new Recording(options, session, false);
    Ledger ledger = recording.ledger();
    Path root = recording.opened().folder().root();
    Kind wanted = KeysCommand.named(kind);
    ColumnNames names = ColumnNames.of(root, wanted);
    Import made = read(session, wanted, names, ledger);
    made.refused().forEach(row -> session.err().println("refused  " + row));
    if (!made.leftOut().isEmpty()) {
      session.say("Columns left out: " + String.join(", ", made.leftOut()) + ".");
    }
    if (print) {
      made.freshTexts().forEach(session::print);
      made.changed().forEach((entry, keys) -> session.out().println(entry.named() + ": " + keys));
    } else {
      write(session, recording, root, wanted, made);
      keep(names);
    }
    session
        .out()
        .println(
            made.fresh()
                + " new, "
                + made.changed().size()
                + " changed, "
                + made.alike()
                + " as they were, "
                + made.refused().size()
                + " refused"
                + (print ? "; nothing is written." : "."));
    return made.refused().isEmpty() ? CLEAN : FOUND;
  }

  private Import read(Session session, Kind wanted, ColumnNames names, Ledger ledger) {
    Path path = LedgerOptions.path(session, file);
    try {
      if (!Files.isRegularFile(path) || Files.size(path) > LARGEST) {
        throw new Refusal("There is no list “" + file + "” of at most 256 MiB.", "Check the path.");
      }
      byte[] bytes = Files.readAllBytes(path);
      Map<String, String> all = new LinkedHashMap<>(names.all());
      all.putAll(columns);
      try (Progress progress = new Progress(session, "rows")) {
        return Import.of(wanted, bytes, all, every, ledger, progress);
      }
    } catch (IOException broken) {
      throw new Refusal("“" + file + "” cannot be opened.", "Check who may read it.");
    } catch (Misread misread) {
      throw Refusal.of(misread);
    }
  }

  private void write(Session session, Recording recording, Path root, Kind wanted, Import made) {
    Map<Entry, Change> changes = new LinkedHashMap<>();
    made.changed().forEach((entry, keys) -> changes.put(entry, Change.of(keys)));
    recording.makeAll(changes);
    if (made.fresh() == 0) {
      return;
    }
    String name = wanted.key() + "/import-" + recording.opened().today();
    try {
      int number = 1;
      for (String text : made.freshTexts()) {
        String path = name + ".yaml";
        while (Files.exists(root.resolve(path)) || !isNew(root, path, text)) {
          number++;
          path = name + "-" + number + ".yaml";
        }
        session.say("Recorded in " + path);
      }
    } catch (IOException broken) {
      throw new Refusal(
          "The new records could not be written (" + broken.getMessage() + ").",
          "Check the space on the disk, and who may write in the ledger’s folder.");
    }
  }

  private static boolean isNew(Path root, String path, String text) throws IOException {
    return !NewFiles.write(root, Map.of(path, text)).written().isEmpty();
  }

  private void keep(ColumnNames names) {
    if (!columns.isEmpty()) {
      try {
        names.keep(columns);
      } catch (IOException broken) {
        throw new Refusal(
            "The columns’ names could not be kept (" + broken.getMessage() + ").",
            "The records are written; name the columns again the next time.");
      }
    }
  }
}

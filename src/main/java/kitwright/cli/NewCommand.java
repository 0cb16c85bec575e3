package kitwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitwright.edit.NewFile;
import kitwright.edit.NewFiles;
import kitwright.edit.NewRecord;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Kind;
import kitwright.ledger.LedgerReader;
import kitwright.ledger.SourceFile;
import kitwright.value.Misread;

/** Begins a record. */
final class NewCommand implements Command {
  private final LedgerOptions options = new LedgerOptions();
  private String kind = "";
  private List<String> words = List.of();
  private boolean print;

  @Override
  public void declare(Declaring to) {
    to.says(
        "Writes a file with one new record to fill in: a fresh id, today’s date, and a word on each"
            + " key.",
        "For example: kitwright new shortage \"keel bolts\" item=keel-bolt-m12 qty=4");
    options.declare(to);
    to.place(0, "KIND", given -> kind = given, "shortage, claim, delivery, spend, loan …");
    to.places(
        1,
        "0..*",
        "ABOUT | KEY=VALUE",
        given -> words = given,
        "What it is about, for its id; and values to fill in.");
    to.flag("--print", () -> print = true, "Print the record instead of writing a file.");
  }

  @Override
  public int run(Session session) {
    Kind wanted = KeysCommand.named(kind);
    Opened opened = Opened.of(options, session);
    NewFile file = record(wanted, opened);
    if (print) {
      session.print(file.text());
      return CLEAN;
    }
    Path root = opened.folder().root();
    NewFile told = opened.hasSchema() ? file.forEditors() : file;
    requireReadable(told, opened);
    try {
      NewFiles.Outcome outcome = NewFiles.write(root, Map.of(told.path(), told.text()));
      if (outcome.written().isEmpty()) {
        throw new Refusal(
            "“" + file.path() + "” is there already, and stays as it is.",
            "Say what the new record is about, so that it gets a name of its own.");
      }
      session.say("new      " + opened.folder().root().resolve(file.path()));
      return CLEAN;
    } catch (IOException broken) {
      throw new Refusal(
          "“" + file.path() + "” could not be written (" + broken.getMessage() + ").",
          "Check the space on the disk, and who may write in the ledger’s folder.");
    }
  }

  /** What is still empty is for the builder to fill in; what was given shall read. */
  private void requireReadable(NewFile file, Opened opened) {
    List<SourceFile> files = new ArrayList<>(opened.files());
    files.add(new SourceFile(file.path(), file.text()));
    Findings faults = new Findings();
    LedgerReader.read(files, opened.evidence(), faults);
    List<String> lines = file.text().lines().toList();
    for (Finding fault : faults.inOrder()) {
      boolean own = fault.at().file().equals(file.path()) && !fault.at().isWholeFile();
      if (own && isGiven(lines.get(fault.at().line() - 1))) {
        throw new Refusal(fault.what(), fault.mend() + " Nothing was written.");
      }
    }
  }

  private boolean isGiven(String line) {
    String key = line.strip().replaceFirst("^- ", "").replaceFirst(":.*", "");
    return words.stream().anyMatch(word -> word.startsWith(key + "="));
  }

  private NewFile record(Kind wanted, Opened opened) {
    Map<String, String> values = new LinkedHashMap<>();
    StringBuilder about = new StringBuilder();
    for (String word : words) {
      int equals = word.indexOf('=');
      if (equals > 0) {
        values.put(word.substring(0, equals), word.substring(equals + 1));
      } else {
        about.append(about.isEmpty() ? "" : " ").append(word);
      }
    }
    opened.read().ifPresent(ledger -> Usual.only(wanted, ledger).forEach(values::putIfAbsent));
    String given = values.getOrDefault(wanted == Kind.BUDGET ? "line" : "id", "");
    if (opened.read().filter(ledger -> ledger.knows(wanted, given)).isPresent()) {
      throw new Refusal(
          "A " + wanted.word() + " “" + given + "” is there already, and stays as it is.",
          "Give the new record another id; “kitwright amend” changes the one that is there.");
    }
    try {
      return NewRecord.of(
          wanted,
          about.toString(),
          opened.today(),
          values,
          id -> opened.read().filter(ledger -> ledger.knows(wanted, id)).isPresent());
    } catch (Misread misread) {
      throw Refusal.of(misread);
    }
  }
}

package kitwright.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.edit.Change;
import kitwright.edit.NewRecord;
import kitwright.edit.Replacing;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Entry;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.LedgerReader;
import kitwright.ledger.SourceFile;
import kitwright.value.Misread;
import kitwright.value.Nearest;

/** Writes down what happened to a record that is there: the smallest change of its file. */
final class Recording {
  private final Session session;
  private final Opened opened;
  private final boolean print;

  /**
   * @param print whether the changed file is printed instead of written
   */
  Recording(LedgerOptions options, Session session, boolean print) {
    this.session = session;
    this.opened = Opened.of(options, session);
    this.print = print;
  }

  Opened opened() {
    return opened;
  }

  Ledger ledger() {
    return opened.ledger(session);
  }

  /** The record of a kind with an id, refused with the nearest where there is none. */
  Entry record(Kind kind, String id) {
    Ledger ledger = ledger();
    return ledger
        .<Entry>find(kind, id)
        .orElseThrow(
            () ->
                new Refusal(
                    "There is no " + kind.word() + " “" + id + "”.",
                    Nearest.to(id, ledger.ids(kind))
                        .map(near -> "Did you mean “" + near + "”?")
                        .orElse(
                            "“kitwright new " + kind.word().replace(' ', '-') + "” begins one.")));
  }

  /** What is on record is not written over by a word that was meant for something new. */
  Refusal twice(Entry entry, String key, LocalDate day) {
    return new Refusal(
        "The "
            + entry.named()
            + " says “"
            + key
            + ": "
            + day
            + "” already, at "
            + entry.at().of(key)
            + ".",
        "Nothing was changed; “kitwright amend "
            + entry.kind().word().replace(' ', '-')
            + " "
            + entry.id()
            + " KEY=VALUE” corrects it.");
  }

  /** Makes the change, unless the file would then read otherwise than meant. */
  int make(Entry entry, Change change) {
    try {
      change.requireKnown(entry.kind());
    } catch (Misread misread) {
      throw Refusal.of(misread);
    }
    SourceFile file = file(entry);
    String now =
        change
            .in(file, entry)
            .filter(text -> !text.equals(file.text()))
            .orElseThrow(() -> byHand(entry, change));
    judge(Map.of(file.path(), now));
    if (print) {
      session.print(now);
      return Command.CLEAN;
    }
    write(file.path(), now);
    session.say("Recorded in " + file.path() + ": " + told(change));
    return Command.CLEAN;
  }

  /** Makes many changes, each file written once; what must be made by hand is told and left. */
  void makeAll(Map<Entry, Change> changes) {
    Map<String, String> now = new LinkedHashMap<>();
    changes.forEach(
        (entry, change) -> {
          SourceFile file = file(entry);
          String text = now.getOrDefault(file.path(), file.text());
          change
              .in(new SourceFile(file.path(), text), entry)
              .ifPresentOrElse(
                  changed -> now.put(file.path(), changed),
                  () -> session.err().println("by hand  " + byHand(entry, change).said()));
        });
    judge(now);
    now.forEach(this::write);
    now.keySet().forEach(path -> session.say("Recorded in " + path));
  }

  private void write(String path, String now) {
    try {
      Replacing.write(opened.folder().root(), path, text(path), now);
    } catch (Replacing.Changed meanwhile) {
      throw new Refusal("“" + path + "” was changed meanwhile.", "Give the command again.");
    } catch (IOException broken) {
      throw new Refusal(
          "“" + path + "” could not be written (" + broken.getMessage() + "); it is as it was.",
          "Check the space on the disk, and who may write there.");
    }
  }

  private String text(String path) {
    return opened.files().stream()
        .filter(file -> file.path().equals(path))
        .findFirst()
        .map(SourceFile::text)
        .orElseThrow();
  }

  private static Refusal byHand(Entry entry, Change change) {
    return new Refusal(
        "The "
            + entry.named()
            + " cannot be changed without touching more of its file, or says so already.",
        "Write it there by hand: " + entry.at().record() + ", " + told(change) + ".");
  }

  private static String told(Change change) {
    List<String> all = new ArrayList<>();
    change.set().forEach((key, value) -> all.add(key + ": " + value));
    change.added().forEach((key, items) -> items.forEach(item -> all.add(key + ": … " + item)));
    return String.join(", ", all);
  }

  private SourceFile file(Entry entry) {
    String path = entry.at().record().file();
    return opened.files().stream()
        .filter(file -> file.path().equals(path))
        .findFirst()
        .orElseThrow();
  }

  /** A value that cannot be read is refused now, not found at the next check. */
  private void judge(Map<String, String> now) {
    List<Finding> before = faults(opened.files());
    List<SourceFile> files =
        opened.files().stream()
            .map(each -> new SourceFile(each.path(), now.getOrDefault(each.path(), each.text())))
            .toList();
    List<Finding> after = faults(files);
    if (after.size() > before.size()) {
      Finding fault =
          after.stream()
              .filter(each -> before.stream().noneMatch(old -> old.what().equals(each.what())))
              .findFirst()
              .orElse(after.get(0));
      throw new Refusal(fault.what(), fault.mend() + " Nothing was changed.");
    }
  }

  private List<Finding> faults(List<SourceFile> files) {
    Findings out = new Findings();
    LedgerReader.read(files, opened.folder()::evidence, out);
    return out.inOrder();
  }

  /** What words of the command line say: {@code key=value} sets, {@code key+=item} adds. */
  static Change change(List<String> words) {
    Map<String, String> set = new LinkedHashMap<>();
    Map<String, List<String>> added = new LinkedHashMap<>();
    for (String word : words) {
      int equals = word.indexOf('=');
      if (equals < 1) {
        throw new Refusal(
            "“" + word + "” says no key.", "Write KEY=VALUE, or KEY+=ITEM for a list.");
      }
      String key = word.substring(0, equals);
      String value = NewRecord.written(word.substring(equals + 1));
      if (key.endsWith("+")) {
        added
            .computeIfAbsent(key.substring(0, key.length() - 1), any -> new ArrayList<>())
            .add(value);
      } else {
        set.put(key, value);
      }
    }
    return new Change(set, added);
  }

  /** A group of keys in brackets, those without a value left out. */
  static String group(Map<String, Optional<String>> keys) {
    List<String> written = new ArrayList<>();
    keys.forEach(
        (key, value) -> value.ifPresent(text -> written.add(key + ": " + NewRecord.written(text))));
    return "{" + String.join(", ", written) + "}";
  }
}

package kitwright.cli;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import kitwright.check.Check;
import kitwright.edit.Answers;
import kitwright.edit.Change;
import kitwright.edit.NewFile;
import kitwright.edit.NewFiles;
import kitwright.edit.NewRecord;
import kitwright.edit.Replacing;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.LedgerReader;
import kitwright.ledger.SourceFile;
import kitwright.value.Misread;

/**
 * Writes down what happened: the smallest changes of files that are there, and new files. Nothing
 * is written before the whole ledger was read again with all of it.
 */
final class Recording {
  /** Rules of what cannot be, whatever happened: a day before another, more than there is. */
  private static final Set<String> IMPOSSIBLE =
      Set.of(
          "claim-asks-twice",
          "count-contradictory",
          "date-impossible",
          "dates-disordered",
          "money-negative",
          "progress-impossible",
          "spend-contradictory",
          "tax-beyond-amount",
          "three-point-disordered");

  private final Session session;
  private final Opened opened;
  private final boolean print;

  /** What each file that is touched shall hold. */
  private final Map<String, String> now = new LinkedHashMap<>();

  /** What is said of each once it is written. */
  private final List<String> notes = new ArrayList<>();

  private final Map<String, String> said = new LinkedHashMap<>();

  private Optional<Ledger> before = Optional.empty();
  private Optional<Ledger> after = Optional.empty();

  /**
   * @param print whether the changed files are printed instead of written
   */
  Recording(LedgerOptions options, Session session, boolean print) {
    this.session = session;
    this.opened = Opened.of(options, session);
    this.print = print;
  }

  Opened opened() {
    return opened;
  }

  /** As it was read; its faults are told the first time only. */
  Ledger ledger() {
    Ledger ledger = before.orElseGet(() -> opened.ledger(session));
    before = Optional.of(ledger);
    return ledger;
  }

  /** The record of a kind with an id, refused with the nearest where there is none. */
  Entry record(Kind kind, String id) {
    Ledger ledger = ledger();
    return ledger
        .<Entry>find(kind, id)
        .orElseThrow(
            () ->
                Refusal.unknown(
                    ledger,
                    kind,
                    id,
                    "“kitwright new " + kind.word().replace(' ', '-') + "” begins one."));
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
    add(entry, change);
    return write(List.of(entry.named()));
  }

  /** Takes a change up, on top of what was taken up before. */
  void add(Entry entry, Change change) {
    try {
      change.requireKnown(entry.kind());
    } catch (Misread misread) {
      throw Refusal.of(misread);
    }
    SourceFile file = file(entry.at().record().file());
    String text =
        change
            .in(file, entry)
            .filter(changed -> !changed.equals(file.text()))
            .orElseThrow(() -> byHand(entry, change));
    now.put(file.path(), text);
    said.merge(
        file.path(),
        "Recorded in " + file.path() + ": " + change.told(),
        (before, more) -> before + ", " + change.told());
  }

  /** A sentence that is told once it is written. */
  void note(String sentence) {
    notes.add(sentence);
  }

  /** Lets go of all that was taken up. */
  void reset() {
    now.clear();
    said.clear();
  }

  /** Begins a record of what is known, as the ledger’s other files are laid out; gives its id. */
  String begin(Kind kind, String about, Map<String, String> values, String words) {
    NewRecord.Filled filled =
        NewRecord.filled(
            kind, about, opened.today(), values, words, id -> ledger().knows(kind, id));
    add(opened.hasSchema() ? filled.file().forEditors() : filled.file());
    return filled.id();
  }

  /** Takes words of the day up, below what its log says already. */
  void append(Entry day, String words) {
    SourceFile file = file(day.at().record().file());
    String text = file.text();
    now.put(file.path(), text + (text.endsWith("\n") ? "" : "\n") + "\n" + words.strip() + "\n");
    said.putIfAbsent(file.path(), "Recorded in " + file.path());
  }

  /** Reads what is answered. */
  Answers answers() {
    return new Answers(ledger(), opened.today(), this::fromRoot, opened.evidence());
  }

  /** A path as it is typed here, from the ledger's folder; one that lies there already stays. */
  private String fromRoot(String typed) {
    Path root = opened.folder().root();
    Path there = LedgerOptions.path(session, typed).toAbsolutePath().normalize();
    return Files.exists(root.resolve(typed)) || !there.startsWith(root)
        ? typed
        : root.relativize(there).toString().replace('\\', '/');
  }

  /** Takes a new file up. */
  void add(NewFile file) {
    if (now.containsKey(file.path()) || isThere(file.path())) {
      throw new Refusal(
          "“" + file.path() + "” is there already, and stays as it is.",
          "Give the new record an id of its own with --id.");
    }
    now.put(file.path(), file.text());
    said.put(file.path(), "new      " + file.path());
  }

  /** Makes many changes, each file written once; what must be made by hand is told and left. */
  void makeAll(Map<Entry, Change> changes) {
    if (changes.isEmpty()) {
      return; // reading a large ledger twice to find that nothing changes is not worth it
    }
    changes.forEach(
        (entry, change) -> {
          SourceFile file = file(entry.at().record().file());
          change
              .in(file, entry)
              .ifPresentOrElse(
                  changed -> now.put(file.path(), changed),
                  () -> session.err().println("by hand  " + byHand(entry, change).said()));
        });
    now.keySet().forEach(path -> said.put(path, "Recorded in " + path));
    write();
  }

  /** Writes all that was taken up, or prints it; refuses it where it would not be read. */
  int write() {
    after();
    if (print) {
      now.forEach((path, text) -> session.print(now.size() == 1 ? text : printed(path, text)));
      return Command.CLEAN;
    }
    List<String> written = new ArrayList<>();
    for (Map.Entry<String, String> each : now.entrySet()) {
      write(each.getKey(), each.getValue(), written);
      written.add(each.getKey());
      session.say(said.getOrDefault(each.getKey(), each.getKey()));
    }
    return Command.CLEAN;
  }

  private static String printed(String path, String text) {
    return "# " + path + "\n" + text + (text.endsWith("\n") ? "" : "\n");
  }

  /**
   * @param written before it; where that is nothing, all of it may be tried once more
   */
  private void write(String path, String text, List<String> written) {
    try {
      if (isThere(path)) {
        Replacing.write(opened.folder().root(), path, read(path), text);
      } else if (NewFiles.write(opened.folder().root(), Map.of(path, text)).written().isEmpty()) {
        throw meanwhile("“" + path + "” came to be meanwhile.", written);
      }
    } catch (Replacing.Changed meanwhile) {
      throw meanwhile("“" + path + "” was changed meanwhile.", written);
    } catch (FileAlreadyExistsException inTheWay) {
      throw new Refusal(
          "“" + path + "” could not be written: “" + inTheWay.getFile() + "” is no folder.",
          "Move what stands there, or give it another name; "
              + (written.isEmpty() ? "nothing was changed." : already(written)));
    } catch (IOException broken) {
      throw new Refusal(
          "“" + path + "” could not be written (" + broken.getMessage() + "); it is as it was.",
          "Check the space on the disk, and who may write there"
              + (written.isEmpty() ? "." : "; " + already(written)));
    }
  }

  private static Refusal meanwhile(String what, List<String> written) {
    return written.isEmpty()
        ? Refusal.meanwhile(what)
        : new Refusal(what, "Before you give it again: " + already(written));
  }

  private static String already(List<String> written) {
    return String.join(", ", written)
        + (written.size() == 1 ? " is" : " are")
        + " written already; look with “git diff” what is still to do.";
  }

  private boolean isThere(String path) {
    return opened.files().stream().anyMatch(file -> file.path().equals(path));
  }

  private String read(String path) {
    return opened.files().stream()
        .filter(file -> file.path().equals(path))
        .findFirst()
        .map(SourceFile::text)
        .orElse("");
  }

  private SourceFile file(String path) {
    return new SourceFile(path, now.getOrDefault(path, read(path)));
  }

  private static Refusal byHand(Entry entry, Change change) {
    return new Refusal(
        "The "
            + entry.named()
            + " cannot be changed without touching more of its file, or says so already.",
        "Write it there by hand: " + entry.at().record() + ", " + change.told() + ".");
  }

  /**
   * The ledger as it will read. A value that cannot be read is refused now, not found at the next
   * check.
   */
  Ledger after() {
    List<SourceFile> files = new ArrayList<>();
    opened.files().forEach(each -> files.add(file(each.path())));
    now.keySet().stream().filter(path -> !isThere(path)).forEach(path -> files.add(file(path)));
    Findings out = new Findings();
    Optional<Ledger> read = LedgerReader.read(files, opened.evidence(), out);
    List<String> before =
        opened.findings().inOrder().stream()
            .map(Finding::what)
            .collect(Collectors.toCollection(ArrayList::new));
    for (Finding fault : out.inOrder()) {
      if (!before.remove(fault.what())) {
        throw new Refusal(fault.what(), fault.mend() + " Nothing was changed.");
      }
    }
    after = read.map(ledger -> new SigningKeys("ssh-keygen").checked(ledger, opened.folder()));
    return after.orElseGet(this::ledger);
  }

  /**
   * The same, and tells in a line each what the check then says of records. What cannot have
   * happened so is refused; what did happen is written down, however bad.
   */
  int write(List<String> named) {
    List<Finding> found = found(after(), named);
    found.stream().filter(this::isImpossible).findFirst().ifPresent(each -> refuse(each, named));
    int code = write();
    if (!print) {
      notes.forEach(each -> session.say("  " + each));
      found.forEach(each -> session.say("  " + each.what() + " " + each.mend()));
    }
    return code;
  }

  private boolean isImpossible(Finding finding) {
    return IMPOSSIBLE.contains(finding.rule());
  }

  /** Unless the record said so before. */
  private void refuse(Finding finding, List<String> named) {
    if (found(ledger(), named).stream().map(Finding::what).noneMatch(finding.what()::equals)) {
      throw new Refusal(finding.what(), finding.mend() + " Nothing was changed.");
    }
  }

  private List<Finding> found(Ledger ledger, List<String> named) {
    Findings found = new Findings();
    Check.examine(Facts.of(ledger, opened.today()), found);
    return found.inOrder().stream()
        .filter(each -> each.records().stream().anyMatch(named::contains))
        .toList();
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
}

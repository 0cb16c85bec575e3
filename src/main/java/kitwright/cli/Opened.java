package kitwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import kitwright.document.Templates;
import kitwright.edit.Starter;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Matter;
import kitwright.finding.Severity;
import kitwright.finding.TextFindings;
import kitwright.history.History;
import kitwright.history.NoHistory;
import kitwright.history.Tree;
import kitwright.ledger.EvidenceFile;
import kitwright.ledger.Ledger;
import kitwright.ledger.LedgerFolder;
import kitwright.ledger.LedgerReader;
import kitwright.ledger.SourceFile;
import kitwright.report.words.Sheet;
import kitwright.report.writing.PackagedTemplates;
import kitwright.value.Word;

/**
 * A ledger that a command works on, with the faults of its reading.
 *
 * @param files the texts, so that findings can show the lines
 * @param evidence what stands at paths of evidence, each looked at once
 */
record Opened(
    LedgerFolder folder,
    LocalDate today,
    List<SourceFile> files,
    Optional<Ledger> read,
    Findings findings,
    Function<List<String>, Map<String, EvidenceFile>> evidence) {

  static Opened of(LedgerOptions options, Session session) {
    LedgerFolder folder = options.folder(session);
    Findings findings = new Findings();
    List<SourceFile> files = folder.files(findings);
    SeenEvidence evidence = new SeenEvidence(folder);
    Optional<Ledger> read =
        LedgerReader.read(files, evidence, findings)
            .map(ledger -> new SigningKeys("ssh-keygen").checked(ledger, folder));
    return new Opened(folder, options.today(session), seen(files), read, findings, evidence);
  }

  /** The files that a command may show, or write anew: never one that it could not open. */
  private static List<SourceFile> seen(List<SourceFile> files) {
    return files.stream().filter(SourceFile::opened).toList();
  }

  /** A ledger that Git holds, with its signatures looked at as those of a folder are. */
  static Optional<Ledger> checked(Optional<Ledger> read, Tree tree) {
    return read.map(ledger -> new SigningKeys("ssh-keygen").checked(ledger, tree::content));
  }

  /** The same as Git has it staged for the next commit. */
  static Opened staged(LedgerOptions options, Session session) {
    LedgerFolder folder = options.folder(session);
    Findings findings = new Findings();
    try {
      Tree tree = History.staged(folder.root());
      List<SourceFile> files = tree.files(findings);
      return new Opened(
          folder,
          options.today(session),
          seen(files),
          checked(tree.ledger(files, findings), tree),
          findings,
          new SeenEvidence(folder));
    } catch (NoHistory none) {
      throw new Refusal(none.what(), none.mend());
    }
  }

  /**
   * The ledger, for a command that only tells. Faults of its reading are counted on the error
   * stream, so that nobody takes a sum for whole that is not.
   */
  Ledger ledger(Session session) {
    if (read.isPresent()) {
      lacks().ifPresent(words -> session.note("kitwright: " + words));
    }
    return read.orElseThrow(() -> withoutBuild(session));
  }

  /** That something could not be read, so that nobody takes a sum for whole that is not. */
  private Optional<String> lacks() {
    int stops = losing(findings);
    return stops == 0
        ? Optional.empty()
        : Optional.of(
            (stops == 1 ? "one fault" : stops + " faults")
                + " in the ledger’s files; what follows lacks those records. “kitwright check”"
                + " shows them.");
  }

  /** How many faults of reading hide a record, or a part of one. */
  static int losing(Findings findings) {
    return (int) findings.inOrder().stream().filter(Opened::losesRecords).count();
  }

  private static boolean losesRecords(Finding finding) {
    return finding.severity() == Severity.STOP || finding.rule().equals("file-passed-over");
  }

  /** A document with a word of what it lacks, which stays with it wherever it is sent. */
  Sheet whole(Sheet sheet) {
    return lacks().map(words -> sheet.lacking(Word.capital(words))).orElse(sheet);
  }

  /** The ledger, for findings only: by what can be read of a build record with faults. */
  Optional<Ledger> readOrByFaultyBuild() {
    return read.or(() -> LedgerReader.readByFaultyBuild(files, evidence));
  }

  /** Whether the ledger holds its schema, for editors. */
  boolean hasSchema() {
    return Files.exists(folder.root().resolve(Starter.SCHEMA));
  }

  /** Tells what stood in the way of a build record. */
  Refusal withoutBuild(Session session) {
    if (!findings.inOrder().isEmpty()) {
      session.err().print(text(session).render(Matter.each(findings.inOrder()), lines()));
    }
    if (readOrByFaultyBuild().isPresent()) {
      return new Refusal(
          "The build record has faults, and nothing is worked out until they are mended.",
          "They are shown above; then run “kitwright check” again.");
    }
    return new Refusal(
        "No file in “" + folder.root() + "” holds a readable build record.",
        "Write one: build: {name: …, currency: EUR, started: 2026-01-05}, or begin with “kitwright"
            + " start DIR”.");
  }

  static TextFindings text(Session session) {
    Screen screen = session.screen();
    return new TextFindings(screen.width(), screen.marks(), screen.ink());
  }

  /** The lines of each file, as they were read. */
  Function<String, List<String>> lines() {
    Map<String, String> texts =
        files.stream().collect(Collectors.toMap(SourceFile::path, SourceFile::text));
    return file -> texts.getOrDefault(file, "").lines().toList();
  }

  /** The ledger's templates, each in the place of the one that comes with the program. */
  Templates templates() {
    return new Templates(this::ownTemplate, PackagedTemplates::text);
  }

  private Optional<String> ownTemplate(String name) {
    Path file = folder.root().resolve("templates").resolve(name + ".md");
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return Optional.empty();
    }
    try {
      return Optional.of(Files.readString(file));
    } catch (IOException unreadable) {
      throw new Refusal(
          "The template “" + file + "” cannot be read.",
          "Check who may read it, and save it as UTF-8.");
    }
  }

  /** Shows what stood in the way of a document, with the lines of the file. */
  int refuse(List<Finding> faults, Session session) {
    session.err().print(text(session).render(Matter.each(faults), this::linesOf));
    return Command.UNREADABLE;
  }

  private List<String> linesOf(String file) {
    Path path = folder.root().resolve(file);
    try {
      return Files.isRegularFile(path)
          ? Files.readAllLines(path, StandardCharsets.UTF_8)
          : List.of();
    } catch (IOException unreadable) {
      return List.of();
    }
  }
}

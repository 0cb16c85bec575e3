package kitwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.Substitution;
import kitwright.report.writing.Beside;
import kitwright.substitution.Changes;
import kitwright.substitution.Paper;
import kitwright.substitution.SubstitutionStanding;
import kitwright.substitution.SubstitutionStandings;

/** Prints what a signature must cover, as digits or in words. */
final class FingerprintCommand implements Command {
  private final LedgerOptions options = new LedgerOptions();
  private List<String> ids = List.of();
  private Optional<String> by = Optional.empty();
  private boolean statement;
  private Optional<String> since = Optional.empty();
  private Optional<Path> out = Optional.empty();

  @Override
  public void declare(Declaring to) {
    to.says(
        "Prints what is signed under each substitution: the digits to write behind “covers:” in a"
            + " sign-off, or with --statement the text that they are the SHA-256 of.",
        "They change with every change of meaning in the substitution, what it replaces and uses,"
            + " its assessment, sections, materials, documents, conditions and signer.",
        "For example: kitwright fingerprint sub-rudder-spine --statement");
    options.declare(to);
    to.places(0, "0..*", "SUBSTITUTION", given -> ids = given, "Which; all where none is named.");
    to.option(
        "--by",
        "PARTY",
        given -> by = Optional.of(given),
        "Who signs; whoever signed or may sign where nobody is named.");
    to.flag(
        "--statement",
        () -> statement = true,
        "Print the statement itself, with what came out of the assessment below it.");
    to.option(
        "--since",
        "FINGERPRINT",
        given -> since = Optional.of(given),
        "What has changed since a statement that the ledger keeps, in words.");
    to.option(
        "--out",
        "FILE",
        Path.class,
        given -> out = Optional.of(given),
        "Write the one statement into a file, exactly as it is signed.");
  }

  @Override
  public int run(Session session) {
    Opened opened = Opened.of(options, session);
    Facts now = Facts.of(opened.ledger(session), opened.today());
    requireKnown(now.ledger());
    List<Paper> papers = papers(now);
    if (out.isPresent()) {
      return write(papers, session);
    }
    if (since.isPresent()) {
      return changes(papers, opened, now.ledger(), session);
    }
    for (Paper paper : papers) {
      if (statement) {
        session.print(paper.text());
      } else {
        session.say(paper.line());
      }
    }
    return CLEAN;
  }

  private List<Paper> papers(Facts now) {
    List<Paper> papers = new ArrayList<>();
    for (SubstitutionStanding standing : SubstitutionStandings.on(now).all()) {
      if (ids.isEmpty() || ids.contains(standing.substitution().id())) {
        papers.addAll(Paper.of(standing, by, now));
      }
    }
    return papers;
  }

  private int write(List<Paper> papers, Session session) {
    if (papers.size() != 1) {
      throw new Refusal(
          "There are " + papers.size() + " statements, and --out writes one.",
          "Name the substitution, and whose statement with “--by PARTY”.");
    }
    Path file = session.here().resolve(out.orElseThrow());
    try {
      byte[] text = papers.get(0).statement().text().getBytes(StandardCharsets.UTF_8);
      if (!Beside.create(file, text)) {
        throw new Refusal("“" + file + "” is there already.", "Name a new file.");
      }
    } catch (IOException broken) {
      throw new Refusal("“" + file + "” cannot be written.", "Name a file in a folder of yours.");
    }
    session.say("written  " + file);
    session.say(papers.get(0).line());
    return CLEAN;
  }

  private int changes(List<Paper> papers, Opened opened, Ledger ledger, Session session) {
    String digits = since.orElseThrow();
    if (papers.isEmpty() || papers.stream().map(Paper::substitution).distinct().count() != 1) {
      throw new Refusal(
          "--since tells the changes of one substitution.", "Name it: fingerprint ID --since …");
    }
    String id = papers.get(0).substitution();
    KeptStatements kept = new KeptStatements(opened.folder());
    String then =
        kept.text(ledger.<Substitution>find(Kind.SUBSTITUTIONS, id).orElseThrow(), digits)
            .or(() -> kept.past(id, digits))
            .orElseThrow(() -> notKept(id, digits));
    for (Paper paper : by.isPresent() ? papers : papers.subList(0, 1)) {
      List<String> changes = Changes.between(then, paper.statement().text());
      session.say(id + ", " + paper.how() + ":");
      changes.forEach(change -> session.say("  " + change));
      if (changes.isEmpty()) {
        session.say("  nothing has changed");
      }
    }
    return CLEAN;
  }

  private static Refusal notKept(String id, String digits) {
    return new Refusal(
        "Neither the ledger nor Git keeps a statement of "
            + id
            + " whose digits begin with "
            + digits
            + ".",
        "Keep the text that is signed: write it with “--out FILE”, and name it in the sign-off"
            + " under “statement”; and commit the ledger when something was signed.");
  }

  private void requireKnown(Ledger ledger) {
    for (String id : ids) {
      if (ledger.find(Kind.SUBSTITUTIONS, id).isEmpty()) {
        throw Refusal.unknown(
            ledger, Kind.SUBSTITUTIONS, id, "“kitwright fingerprint” alone lists them.");
      }
    }
    by.filter(id -> ledger.find(Kind.PARTIES, id).isEmpty())
        .ifPresent(
            id -> {
              throw Refusal.unknown(
                  ledger,
                  Kind.PARTIES,
                  id,
                  "The ledger’s parties are: " + String.join(", ", ledger.ids(Kind.PARTIES)) + ".");
            });
  }
}

package kitwright.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import kitwright.finding.Findings;
import kitwright.history.Changes;
import kitwright.history.Commit;
import kitwright.history.Hands;
import kitwright.history.History;
import kitwright.history.Meanwhile;
import kitwright.history.NoHistory;
import kitwright.history.Tree;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.report.past.SinceTold;

/** What has changed since a commit. */
final class SinceCommand implements Command {
  private final LedgerOptions options = new LedgerOptions();
  private final Telling telling = new Telling();
  private String from = "";

  @Override
  public void declare(Declaring to) {
    to.says(
        "Tells what has changed since a day or a commit, as Git has it: work, counts, shortages,"
            + " claims, signatures, money by line, days that moved, and every record with whose"
            + " hand it was.",
        "For example: kitwright since 2026-03-22, or kitwright since HEAD");
    options.declare(to);
    telling.declare(to);
    to.place(
        0,
        "DAY|COMMIT",
        given -> from = given,
        "A day, for the last commit up to its end; a tag, a branch or a commit.");
  }

  @Override
  public int run(Session session) {
    Path root = options.folder(session).root();
    try (Meanwhile<Past> past = Meanwhile.ask(() -> Past.of(root, from));
        Meanwhile<Hands> hands = Meanwhile.ask(() -> past.answer().hands())) {
      Opened opened = Opened.of(options, session);
      Facts now = Facts.of(opened.ledger(session), opened.today());
      Past there = past.answer();
      Findings faults = new Findings();
      Facts then = then(there, now, faults);
      Changes changes = Changes.between(then, now, hands.answer());
      return telling.tell(
          SinceTold.sheet(now, there.commit(), Opened.losing(faults), changes), opened, session);
    } catch (NoHistory none) {
      throw new Refusal(none.what(), none.mend());
    }
  }

  /** The commit that was meant. */
  private record Past(History history, Commit commit) {
    static Past of(Path root, String from) throws NoHistory {
      History history = History.of(root);
      return new Past(history, history.commit(from));
    }

    Hands hands() throws NoHistory {
      return new Hands(history.hands(commit), history.uncommitted());
    }
  }

  /** Each ledger on its own day; a commit made after the day asked for is judged by that. */
  private static Facts then(Past past, Facts now, Findings faults) throws NoHistory {
    Commit commit = past.commit();
    Tree tree = past.history().tree(commit);
    Optional<Ledger> ledger = Opened.checked(tree.ledger(faults), tree);
    if (ledger.isEmpty()) {
      throw new Refusal(
          "At " + commit.shortId() + " no file held a readable build record.",
          "Name a later day or commit.");
    }
    LocalDate day = commit.day().isAfter(now.day()) ? now.day() : commit.day();
    return Facts.of(ledger.get(), day);
  }
}

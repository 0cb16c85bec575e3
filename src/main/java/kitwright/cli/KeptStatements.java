package kitwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.finding.Findings;
import kitwright.history.Commit;
import kitwright.history.History;
import kitwright.history.NoHistory;
import kitwright.ledger.Evidence;
import kitwright.ledger.EvidenceFile;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.LedgerFolder;
import kitwright.ledger.Substitution;
import kitwright.substitution.Statement;

/** Older statements: those that sign-offs keep as files, and those that Git still has. */
record KeptStatements(LedgerFolder folder) {
  /** How many commits are looked through, the latest first. */
  private static final int MOST = 500;

  /** The text of a substitution’s statement whose digits begin so. */
  Optional<String> text(Substitution substitution, String digits) {
    return substitution.signOffs().stream()
        .flatMap(signOff -> signOff.statement().stream())
        .map(Evidence::file)
        .filter(file -> sha256(file).filter(found -> found.startsWith(digits)).isPresent())
        .findFirst()
        .flatMap(this::read);
  }

  /**
   * The same out of Git: the latest committed ledger of which a sign-off signed what makes these
   * digits. Empty where there is no history, or none of its ledgers fits.
   */
  Optional<String> past(String substitution, String digits) {
    try {
      History history = History.of(folder.root());
      List<Commit> commits = new ArrayList<>(history.commits());
      Collections.reverse(commits);
      for (Commit commit : commits.subList(0, Math.min(MOST, commits.size()))) {
        Optional<String> text =
            history
                .tree(commit)
                .ledger(new Findings())
                .flatMap(ledger -> signed(ledger, substitution, digits));
        if (text.isPresent()) {
          return text;
        }
      }
    } catch (NoHistory none) {
      return Optional.empty();
    }
    return Optional.empty();
  }

  private static Optional<String> signed(Ledger ledger, String substitution, String digits) {
    return ledger.<Substitution>find(Kind.SUBSTITUTIONS, substitution).stream()
        .flatMap(
            found -> found.signOffs().stream().map(signOff -> Statement.of(found, signOff, ledger)))
        .filter(statement -> statement.fingerprint().digits().startsWith(digits))
        .map(Statement::text)
        .findFirst();
  }

  private Optional<String> sha256(String file) {
    Map<String, EvidenceFile> found = folder.evidence(List.of(file));
    return Optional.ofNullable(found.get(file)).flatMap(EvidenceFile::sha256);
  }

  private Optional<String> read(String file) {
    try {
      return Optional.of(Files.readString(folder.root().resolve(Path.of(file))));
    } catch (IOException gone) {
      return Optional.empty();
    }
  }
}

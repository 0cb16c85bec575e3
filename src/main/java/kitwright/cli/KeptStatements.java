package kitwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.ledger.Evidence;
import kitwright.ledger.EvidenceFile;
import kitwright.ledger.LedgerFolder;
import kitwright.ledger.Substitution;

/** The statements that sign-offs keep as files. */
record KeptStatements(LedgerFolder folder) {

  /** The text of a substitution’s statement whose digits begin so. */
  Optional<String> text(Substitution substitution, String digits) {
    return substitution.signOffs().stream()
        .flatMap(signOff -> signOff.statement().stream())
        .map(Evidence::file)
        .filter(file -> sha256(file).filter(found -> found.startsWith(digits)).isPresent())
        .findFirst()
        .flatMap(this::read);
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

package kitwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitwright.ledger.Evidence;
import kitwright.ledger.EvidenceFile;
import kitwright.ledger.Ledger;
import kitwright.ledger.LedgerFolder;
import kitwright.ledger.Party;
import kitwright.ledger.Seal;
import kitwright.ledger.Substitution;
import kitwright.ledger.Substitution.SignOff;
import kitwright.substitution.Statement;
import kitwright.value.Place;

/**
 * Checks the signatures that signers' own keys made over statements, with the {@code ssh-keygen}
 * program of OpenSSH ({@code -Y verify}). Where there is none, nothing is checked and nothing is
 * good.
 *
 * @param program its name, found on the PATH
 */
record SigningKeys(String program) {
  /** What the keys sign for, so that a signature made for something else does not count here. */
  static final String NAMESPACE = "kitwright-statement";

  private static final Pattern KEY = Pattern.compile("([a-z0-9@.-]+) +([A-Za-z0-9+/=]+)( .*)?");
  private static final String SIGNER = "signer";
  private static final int SECONDS = 20;

  /** The ledger with what came of each; the same where no sign-off has such a signature. */
  Ledger checked(Ledger ledger, LedgerFolder folder) {
    Map<Place, Seal> seals = new HashMap<>();
    for (Substitution substitution : ledger.substitutions()) {
      for (SignOff signOff : substitution.signOffs()) {
        if (!signOff.signature().isEmpty()) {
          seals.put(signOff.at().record(), seal(substitution, signOff, ledger, folder));
        }
      }
    }
    return seals.isEmpty() ? ledger : ledger.sealed(seals);
  }

  private Seal seal(
      Substitution substitution, SignOff signOff, Ledger ledger, LedgerFolder folder) {
    Optional<String> key = ledger.party(signOff.by()).flatMap(Party::signingKey).flatMap(this::key);
    Optional<Path> file = present(signOff.signature().get(0), folder);
    if (key.isEmpty() || file.isEmpty()) {
      return Seal.BAD;
    }
    return verify(key.get(), file.get(), Statement.of(substitution, signOff, ledger).text());
  }

  /** Sort and key alone: what else a line may say gives rights that nobody asked for. */
  private Optional<String> key(String line) {
    Matcher parts = KEY.matcher(line.strip());
    return parts.matches() ? Optional.of(parts.group(1) + " " + parts.group(2)) : Optional.empty();
  }

  private static Optional<Path> present(Evidence piece, LedgerFolder folder) {
    EvidenceFile found =
        folder
            .evidence(List.of(piece.file()))
            .getOrDefault(
                piece.file(), new EvidenceFile(EvidenceFile.State.ABSENT, Optional.empty()));
    return found.state() == EvidenceFile.State.PRESENT
        ? Optional.of(folder.root().resolve(piece.file()))
        : Optional.empty();
  }

  private Seal verify(String key, Path signature, String text) {
    try {
      Path allowed = Files.createTempFile("kitwright", ".signers");
      Path statement = Files.createTempFile("kitwright", ".statement");
      try {
        Files.writeString(allowed, SIGNER + " namespaces=\"" + NAMESPACE + "\" " + key + "\n");
        Files.writeString(statement, text);
        return run(allowed, signature, statement);
      } finally {
        Files.deleteIfExists(allowed);
        Files.deleteIfExists(statement);
      }
    } catch (IOException absent) {
      return Seal.NOT_CHECKED;
    }
  }

  private Seal run(Path allowed, Path signature, Path statement) throws IOException {
    Process process =
        new ProcessBuilder(
                program,
                "-Y",
                "verify",
                "-f",
                allowed.toString(),
                "-I",
                SIGNER,
                "-n",
                NAMESPACE,
                "-s",
                signature.toString())
            .redirectInput(statement.toFile())
            .redirectErrorStream(true)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    try {
      if (!process.waitFor(SECONDS, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        return Seal.NOT_CHECKED;
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return Seal.NOT_CHECKED;
    }
    if (said.contains("unknown option") || said.contains("illegal option")) {
      return Seal.NOT_CHECKED; // OpenSSH before 8.1
    }
    return process.exitValue() == 0 ? Seal.GOOD : Seal.BAD;
  }
}

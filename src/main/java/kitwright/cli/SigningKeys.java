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

  /** What stands at the path of a signature, from the ledger’s folder; empty where none can be. */
  @FunctionalInterface
  interface Content {
    Optional<byte[]> at(String path);
  }

  /** The ledger with what came of each; the same where no sign-off has such a signature. */
  Ledger checked(Ledger ledger, LedgerFolder folder) {
    return checked(ledger, path -> present(path, folder));
  }

  /** The same of a ledger whose files lie elsewhere, as at a commit. */
  Ledger checked(Ledger ledger, Content content) {
    Map<Place, Seal> seals = new HashMap<>();
    for (Substitution substitution : ledger.substitutions()) {
      for (SignOff signOff : substitution.signOffs()) {
        if (!signOff.signature().isEmpty()) {
          seals.put(signOff.at().record(), seal(substitution, signOff, ledger, content));
        }
      }
    }
    return seals.isEmpty() ? ledger : ledger.sealed(seals);
  }

  private Seal seal(Substitution substitution, SignOff signOff, Ledger ledger, Content content) {
    Optional<String> key = ledger.party(signOff.by()).flatMap(Party::signingKey).flatMap(this::key);
    Optional<byte[]> signature = content.at(signOff.signature().get(0).file());
    if (key.isEmpty() || signature.isEmpty()) {
      return Seal.BAD;
    }
    return verify(key.get(), signature.get(), Statement.of(substitution, signOff, ledger).text());
  }

  /** Sort and key alone: what else a line may say gives rights that nobody asked for. */
  private Optional<String> key(String line) {
    Matcher parts = KEY.matcher(line.strip());
    return parts.matches() ? Optional.of(parts.group(1) + " " + parts.group(2)) : Optional.empty();
  }

  private static Optional<byte[]> present(String path, LedgerFolder folder) {
    EvidenceFile found =
        folder
            .evidence(List.of(path))
            .getOrDefault(path, new EvidenceFile(EvidenceFile.State.ABSENT, Optional.empty()));
    if (found.state() != EvidenceFile.State.PRESENT) {
      return Optional.empty();
    }
    try {
      return Optional.of(Files.readAllBytes(folder.root().resolve(path)));
    } catch (IOException gone) {
      return Optional.empty();
    }
  }

  private Seal verify(String key, byte[] made, String text) {
    try {
      Path allowed = Files.createTempFile("kitwright", ".signers");
      Path signature = Files.createTempFile("kitwright", ".sig");
      Path statement = Files.createTempFile("kitwright", ".statement");
      try {
        Files.writeString(allowed, SIGNER + " namespaces=\"" + NAMESPACE + "\" " + key + "\n");
        Files.write(signature, made);
        Files.writeString(statement, text);
        return run(allowed, signature, statement);
      } finally {
        Files.deleteIfExists(allowed);
        Files.deleteIfExists(signature);
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

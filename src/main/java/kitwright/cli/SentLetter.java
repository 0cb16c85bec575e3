package kitwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kitwright.ledger.Claim;
import kitwright.ledger.Evidence;
import kitwright.ledger.EvidenceFile;

/** The letter of a claim as it went out, in its own words, where its file is kept. */
final class SentLetter {
  private final Evidence file;
  private final EvidenceFile found;

  private SentLetter(Evidence file, EvidenceFile found) {
    this.file = file;
    this.found = found;
  }

  /** The letters that the record names; enclosures may be among them. */
  static List<SentLetter> of(Claim claim, Opened opened, Session session) {
    return claim.letter().stream()
        .map(piece -> new SentLetter(piece, opened.ledger(session).evidence(piece)))
        .toList();
  }

  /** Its text; empty where it cannot be read, or is no text. */
  Optional<String> text(Opened opened) {
    boolean isText = file.file().toLowerCase(Locale.ROOT).matches(".*\\.(md|txt|text|markdown)");
    if (!isText || found.state() != EvidenceFile.State.PRESENT) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          Files.readString(opened.folder().root().resolve(file.file()), StandardCharsets.UTF_8));
    } catch (IOException unreadable) {
      return Optional.empty();
    }
  }

  /** Where it lies, from the ledger’s folder. */
  String file() {
    return file.file();
  }

  /** What is to be said of it; empty where it is as it was recorded. */
  Optional<String> doubt() {
    String named = "“" + file.file() + "”";
    if (found.state() != EvidenceFile.State.PRESENT) {
      return Optional.of(
          "The letter that was sent, " + named + ", is not there or cannot be read.");
    }
    if (file.sha256().isEmpty()) {
      return Optional.of(
          named
              + " is named as the letter that was sent, but no hash was recorded: nobody can tell"
              + " whether it was changed since. “kitwright hash” prints it, to be written as"
              + " “sha256:”.");
    }
    return file.sha256().equals(found.sha256())
        ? Optional.empty()
        : Optional.of(
            named
                + " was changed after its hash was recorded: it is not, word for word, what was"
                + " sent.");
  }
}

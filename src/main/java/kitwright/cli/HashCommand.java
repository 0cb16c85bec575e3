package kitwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import kitwright.ledger.LedgerFolder;

/** Prints what to write behind {@code sha256:}. */
final class HashCommand implements Command {
  private List<String> files = List.of();

  @Override
  public void declare(Declaring to) {
    to.says(
        "Prints the SHA-256 of files, to be recorded as “sha256:” beside evidence.",
        "For example: kitwright hash evidence/crate-1.jpg");
    to.places(0, "1..*", "FILE", given -> files = given, "The files.");
  }

  @Override
  public int run(Session session) {
    for (String file : files) {
      Path path = LedgerOptions.path(session, file);
      if (Files.isDirectory(path)) {
        throw new Refusal("“" + file + "” is a folder.", "Name the files in it.");
      }
      if (!Files.isRegularFile(path)) {
        throw new Refusal("There is no file “" + file + "”.", "Check the path.");
      }
      try {
        session.say(LedgerFolder.sha256(path) + "  " + file);
      } catch (IOException broken) {
        throw new Refusal("“" + file + "” cannot be opened.", "Check who may read it.");
      }
    }
    return CLEAN;
  }
}

package kitwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.EnumSet;
import kitwright.edit.NewFiles;
import kitwright.edit.Starter;
import kitwright.history.Hooks;
import kitwright.history.NoHistory;
import kitwright.report.writing.Beside;

/** Has Git, and a forge, check the ledger. */
final class GuardCommand implements Command {
  private final LedgerOptions options = new LedgerOptions();

  @Override
  public void declare(Declaring to) {
    to.says(
        "Lays down a hook by which Git judges what is staged before each commit, and an example for"
            + " a forge. What is there already is never touched.",
        "For example: kitwright guard --ledger ledger");
    options.declare(to);
  }

  @Override
  public int run(Session session) {
    Path root = options.folder(session).root();
    try {
      hook(Hooks.of(root), session);
      NewFiles.Outcome outcome = NewFiles.write(root, Starter.guard());
      outcome.written().forEach(file -> session.say("new      " + file));
      outcome.left().forEach(file -> session.say("kept     " + file));
      return CLEAN;
    } catch (NoHistory none) {
      throw new Refusal(none.what(), none.mend());
    } catch (IOException broken) {
      throw new Refusal(
          "The hook could not be laid down (" + broken.getMessage() + ").",
          "Check the space on the disk, and who may write there.");
    }
  }

  /** A hook of somebody else’s is left, and told what to add. */
  static void hook(Hooks hooks, Session session) throws IOException {
    Path file = Files.createDirectories(hooks.folder()).resolve("pre-commit");
    String text = Starter.hook(hooks.prefix());
    if (Beside.create(file, text.getBytes(StandardCharsets.UTF_8))) {
      mayRun(file);
      session.say("new      " + file);
      return;
    }
    session.say("kept     " + file);
    if (!Files.readString(file).equals(text)) {
      String line = text.strip().lines().reduce("", (before, last) -> last);
      session.say("It is another’s. To have the ledger judged as well, write in it:");
      session.say("  " + line.replaceFirst("^exec ", "") + " || exit 1");
    }
  }

  private static void mayRun(Path file) throws IOException {
    if (Files.getFileStore(file).supportsFileAttributeView("posix")) {
      var rights = EnumSet.copyOf(Files.getPosixFilePermissions(file));
      rights.add(PosixFilePermission.OWNER_EXECUTE);
      rights.add(PosixFilePermission.GROUP_EXECUTE);
      rights.add(PosixFilePermission.OTHERS_EXECUTE);
      Files.setPosixFilePermissions(file, rights);
    }
  }
}

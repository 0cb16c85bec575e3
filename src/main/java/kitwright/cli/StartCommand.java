package kitwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import kitwright.edit.NewFiles;
import kitwright.edit.Starter;
import kitwright.history.Hooks;
import kitwright.history.NoHistory;

/** Lays out a new ledger. */
final class StartCommand implements Command {
  private final DayOption day = new DayOption();
  private String folder = "";
  private String name = "My boat";

  @Override
  public void declare(Declaring to) {
    to.says(
        "Lays out a new ledger in a folder: an example of each kind of record, a note for Git and"
            + " one for a forge.",
        "What is there already is never touched; beside records of your own no examples are laid.",
        "For example: kitwright start my-boat --name \"My boat\"");
    day.declare(to);
    to.place(0, "DIR", given -> folder = given, "The folder; it is made where there is none.");
    to.option("--name", "NAME", given -> name = given, "What the boat or the build is called.");
  }

  @Override
  public int run(Session session) {
    Path root = LedgerOptions.path(session, folder);
    if (Files.isRegularFile(root)) {
      throw new Refusal(
          "“" + folder + "” is a file.", "Name a folder, new or already there, to lay it out in.");
    }
    try {
      NewFiles.Outcome outcome =
          NewFiles.start(root, Starter.files(name, day.today(session)), Starter.frame());
      outcome.written().forEach(file -> session.say("new      " + file));
      outcome.left().forEach(file -> session.say("kept     " + file));
      guard(root, session);
      session.print(
          "\nNext: look at the examples, delete what you do not need, and run\n  kitwright check"
              + " --ledger "
              + folder
              + "\n");
      return CLEAN;
    } catch (IOException broken) {
      throw new Refusal(
          "“" + folder + "” could not be laid out (" + broken.getMessage() + ").",
          "Check the path, the space on the disk, and who may write there.");
    }
  }

  /** Where the folder lies in Git, it is guarded from the start. */
  private static void guard(Path root, Session session) throws IOException {
    try {
      GuardCommand.hook(Hooks.of(root.toAbsolutePath()), session);
    } catch (NoHistory none) {
      session.print("\nOnce it lies in Git, “kitwright guard” has each commit checked.\n");
    }
  }
}

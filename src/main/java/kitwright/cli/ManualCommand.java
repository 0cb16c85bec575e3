package kitwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import kitwright.edit.NewFiles;
import kitwright.value.Nearest;

/** Prints manual pages. */
final class ManualCommand implements Command {
  private Optional<String> word = Optional.empty();
  private Optional<String> out = Optional.empty();

  @Override
  public void declare(Declaring to) {
    to.says(
        "Prints the manual page of a command, or of the program, as “man” reads it; with --out,"
            + " writes those that are not there yet into a folder.",
        "For example: kitwright manual count");
    to.mayPlace("WORD", given -> word = Optional.of(given), "The command.");
    to.option(
        "--out",
        "DIR",
        given -> out = Optional.of(given),
        "Where to write all of them, such as ~/.local/share/man/man1.");
  }

  @Override
  public int run(Session session) {
    if (out.isPresent()) {
      return write(LedgerOptions.path(session, out.get()), session);
    }
    session.print(
        word.isEmpty()
            ? ManualPage.whole()
            : ManualPage.of(
                Commands.named(word.get())
                    .orElseThrow(
                        () ->
                            Refusal.unknown(
                                "There is no command “" + word.get() + "”.",
                                Nearest.ofWords(
                                    word.get(),
                                    Commands.all().stream().map(Commands.Word::name).toList()),
                                "“kitwright help” lists them."))));
    return CLEAN;
  }

  private static int write(Path folder, Session session) {
    Map<String, String> pages = new LinkedHashMap<>();
    pages.put("kitwright.1", ManualPage.whole());
    Commands.all()
        .forEach(each -> pages.put("kitwright-" + each.name() + ".1", ManualPage.of(each)));
    try {
      NewFiles.Outcome outcome = NewFiles.write(folder, pages);
      session.say(
          outcome.written().size() + " new, " + outcome.left().size() + " kept in " + folder);
      return CLEAN;
    } catch (IOException broken) {
      throw new Refusal(
          "The pages could not be written (" + broken.getMessage() + ").",
          "Check the path, the space on the disk, and who may write there.");
    }
  }
}

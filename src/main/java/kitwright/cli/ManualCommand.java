package kitwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import kitwright.edit.NewFiles;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints manual pages. */
@picocli.CommandLine.Command(
    name = "manual",
    description = {
      "Prints the manual page of a command, or of the program, as “man” reads it; with --out,"
          + " writes those that are not there yet into a folder.",
      "For example: kitwright manual count"
    })
final class ManualCommand implements Command {
  @Parameters(paramLabel = "WORD", arity = "0..1", description = "The command.")
  private Optional<String> word = Optional.empty();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where to write all of them, such as ~/.local/share/man/man1.")
  private Optional<String> out = Optional.empty();

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
                                word.get(),
                                Commands.all().stream().map(Commands.Word::name).toList(),
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
          "Check the path, and who may write there.");
    }
  }
}

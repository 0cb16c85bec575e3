package kitwright.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kitwright.finding.Wrapping;
import kitwright.ledger.Fault;
import kitwright.value.Nearest;
import kitwright.value.Visible;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.UsageMessageSpec;
import picocli.CommandLine.ParameterException;

/** One run of the program: finds the command, makes only that one, and answers every fault. */
final class CommandLineRun {
  /** So often a command that records is tried while others write the same file. */
  private static final int TRIES = 60;

  private final Session session;

  CommandLineRun(Session session) {
    this.session = session;
  }

  int run(String... arguments) {
    return run(arguments, TRIES);
  }

  private int run(String[] arguments, int tries) {
    try {
      return dispatch(arguments);
    } catch (Refusal refusal) {
      // Where somebody was asked, he is not asked once more behind his back.
      boolean again = refusal.isWorthAnotherTry() && tries > 1 && session.person().get().isEmpty();
      return again && paused() ? run(arguments, tries - 1) : refuse(refusal.said());
    } catch (ParameterException misused) {
      return refuse(
          Misuse.sentence(misused)
              + " See “kitwright "
              + misused.getCommandLine().getCommandName()
              + " --help”.");
    } catch (OutOfMemoryError tooMuch) {
      return refuse(
          "The ledger needs more memory than Java was given. Set KITWRIGHT_JAVA_OPTIONS=-Xmx2g and"
              + " try again.");
    } catch (RuntimeException | StackOverflowError fault) {
      return refuse(ourFault(fault));
    }
  }

  /** A little while, not the same for two runs; whether nobody wants this one to end. */
  private static boolean paused() {
    try {
      Thread.sleep(20 + ProcessHandle.current().pid() % 17 * 5);
      return true;
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private int dispatch(String[] arguments) {
    String first = arguments.length == 0 ? "--help" : arguments[0];
    switch (first) {
      case "--help", "-h", "help" -> {
        if (arguments.length > 1 && Commands.named(arguments[1]).isPresent()) {
          return dispatch(new String[] {arguments[1], "--help"});
        }
        session.print(overview());
        return Command.CLEAN;
      }
      case "--version", "-V" -> {
        session.say("kitwright " + Version.NUMBER);
        return Command.CLEAN;
      }
      default -> {
        Optional<Commands.Word> word = Commands.named(first);
        if (word.isEmpty()) {
          throw unknown(first, arguments);
        }
        return call(word.get(), Arrays.copyOfRange(arguments, 1, arguments.length));
      }
    }
  }

  private int call(Commands.Word word, String[] arguments) {
    CommandLine line = line(word, session.screen().width());
    line.parseArgs(arguments);
    if (line.isUsageHelpRequested()) {
      keepWordsWhole(line);
      session.print(line.getUsageMessage().replaceFirst("Usage: ", "Usage: kitwright "));
      return Command.CLEAN;
    }
    return line.<Command>getCommand().run(session);
  }

  /** The library breaks lines behind the full stop of a file’s name, too. */
  private static void keepWordsWhole(CommandLine line) {
    UsageMessageSpec usage = line.getCommandSpec().usageMessage();
    List<String> lines = new ArrayList<>();
    for (String told : usage.description()) {
      lines.addAll(Wrapping.at(usage.width(), told));
    }
    usage.description(lines.toArray(String[]::new));
  }

  /**
   * A command with its options, not called yet.
   *
   * @param width of its help, in columns
   */
  static CommandLine line(Commands.Word word, int width) {
    Command command = word.command();
    CommandSpec spec = CommandSpec.wrapWithoutInspection(command);
    command.declare(new Declaring(spec));
    CommandLine line =
        new CommandLine(spec)
            .setCommandName(word.name())
            .setCaseInsensitiveEnumValuesAllowed(true)
            .setUsageHelpWidth(Math.max(55, width))
            .setColorScheme(Help.defaultColorScheme(Help.Ansi.OFF));
    spec.addOption(
        CommandLine.Model.OptionSpec.builder("-h", "--help")
            .usageHelp(true)
            .description("Show this text.")
            .build());
    return line;
  }

  private String overview() {
    StringBuilder out = new StringBuilder();
    out.append("kitwright ")
        .append(Version.NUMBER)
        .append(": what the kit lacks, what it costs, what stops the work\n\n");
    Commands.all()
        .forEach(
            word ->
                out.append(String.format(Locale.ROOT, "  %-12s %s%n", word.name(), word.does())));
    return out.append(
            "\n"
                + "“kitwright help WORD” tells more. A ledger is a folder of YAML and Markdown"
                + " files in Git.\n")
        .toString();
  }

  private static Refusal unknown(String word, String[] arguments) {
    Optional<String> command =
        Arrays.stream(arguments).filter(each -> Commands.named(each).isPresent()).findFirst();
    if (word.startsWith("-") && command.isPresent()) {
      return new Refusal(
          "“" + word + "” stands before the command.",
          "Options stand behind it: kitwright " + command.get() + " " + word + " ….");
    }
    return Refusal.unknown(
        "There is no command “" + word + "”.",
        Nearest.ofWords(word, Commands.all().stream().map(Commands.Word::name).toList()),
        "“kitwright --help” lists them.");
  }

  private static String ourFault(Throwable fault) {
    StackTraceElement[] trace = fault.getStackTrace();
    String where = trace.length == 0 ? "" : " at " + trace[0];
    return "A fault of the program itself"
        + Fault.of(fault).record().map(entry -> " at the " + entry.named()).orElse("")
        + ": "
        + fault
        + where
        + ". No file was changed by it. Please report this line with the command you gave.";
  }

  private int refuse(String said) {
    session.note("kitwright: " + Visible.line(said));
    return Command.UNREADABLE;
  }
}

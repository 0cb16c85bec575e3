package kitwright.cli;

import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * A manual page in the language of “man” (roff), made from the help of a command and nothing else.
 */
final class ManualPage {
  private static final String EXAMPLE = "For example: ";

  private final StringBuilder out = new StringBuilder();

  private ManualPage() {}

  /** The page of the whole program. */
  static String whole() {
    ManualPage page = new ManualPage();
    page.begin("kitwright", "what the kit lacks, what it costs, what stops the work");
    page.section("SYNOPSIS")
        .bold("kitwright")
        .line("WORD …")
        .line("")
        .bold("kitwright help")
        .line("WORD");
    page.section("DESCRIPTION")
        .line("A ledger is a folder of YAML and Markdown files in Git. These words work on it:");
    for (Commands.Word word : Commands.all()) {
      page.out.append(".TP\n");
      page.bold(word.name()).line(word.does());
    }
    return page.end();
  }

  /** The page of a command. */
  static String of(Commands.Word word) {
    CommandLine line = CommandLineRun.line(word, 80);
    ManualPage page = new ManualPage();
    page.begin("kitwright-" + word.name(), word.does());
    page.section("SYNOPSIS").bold("kitwright " + word.name()).line("[OPTION]… " + places(line));
    page.section("DESCRIPTION");
    String example = "";
    for (String told : line.getCommandSpec().usageMessage().description()) {
      if (told.startsWith(EXAMPLE)) {
        example = told.substring(EXAMPLE.length());
      } else {
        page.line(told).out.append(".PP\n");
      }
    }
    page.section("OPTIONS");
    for (PositionalParamSpec each : line.getCommandSpec().positionalParameters()) {
      if (!each.hidden()) {
        page.argument(each.paramLabel(), each);
      }
    }
    for (OptionSpec each : line.getCommandSpec().options()) {
      String value = each.arity().max() == 0 ? "" : " " + each.paramLabel();
      page.argument(String.join(", ", each.names()) + value, each);
    }
    if (!example.isEmpty()) {
      page.section("EXAMPLE").out.append(".nf\n");
      page.line(example).out.append(".fi\n");
    }
    return page.end();
  }

  private static String places(CommandLine line) {
    StringBuilder all = new StringBuilder();
    for (PositionalParamSpec each : line.getCommandSpec().positionalParameters()) {
      if (!each.hidden()) {
        boolean may = each.arity().min() == 0;
        all.append(may ? "[" : "").append(each.paramLabel()).append(may ? "] " : " ");
      }
    }
    return all.toString().strip();
  }

  private void begin(String name, String does) {
    out.append(".TH ").append(name.toUpperCase(Locale.ROOT)).append(" 1 \"\" \"kitwright ");
    out.append(Version.NUMBER).append("\" \"Kitwright\"\n");
    section("NAME").line(name + " - " + does);
  }

  private ManualPage section(String title) {
    out.append(".SH ").append(title).append('\n');
    return this;
  }

  private ManualPage bold(String text) {
    out.append(".B ").append(escaped(text)).append('\n');
    return this;
  }

  private ManualPage line(String text) {
    out.append(text.isEmpty() ? ".br" : escaped(text)).append('\n');
    return this;
  }

  private void argument(String name, ArgSpec each) {
    out.append(".TP\n");
    bold(name).line(String.join(" ", each.description()));
  }

  private String end() {
    section("EXIT STATUS");
    line("0 where all is well, 1 where something was found that weighs enough, 2 where the ledger");
    line("or the command could not be read.");
    section("SEE ALSO");
    return out.append(".BR kitwright (1)\n").toString();
  }

  /** Hyphens that are typed, and no line that is a request by mistake. */
  private static String escaped(String text) {
    String plain = text.replace("%%", "%").replace("\\", "\\e").replace("-", "\\-");
    return plain.startsWith(".") || plain.startsWith("'") ? "\\&" + plain : plain;
  }
}

package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Help with an example for each command, and the manual pages that are made of it. */
class HelpTest {
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  static Stream<String> words() {
    return Commands.all().stream().map(Commands.Word::name);
  }

  /** As a shell would take it apart, so that what is shown can be typed. */
  private static String[] typed(String example) {
    List<String> all = new ArrayList<>();
    Matcher word =
        WORD.matcher(example.replaceFirst(" [>|] .*| or kitwright.*|, or kitwright.*", ""));
    while (word.find()) {
      all.add(word.group(1) == null ? word.group(2) : word.group(1));
    }
    return all.toArray(String[]::new);
  }

  @ParameterizedTest
  @MethodSource("words")
  void eachCommandShowsAnExampleThatItCanRead(String name) {
    var line = CommandLineRun.line(Commands.named(name).orElseThrow(), 80);
    List<String> examples =
        Stream.of(line.getCommandSpec().usageMessage().description())
            .filter(told -> told.startsWith("For example: "))
            .map(told -> told.substring("For example: ".length()).replace("%%", "%"))
            .toList();
    assertThat(examples).as(name).isNotEmpty();
    String[] words = typed(examples.get(0));
    assertThat(words).startsWith("kitwright", name);
    line.parseArgs(Stream.of(words).skip(2).toArray(String[]::new));
  }

  @ParameterizedTest
  @MethodSource("words")
  void noLineEndsWithinAWordOfTheExample(String name) {
    var line = CommandLineRun.line(Commands.named(name).orElseThrow(), 80);
    String told = String.join(" ", line.getCommandSpec().usageMessage().description());
    assertThat(Run.in(Path.of(""), name, "--help").out().split("\\s+"))
        .contains(told.replace("%%", "%").split("\\s+"));
  }

  @ParameterizedTest
  @MethodSource("words")
  void helpOfAWordIsItsHelp(String name) {
    assertThat(Run.in(Path.of(""), "help", name)).isEqualTo(Run.in(Path.of(""), name, "--help"));
  }

  @ParameterizedTest
  @MethodSource("words")
  void eachCommandHasAManualPage(String name) {
    Run page = Run.in(Path.of(""), "manual", name);
    assertThat(page.out())
        .startsWith(".TH KITWRIGHT-" + name.toUpperCase(java.util.Locale.ROOT) + " 1 ")
        .contains(".SH NAME\n", ".SH SYNOPSIS\n", ".SH OPTIONS\n", ".SH EXAMPLE\n", "\\-\\-help");
    assertThat(page.out().lines())
        .allMatch(
            line -> !line.startsWith(".") || line.matches("\\.(TH|SH|B|BR|TP|PP|br|nf|fi)( .*)?"));
  }

  @Test
  void allPagesAreWrittenAndNoneWrittenOver(@TempDir Path folder) {
    assertThat(Run.in(folder, "manual", "--out", "man1").out())
        .startsWith((Commands.all().size() + 1) + " new, 0 kept");
    assertThat(Run.in(folder, "manual", "--out", "man1").out()).startsWith("0 new, ");
    assertThat(folder.resolve("man1/kitwright.1")).content().contains("\n.B count\n");
    assertThat(Run.in(folder, "manual", "cuont").err()).contains("Did you mean “count”?");
  }
}

package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import kitwright.value.Visible;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No command hands the terminal a sign that a record hides. */
class TerminalEscapesTest {
  private static final String LEDGER =
      """
      build: {name: "T\\e[31mern", currency: EUR, started: 2026-01-05, launch: 2026-05-02}
      parties: [{id: yard, name: "Red\\e]0;x\\ashank", role: supplier}]
      materials: [{id: ash, what: "a\\e[2Jsh", kind: timber, density: 700 kg/m3, source: "s\\u202eo"}]
      kit: [{id: bolt, what: "b\\e[31molt", qty: 4, price: 3 EUR}]
      budget: [{id: hull, title: "h\\e[1mull", amount: 100 EUR}]
      deliveries: [{id: d1, from: yard, note: "n\\e[5m", received: 2026-02-01, counted: [{item: bolt, qty: 3}]}]
      shortages: [{id: s1, item: bolt, qty: 1, found: 2026-02-02, cause: damaged, line: hull, options: [{kind: buy, cost: 9 EUR, arrives: 2026-04-01, note: "x\\e[31m"}]}]
      claims: [{id: c1, against: yard, shortages: [s1], sent: 2026-02-03, reply-by: 2026-02-20, remedy: "r\\e[31m"}]
      spending: [{id: p1, on: 2026-02-01, what: "gl\\e[31mue", to: yard, amount: 250 EUR, line: hull}]
      borrowed: [{id: saw, tool: "s\\e[31maw", from: yard, on: 2026-02-01, due: 2026-03-04, condition: "f\\e[31mine"}]
      tasks: [{id: t, what: "F\\e[31mit", phase: "p\\e[31m", takes: 2 d, place: indoors, uses: [{item: bolt, qty: 4}]}]
      """;

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "open",
        "ahead",
        "budget",
        "budget --line hull",
        "kit",
        "kit bolt",
        "claim",
        "claim c1",
        "options",
        "options s1",
        "options s1 --format markdown",
        "cut",
        "materials",
        "assess",
        "week",
        "week --audience public",
        "check",
        "report --out -"
      })
  void everyCommandWritesThemOut(String words) throws IOException {
    Files.writeString(folder.resolve("all.yaml"), LEDGER);
    Run run = Run.in(folder, words.split(" ", -1));
    assertThat(run.all()).isNotEmpty();
    assertThat(run.all().codePoints().filter(c -> c != '\n')).noneMatch(Visible::isHidden);
  }

  @Test
  void aWidthIsWhatTheTerminalSaysOfItself() {
    assertThat(TerminalSize.of("24 132\n")).contains(new TerminalSize(24, 132));
    for (String other : new String[] {"", "0 0\n", "stty: no", "24", "24 12345"}) {
      assertThat(TerminalSize.of(other)).isEmpty();
    }
  }

  @Test
  void whatSomebodySetGoesBeforeWhatTheTerminalSays() {
    assertThat(width("100", true, 132)).isEqualTo(100);
    assertThat(width("", true, 132)).isEqualTo(132);
    assertThat(width("", false, 132)).isEqualTo(88);
    assertThat(width("wide", true, 0)).isEqualTo(88);
  }

  @Test
  void aScreenHoldsWhatTheTerminalHasLessCommandAndPrompt() {
    assertThat(height(true, 24)).isEqualTo(22);
    assertThat(height(true, 60)).isEqualTo(58);
    assertThat(height(true, 5)).isEqualTo(12);
    assertThat(height(false, 24)).isEqualTo(40);
  }

  private static int height(boolean terminal, int lines) {
    return Screen.of(java.util.Map.of(), terminal, () -> Optional.of(new TerminalSize(lines, 80)))
        .height();
  }

  private static int width(String columns, boolean terminal, int size) {
    return Screen.of(
            java.util.Map.of("COLUMNS", columns),
            terminal,
            () -> size == 0 ? Optional.empty() : Optional.of(new TerminalSize(24, size)))
        .width();
  }
}

package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import kitwright.finding.BriefFindings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** With which code the check ends; a ledger that cannot be read always ends with 2. */
class CheckCommandTest {
  @ParameterizedTest
  @CsvSource({
    "ledger, stop, 1",
    "ledger, warn, 1",
    "ledger, never, 0",
    "templates, never, 2",
  })
  void endsAsAsked(String folder, String failOn, int code) {
    Run run =
        Run.in(
            Path.of(""), "check", "--ledger", folder, "--today", "2026-03-29", "--fail-on", failOn);
    assertThat(run.code()).isEqualTo(code);
    assertThat(run.all()).isNotEmpty();
  }

  @Test
  void aFaultOfTheBuildHidesNoOther(@TempDir Path folder) throws IOException {
    Files.writeString(
        folder.resolve("build.yaml"),
        """
        build:
          name: Tern
          currency: EUR
          started: 2026-01-05
          climate: [{month: apr, fit: 50 %}]
        tasks:
          - {id: keel, what: Lay the keel, takes: 1 d, after: [moulds]}
        """);
    Run run = Run.in(folder, "check");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err())
        .contains("“climate” of a build has no “source”")
        .contains("reference-dangling");
    assertThat(run.err()).contains("The build record has faults").doesNotContain("Write one");
    assertThat(Run.in(folder, "ahead").code()).isEqualTo(2);
  }

  private static Run check(String... options) {
    List<String> words =
        new ArrayList<>(List.of("check", "--ledger", "ledger", "--today", "2026-03-29"));
    words.addAll(List.of(options));
    return Run.in(Path.of(""), words.toArray(String[]::new));
  }

  @Test
  void aUsualDayFitsAScreenGravestFirst() {
    String text = check().out();
    assertThat(text.lines().count()).isLessThanOrEqualTo(BriefFindings.SCREEN);
    assertThat(text.lastIndexOf("\nStop  ")).isLessThan(text.indexOf("\nWarn  "));
  }

  @Test
  void allOfItIsToldWhereAsked() {
    assertThat(check("--all").out())
        .contains("Follows: ", "Mend: ", "hold-point-near, at ", ", follows from the one above\n")
        .endsWith(
            check()
                    .out()
                    .lines()
                    .filter(line -> line.contains(" findings in "))
                    .findFirst()
                    .orElseThrow()
                + "\n");
  }

  @Test
  void oneRecordFileOrRuleIsToldInFull() {
    assertThat(check("pell-bandsaw").out())
        .startsWith("Warn: tool-overdue, at borrowed.yaml:17:10\n")
        .contains("2 findings in 2 files: 1 warn, 1 note.\n", " more elsewhere.\n");
    assertThat(check("ledger/borrowed.yaml").out()).isEqualTo(check("tool-overdue").out());
  }

  @Test
  void whatNothingHasToDoWithIsNotCalledClean() {
    Run run = check("pell-bandsaws");
    assertThat(run.out())
        .startsWith("Nothing found has to do with “pell-bandsaws”; ")
        .endsWith(" more elsewhere.\n");
    assertThat(run.code()).isEqualTo(1);
  }
}

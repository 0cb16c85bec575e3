package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A mistake on the command line is answered in plain words, and says what to write instead. */
class MisuseTest {
  @TempDir private Path folder;

  @BeforeEach
  void aBuild() throws IOException {
    Files.writeString(
        folder.resolve("build.yaml"),
        "build: {name: Sample, currency: EUR, started: 2026-01-05}\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "chek|There is no command “chek”. Did you mean “check”?",
        "--ledger . check|“--ledger” stands before the command. Options stand behind it: kitwright"
            + " check --ledger ….",
        "check --formt json|There is no option “--formt” here. Did you mean “--format”? See"
            + " “kitwright check --help”.",
        "check --xyzzy|There is no option “--xyzzy” here. See “kitwright check --help”.",
        "open extra|“extra” is a word too many. See “kitwright open --help”.",
        "check --format yaml|“yaml” cannot stand behind “--format”. Write text or json or sarif."
            + " See “kitwright check --help”.",
        "check --fail-on nothing|“nothing” cannot stand behind “--fail-on”. Write stop or warn or"
            + " note or never. See “kitwright check --help”.",
        "week --audience all|“all” cannot stand behind “--audience”. Write public or crew. See"
            + " “kitwright week --help”.",
        "cut --seconds x|“x” cannot stand behind “--seconds”. Write a whole number. See “kitwright"
            + " cut --help”.",
        "check --today|Behind “--today” stands nothing. Write --today DATE. See “kitwright check"
            + " --help”.",
        "check --today 2026-03-01 --today 2026-03-02|“--today” stands twice. Give it once. See"
            + " “kitwright check --help”.",
        "check --today tomorrow|“tomorrow” is not a date. Write year, month and day as 2026-01-31"
            + " (ISO 8601).",
        "new|It is not said which: KIND is missing. See “kitwright new --help”.",
        "start build.yaml|“build.yaml” is a file. Name a folder, new or already there, to lay it"
            + " out in.",
        "check --ledger build.yaml|“build.yaml” is a file. Name the folder that it lies in after"
            + " --ledger.",
        "ahead --late x|After --late: “x”. Write what comes late and by how much: d-second=14d.",
        "ahead --late x=-5d|After --late: nothing can be late by “-5d”. Write a time such as 14d.",
        "hash .|“.” is a folder. Name the files in it.",
        "check --ledger nowhere|There is no folder “nowhere”. Check the path after --ledger.",
      })
  void isAnsweredInPlainWords(String words, String answer) {
    Run run = Run.in(folder, words.split(" "));
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).isEqualTo("kitwright: " + answer + System.lineSeparator());
    assertThat(run.out()).isEmpty();
  }

  @Test
  void theClaimsTellHowLongTheirAnswersAreDue() throws IOException {
    Files.writeString(
        folder.resolve("claims.yaml"),
        """
        parties: [{id: tern, name: Tern, role: supplier}]
        kit: [{id: a, what: a, qty: 4}, {id: b, what: b, qty: 4}]
        shortages:
          - {id: s, item: a, qty: 1, found: 2026-02-20, cause: not-packed}
          - {id: t, item: b, qty: 1, found: 2026-02-20, cause: not-packed}
        claims:
          - {id: one, against: tern, shortages: [s], remedy: refund, sent: 2026-02-20, reply-by: 2026-03-01}
          - {id: two, against: tern, shortages: [t], remedy: refund, sent: 2026-02-20, reply-by: 2026-03-02}
          - {id: three, against: tern, shortages: [t], remedy: refund, sent: 2026-02-20, reply-by: 2026-03-03}
          - {id: four, against: tern, shortages: [t], remedy: refund, sent: 2026-02-20, events: [{on: 2026-02-27, what: answered, text: wait}]}
        """);
    assertThat(Run.in(folder, "claim").out())
        .contains("late by 1 day", "due today", "due in 1 day", "answered, no day promised");
  }
}

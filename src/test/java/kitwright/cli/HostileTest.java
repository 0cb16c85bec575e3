package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whatever a file holds, the answer is a finding with its place, never a trace, a hang or a loss.
 */
class HostileTest {
  @TempDir private Path ledger;

  @BeforeEach
  void aBuild() throws IOException {
    Files.writeString(
        ledger.resolve("build.yaml"),
        "build: {name: Sample, currency: EUR, started: 2026-01-05}\n");
  }

  static Stream<Arguments> nastyTexts() {
    return Stream.of(
        Arguments.of(
            "a tab", "kit:\n\t- {id: a, what: b, qty: 1}\n", "yaml-unreadable, at x.yaml:2:1"),
        Arguments.of("NUL", "kit:\n  - {id: a\u0000b, what: b, qty: 1}\n", "U+0000"),
        Arguments.of("alias bomb", bomb(), "yaml-not-plain"),
        Arguments.of("cyclic alias", "kit: &a\n  - *a\n", "yaml-not-plain, at x.yaml:2:5"),
        Arguments.of(
            "a Java tag",
            "kit:\n  - !!javax.script.ScriptEngineManager [x]\n",
            "yaml-not-plain, at x.yaml:2:5"),
        Arguments.of("deep nesting", "kit:\n  - " + "[".repeat(10_000), "nesting is deeper"),
        Arguments.of("deep block nesting", "kit:\n" + deepBlocks(), "nesting is deeper"),
        Arguments.of(
            "huge exponent",
            "kit:\n  - {id: a, what: b, qty: 10^400}\n",
            "value-unreadable, at x.yaml:2:27"),
        Arguments.of(
            "exponent",
            "kit:\n  - {id: a, what: b, qty: 1e9}\n",
            "value-unreadable, at x.yaml:2:27"),
        Arguments.of(
            "very long number",
            "kit:\n  - {id: a, what: b, qty: " + "9".repeat(400) + "}\n",
            "value-unreadable, at x.yaml:2:27"),
        Arguments.of(
            "not a number",
            "kit:\n  - {id: a, what: b, qty: NaN}\n",
            "value-unreadable, at x.yaml:2:27"),
        Arguments.of(
            "YAML's not a number",
            "kit:\n  - {id: a, what: b, qty: .nan}\n",
            "value-unreadable, at x.yaml:2:27"),
        Arguments.of("negative quantity", "kit:\n  - {id: a, what: b, qty: -4 m}\n", "is negative"),
        Arguments.of(
            "year 0",
            "deliveries:\n  - {id: a, received: 0000-01-01, from: b}\n",
            "year 0 cannot be right"),
        Arguments.of(
            "year 9999",
            "deliveries:\n  - {id: a, received: 9999-01-01, from: b}\n",
            "year 9999 cannot be right"),
        Arguments.of(
            "31 June",
            "deliveries:\n  - {id: a, received: 2026-06-31, from: b}\n",
            "not a day of the calendar"),
        Arguments.of(
            "comma for a point",
            "spending:\n"
                + "  - {id: a, on: 2026-01-05, line: l, what: w, state: paid, amount: '46,20"
                + " EUR'}\n",
            "comma in the number"),
        Arguments.of(
            "right-to-left id",
            "kit:\n  - {id: \"a\u202eb\", what: b, qty: 1}\n",
            "invisible character"),
        Arguments.of("a file of words", "dear diary\n", "x.yaml:1:1"),
        Arguments.of("a list", "- {id: a}\n", "x.yaml:1:1"),
        Arguments.of(
            "a decimal comma in brackets",
            "kit:\n  - {id: a, what: b, qty: 11,4 m}\n",
            "Write a decimal with a full stop: qty: 11.4 m"),
        Arguments.of(
            "a comma for thousands in brackets",
            "budget:\n  - {line: a, title: b, amount: 1,250 EUR}\n",
            "amount: 1250 EUR; or a decimal"),
        Arguments.of(
            "a comma for thousands and a point in brackets",
            "budget:\n  - {line: a, title: b, amount: 1,250.00 EUR}\n",
            "nothing between: amount: 1250.00 EUR"),
        Arguments.of(
            "no colon",
            "deliveries:\n  - id: a\n    received 2026-01-05\n    from: b\n",
            "yaml-unreadable, at x.yaml:3:5"),
        Arguments.of(
            "no space behind a colon",
            "deliveries:\n  - id: a\n    received:2026-01-05\n    from: b\n",
            "a colon and a space are missing"),
        Arguments.of("an open bracket", "kit:\n  - {id: a, what: b\n", "yaml-unreadable"),
        Arguments.of("an open quote", "kit:\n  - {id: a, what: \"b\n", "yaml-unreadable"),
        Arguments.of("a list as key", "kit:\n  - {[a, b]: c}\n", "yaml-not-plain"),
        Arguments.of(
            "a group as a value",
            "kit:\n  - {id: a, what: {b: c}, qty: 1}\n",
            "value-unreadable, at x.yaml:2:20"),
        Arguments.of("a value as a record", "kit:\n  - stave\n", "value-unreadable, at x.yaml:2:5"),
        Arguments.of("a directive", "%YAML 9.9\n---\nkit: []\n", "x.yaml"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("nastyTexts")
  void isAnsweredWithPlaceAndRemedy(String name, String text, String expected) throws IOException {
    Files.writeString(ledger.resolve("x.yaml"), text);
    Run run = check();
    assertThat(run.code()).isBetween(1, 2);
    assertThat(run.out()).contains(expected).contains("Mend:");
    assertThatNothingBroke(run);
  }

  /** A day of the log that lost its first line must not vanish without a word. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "day: 2026-03-01\nhours: {}\n---\nwords\n",
        "\n---\nday: 2026-03-01\n---\nwords\n",
        "--\nhours: {}\nday: 2026-03-01\n---\nwords\n",
        " ---\nday: 2026-03-01\n---\nwords\n",
        "\u2014-\nday: 2026-03-01\n---\nwords\n"
      })
  void aLogDayWithoutItsFirstLineIsMissed(String text) throws IOException {
    Files.writeString(ledger.resolve("day.md"), text);
    Run run = check();
    assertThat(run.out()).contains("yaml-unreadable, at day.md:1:1", "three hyphens");
  }

  @Test
  void markdownThatIsNoLogDayIsLeftAlone() throws IOException {
    Files.writeString(
        ledger.resolve("notes.md"), "# Notes\n\nA log starts with\n\n---\nday: 2026-03-01\n---\n");
    assertThat(check().out()).contains("Nothing found.");
  }

  @ParameterizedTest
  @MethodSource("harmlessTexts")
  void isReadWithoutAWord(String name, String text) throws IOException {
    Files.writeString(ledger.resolve("x.yaml"), text);
    assertThat(check().out()).isEqualTo("Nothing found.\n");
  }

  static Stream<Arguments> harmlessTexts() {
    return Stream.of(
        Arguments.of("only comments", "# nothing yet\n\n# still nothing\n"),
        Arguments.of("an empty kind", "kit:\n"),
        Arguments.of(
            "a byte order mark",
            "\uFEFFrates:\n  - {on: 2026-01-20, from: NZD, to: EUR, rate: 0.54321}\n"),
        Arguments.of(
            "CRLF", "rates:\r\n  - {on: 2026-01-20, from: NZD, to: EUR, rate: 0.54321}\r\n"),
        Arguments.of(
            "quotes",
            "'rates':\n  - {\"on\": '2026-01-20', from: \"NZD\", to: EUR, rate: '0.54321'}\n"));
  }

  @Test
  void everyFaultOfEveryFileIsToldAtOnce() throws IOException {
    Files.writeString(
        ledger.resolve("a.yaml"),
        "kit:\n  - {id: a, qty: 1}\n  - {id: b, what: w, qty: 1 furlong}\n");
    Files.writeString(ledger.resolve("b.yaml"), "kiit:\n  - {id: c, what: w, qty: 1}\n");
    assertThat(check().out())
        .contains("a.yaml:2:10")
        .contains("a.yaml:3:27")
        .contains("b.yaml:1:1")
        .contains("Did you mean “kit”?");
  }

  @Test
  void aFileThatIsNotUtf8IsNamedWithThePlace() throws IOException {
    Files.write(
        ledger.resolve("x.yaml"),
        "kit:\n  - {id: a, what: Bö, qty: 1}\n".getBytes(StandardCharsets.ISO_8859_1));
    assertThat(check().out())
        .contains("file-unreadable, at x.yaml:2:")
        .contains("Save the file as UTF-8");
  }

  @Test
  void utf16IsNamed() throws IOException {
    Files.write(ledger.resolve("x.yaml"), "\uFEFFkit: []\n".getBytes(StandardCharsets.UTF_16LE));
    assertThat(check().out()).contains("UTF-16");
  }

  @Test
  void aFileOf200MegabytesIsPassedOverWithoutBeingRead() throws IOException {
    try (RandomAccessFile file = new RandomAccessFile(ledger.resolve("x.yaml").toFile(), "rw")) {
      file.setLength(200L << 20);
    }
    assertThat(check().out()).contains("The file has 200 MiB");
  }

  @Test
  void linksAreNotFollowedAndLoopsDoNotHang() throws IOException {
    Files.createSymbolicLink(ledger.resolve("loop"), ledger);
    Files.createSymbolicLink(ledger.resolve("out.yaml"), Path.of("/etc/hostname"));
    Files.createSymbolicLink(ledger.resolve("self.yaml"), Path.of("self.yaml"));
    Run run = check();
    assertThat(run.out()).contains("out.yaml").contains("self.yaml").contains("link-not-followed");
    assertThatNothingBroke(run);
  }

  @Test
  void aFolderNamedLikeAFileIsReadAsAFolder() throws IOException {
    Files.createDirectory(ledger.resolve("x.yaml"));
    Files.writeString(
        ledger.resolve("x.yaml/in.yaml"), "kit:\n  - {id: a, what: b, quanttity: 1}\n");
    assertThat(check().out()).contains("x.yaml/in.yaml:2:10").contains("This is a folder");
  }

  @Test
  void evidenceOutsideTheLedgerIsNotOpened() throws IOException {
    Files.createSymbolicLink(ledger.resolve("secret.png"), Path.of("/etc/hostname"));
    Files.writeString(
        ledger.resolve("x.yaml"),
        """
        deliveries:
          - {id: a, from: b, evidence: [{file: ../../etc/passwd}, {file: /etc/passwd}, {file: secret.png}, {file: "a\\0b"}]}
        """);
    Run run = check();
    assertThat(run.out())
        .contains("“../../etc/passwd” lies outside")
        .contains("“/etc/passwd” lies outside")
        .contains("“secret.png” lies outside");
    assertThatNothingBroke(run);
  }

  @Test
  void invisibleAndReversingCharactersAreShownEscaped() throws IOException {
    Files.writeString(
        ledger.resolve("x.yaml"), "kit:\n  - {id: a, what: \"b\u202e\u0007c\", qtty: 1}\n");
    assertThat(check().all()).doesNotContain("\u202e").doesNotContain("\u0007");
  }

  @Test
  void lineSeparatorsOfUnicodeDoNotShiftPlaces() throws IOException {
    Files.writeString(
        ledger.resolve("x.yaml"),
        "# one\u2028two\u0085three\nkit:\n  - {id: a, what: \"b\", qtty: 1}\n");
    assertThat(check().out()).contains("x.yaml:3:24");
  }

  @Test
  void withoutABuildTheFaultsAndTheRemedyAreTold() throws IOException {
    Files.writeString(
        ledger.resolve("build.yaml"),
        "build: {name: Sample, currency: Euro, started: 2026-01-05}\n");
    Run run = check();
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err())
        .contains("“Euro” is not a currency of ISO 4217")
        .contains("holds a readable build record");
  }

  private Run check() {
    return Run.in(ledger, "check", "--all", "--ledger", ".", "--fail-on", "note");
  }

  private static void assertThatNothingBroke(Run run) {
    assertThat(run.all())
        .doesNotContain("Exception")
        .doesNotContain("\tat ")
        .doesNotContain("fault of the program");
  }

  private static String bomb() {
    StringBuilder text = new StringBuilder("kit:\n  - &a0 [x, x]\n");
    for (int i = 1; i < 30; i++) {
      text.append("  - &a")
          .append(i)
          .append(" [*a")
          .append(i - 1)
          .append(", *a")
          .append(i - 1)
          .append("]\n");
    }
    return text.toString();
  }

  private static String deepBlocks() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 200; i++) {
      text.append(" ".repeat(i + 1)).append("k:\n");
    }
    return text.toString();
  }
}

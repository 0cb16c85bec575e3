package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitwright.OutsideProgram;
import kitwright.ledger.LedgerFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Statements as a builder and a signer handle them, with files and with Git. */
class FingerprintIT {
  private static final String LEDGER =
      """
      build: {name: Sample, currency: EUR, started: 2026-01-05, launch: 2026-09-26}
      parties:
        - {id: office, name: A. Osterlund, role: designer, may-sign: [finish]}
        - {id: nora, name: Nora, role: builder, may-sign: [finish]}
        - {id: ivo, name: Ivo, role: helper}
      substitutions:
        - id: sub
          instead-of: {what: cabin trim, qty: 3 m}
          grade: finish
          why: oak is here and dry
      """;
  private static final String SIGNED =
      "    sign-offs: [{by: office, on: 2026-02-12, covers: %s%s}]\n";

  @TempDir private Path folder;

  private void write(String ledger) throws IOException {
    Files.writeString(folder.resolve("ledger.yaml"), ledger);
  }

  private Run fingerprint(String... arguments) {
    return Run.in(
        folder,
        java.util.stream.Stream.concat(
                java.util.stream.Stream.of("fingerprint", "--ledger", "."),
                java.util.stream.Stream.of(arguments))
            .toArray(String[]::new));
  }

  private String digits(String by) {
    Matcher line = Pattern.compile("^([0-9a-f]{64})  sub").matcher(fingerprint("--by", by).out());
    assertThat(line.find()).isTrue();
    return line.group(1);
  }

  @Test
  void whoeverMaySignIsShownWithTheirOwnDigits() throws IOException {
    write(LEDGER);
    assertThat(fingerprint().out().lines().toList())
        .hasSize(2)
        .anyMatch(line -> line.endsWith("  sub, to be signed by A. Osterlund"))
        .anyMatch(line -> line.endsWith("  sub, to be signed by Nora"));
    assertThat(digits("office")).isNotEqualTo(digits("nora"));
    assertThat(fingerprint("--by", "ivo").out()).contains("for Ivo, who may not sign it");
    assertThat(fingerprint("--by", "offise").all()).contains("There is no party “offise”");
  }

  @Test
  void theDigitsAreOfExactlyTheTextAboveTheLine() throws IOException {
    write(LEDGER);
    String printed = fingerprint("sub", "--by", "office", "--statement").out();
    Files.writeString(
        folder.resolve("above.txt"), printed.substring(0, printed.indexOf("\n-----\n")));
    assertThat(LedgerFolder.sha256(folder.resolve("above.txt"))).isEqualTo(digits("office"));
    assertThat(printed).contains("\n-----\n", digits("office"), "Files cannot prove who wrote");
  }

  @Test
  void aFileThatIsThereIsNotWrittenOver() throws IOException {
    write(LEDGER);
    Files.writeString(folder.resolve("kept.txt"), "mine");
    Run run = fingerprint("sub", "--by", "office", "--out", "kept.txt");
    assertThat(run.code()).isEqualTo(2);
    assertThat(Files.readString(folder.resolve("kept.txt"))).isEqualTo("mine");
    assertThat(fingerprint("sub", "--out", "both.txt").all()).contains("--by PARTY");
  }

  @Test
  void whatHasChangedIsToldFromTheTextThatWasKept() throws IOException {
    write(LEDGER);
    String digits = digits("office");
    fingerprint("sub", "--by", "office", "--out", "kept.txt");
    String signed = LEDGER + SIGNED.formatted(digits, ", statement: kept.txt");
    write(signed);
    assertThat(fingerprint("sub", "--since", digits).out()).contains("nothing has changed");
    write(signed.replace("qty: 3 m", "qty: 4 m").replace("oak is", "ash is"));
    assertThat(fingerprint("sub", "--since", digits.substring(0, 12)).out())
        .contains("Substitution sub, why was \"oak is here and dry\", is \"ash is here and dry\"")
        .contains("Instead of, quantity was 3 m, is 4 m");
  }

  @Test
  void whatHasChangedIsToldFromGitWhereNoTextWasKept() throws Exception {
    OutsideProgram.needed("git", "git");
    write(LEDGER);
    String digits = digits("office");
    String signed = LEDGER + SIGNED.formatted(digits, "");
    write(signed);
    git("init", "-q");
    git("add", "--all");
    git("-c", "user.name=N", "-c", "user.email=n@example.org", "commit", "-q", "-m", "signed");
    write(signed.replace("qty: 3 m", "qty: 4 m"));
    assertThat(fingerprint("sub", "--since", digits.substring(0, 12)).out())
        .contains("Instead of, quantity was 3 m, is 4 m");
    Run none = fingerprint("sub", "--since", "0123456789ab");
    assertThat(none.code()).isEqualTo(2);
    assertThat(none.err()).contains("Neither the ledger nor Git keeps a statement of sub");
  }

  private void git(String... arguments) throws Exception {
    ProcessBuilder builder = new ProcessBuilder("git").directory(folder.toFile());
    builder.command().addAll(List.of(arguments));
    Process process = builder.redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(said).isZero();
  }
}

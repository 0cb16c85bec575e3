package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitwright.OutsideProgram;
import kitwright.finding.Findings;
import kitwright.ledger.Ledger;
import kitwright.ledger.LedgerFolder;
import kitwright.ledger.Seal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Statements signed with real keys, by ssh-keygen of OpenSSH. */
class SigningKeysIT {
  private static final String LEDGER =
      """
      build: {name: Sample, currency: EUR, started: 2026-01-05, launch: 2026-09-26}
      parties:
        - {id: office, name: A. Osterlund, role: designer, may-sign: [finish], signing-key: "%s"}
        - {id: nora, name: Nora, role: builder, may-sign: [finish]}
      substitutions:
        - id: sub
          instead-of: {what: cabin trim, qty: 3 m}
          grade: finish
          why: oak is here and dry
          sign-offs:
            - {by: office, on: 2026-02-12, covers: %s, signature: statement.txt.sig}
      """;

  private static final String NO_DIGITS = "0".repeat(12);

  @TempDir private Path folder;

  @BeforeEach
  void keysAreMade() throws Exception {
    OutsideProgram.needed("ssh-keygen", "openssh-client");
    keygen("-q", "-t", "ed25519", "-N", "", "-C", "office", "-f", "office");
    keygen("-q", "-t", "ed25519", "-N", "", "-C", "other", "-f", "other");
  }

  private void keygen(String... arguments) throws Exception {
    ProcessBuilder builder = new ProcessBuilder("ssh-keygen").directory(folder.toFile());
    builder.command().addAll(java.util.List.of(arguments));
    Process process = builder.redirectErrorStream(true).start();
    String said =
        new String(
            process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(said).isZero();
  }

  private void write(String ledger) throws IOException {
    Files.writeString(folder.resolve("ledger.yaml"), ledger);
  }

  private String key(String name) throws IOException {
    return Files.readString(folder.resolve(name + ".pub")).strip();
  }

  /** The ledger with the digits of its statement, which lies beside it as a file. */
  private String prepared() throws IOException {
    write(LEDGER.formatted(key("office"), NO_DIGITS));
    Run run =
        Run.in(
            folder,
            "fingerprint",
            "sub",
            "--by",
            "office",
            "--out",
            "statement.txt",
            "--ledger",
            ".");
    assertThat(run.code()).as(run.all()).isZero();
    Matcher digits = Pattern.compile("(?m)^([0-9a-f]{64})  sub").matcher(run.out());
    assertThat(digits.find()).isTrue();
    assertThat(LedgerFolder.sha256(folder.resolve("statement.txt"))).isEqualTo(digits.group(1));
    String ledger = LEDGER.formatted(key("office"), digits.group(1));
    write(ledger);
    return ledger;
  }

  private void sign(String key, String namespace) throws Exception {
    Files.deleteIfExists(folder.resolve("statement.txt.sig"));
    keygen("-q", "-Y", "sign", "-f", key, "-n", namespace, "statement.txt");
  }

  private String check() {
    return Run.in(folder, "check", "--all", "--ledger", ".").all();
  }

  @Test
  void aSignatureOfTheSignersOwnKeyOverTheStatementIsGood() throws Exception {
    prepared();
    sign("office", "kitwright-statement");
    assertThat(check()).isEqualTo("Nothing found.\n");
  }

  @Test
  void aSignatureOfAnotherKeyIsForged() throws Exception {
    prepared();
    sign("other", "kitwright-statement");
    assertThat(check()).contains("signature-forged").doesNotContain("signature-unchecked");
  }

  @Test
  void aSignatureMadeForSomethingElseIsForged() throws Exception {
    prepared();
    sign("office", "file");
    assertThat(check()).contains("signature-forged");
  }

  @Test
  void aSignatureOverAnotherTextIsForged() throws Exception {
    prepared();
    Files.writeString(folder.resolve("statement.txt"), "another text\n");
    sign("office", "kitwright-statement");
    assertThat(check()).contains("signature-forged");
  }

  @Test
  void aFileThatIsNoSignatureIsForged() throws Exception {
    prepared();
    Files.writeString(folder.resolve("statement.txt.sig"), "yes, I signed this\n");
    assertThat(check()).contains("signature-forged");
  }

  @Test
  void whoHasAKeySignsWithIt() throws Exception {
    String ledger = prepared();
    sign("office", "kitwright-statement");
    write(ledger.replace(", signature: statement.txt.sig", ""));
    assertThat(check()).contains("signature-without-key");
  }

  @Test
  void whoWasRemovedSignsNothing() throws Exception {
    String ledger = prepared();
    sign("office", "kitwright-statement");
    write(ledger.replaceFirst("  - \\{id: office.*\n", ""));
    assertThat(check()).contains("signer-not-entitled", "signature-stale");
  }

  @Test
  void aChangeAfterTheKeySignedIsAStaleSignature() throws Exception {
    String ledger = prepared();
    sign("office", "kitwright-statement");
    write(ledger.replace("qty: 3 m", "qty: 4 m"));
    assertThat(check()).contains("signature-stale");
  }

  @Test
  void anotherUnitAfterTheKeySignedChangesNothing() throws Exception {
    String ledger = prepared();
    sign("office", "kitwright-statement");
    write(ledger.replace("qty: 3 m", "qty: 300 cm"));
    assertThat(check()).isEqualTo("Nothing found.\n");
  }

  @Test
  void whatAKeyLineSaysBesideItsKeyGivesNoRights() throws Exception {
    String ledger = prepared();
    sign("other", "kitwright-statement");
    String other = key("other");
    write(ledger.replace(key("office"), key("office") + "\\nsigner " + other));
    assertThat(check()).contains("signature-forged");
    write(ledger.replace(key("office"), "cert-authority " + other));
    assertThat(check()).contains("signature-forged");
  }

  /** What is staged, and what stood at a commit, is signed as much as what lies in the folder. */
  @Test
  void aSignatureOfAKeyCountsInEveryTellingOfThePast() throws Exception {
    OutsideProgram.needed("git", "git");
    prepared();
    sign("office", "kitwright-statement");
    git("init", "-q");
    git("add", "--all");
    git("-c", "user.name=x", "-c", "user.email=x@x.example", "commit", "-qm", "Signed");
    assertThat(told("check --all --staged --today 2026-03-02")).isEqualTo("Nothing found.\n");
    assertThat(told("since HEAD --today 2026-03-02")).contains("nothing changed");
    assertThat(told("history unsigned").replaceAll("\\s+", " "))
        .containsPattern("20\\d\\d-\\S+ 0 ");
  }

  private String told(String words) {
    return Run.in(folder, words.split(" ", -1)).all();
  }

  private void git(String... words) throws Exception {
    ProcessBuilder builder = new ProcessBuilder("git").directory(folder.toFile());
    builder.command().addAll(java.util.List.of(words));
    Process process = builder.redirectErrorStream(true).start();
    String said =
        new String(
            process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(said).isZero();
  }

  @Test
  void whereTheProgramIsAbsentNothingIsGood() throws Exception {
    prepared();
    sign("office", "kitwright-statement");
    LedgerFolder there = LedgerFolder.at(folder);
    Ledger read = there.read(new Findings()).orElseThrow();
    assertThat(seal(new SigningKeys("ssh-keygen").checked(read, there))).isEqualTo(Seal.GOOD);
    assertThat(seal(new SigningKeys("no-such-program").checked(read, there)))
        .isEqualTo(Seal.NOT_CHECKED);
    assertThat(seal(read)).as("nobody has looked").isEqualTo(Seal.NOT_CHECKED);
  }

  private static Seal seal(Ledger ledger) {
    return ledger.seal(ledger.substitutions().get(0).signOffs().get(0));
  }
}

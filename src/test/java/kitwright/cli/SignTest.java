package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A signature is recorded once its statement was read, and only where it counts. */
class SignTest {
  private static final String LEDGER =
      """
      build: {name: S, currency: EUR, started: 2026-01-05}
      parties:
        - {id: me, name: Nora, role: builder, may-sign: [finish]}
        - {id: ann, name: Ann, role: designer, may-sign: [structural, systems, finish]}
        - {id: pell, name: Pell, role: lender}
      substitutions:
        - id: paint
          instead-of: {what: the drawn paint, qty: 1 l}
          why: it is here
          grade: finish
          proposed: {by: me, on: 2026-03-01}
        - id: rail
          instead-of: {what: the drawn rail, qty: 1}
          why: it is here
          grade: structural
          proposed: {by: me, on: 2026-03-01}
      """;

  @TempDir private Path root;

  @BeforeEach
  void write() throws IOException {
    Files.writeString(root.resolve("all.yaml"), LEDGER);
    Files.writeString(root.resolve("letter.txt"), "yes");
  }

  @Test
  void theStatementIsShownInWordsAndSignedByYes() throws IOException {
    Run run = Run.asked(root, "ann\nperhaps\nyes\n", "sign", "paint", "--evidence", "letter.txt");
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .contains("Kitwright statement", "why: \"it is here\"", "signer: \"Ann\" (ann), designer")
        .contains("Write yes or no.");
    assertThat(Run.in(root, "signed", "--help").code()).isZero();
    assertThat(Run.in(root, "fingerprint", "paint").out()).contains("signed by Ann");
    assertThat(Run.in(root, "fingerprint", "paint").out()).doesNotContain("does not count");
  }

  @Test
  void whoMayNotSignIsRefused() throws IOException {
    refused("signed by somebody not entitled", "sign", "paint", "--by", "pell");
    refused("no assessment", "sign", "rail", "--by", "ann", "--evidence", "letter.txt");
    refused("signed by its own proposer", "sign", "rail", "--by", "me");
    refused("There is no substitution “rial”. Did you mean “rail”?", "sign", "rial", "--by", "ann");
    refused("there is no party “anne”", "sign", "paint", "--by", "anne");
  }

  @Test
  void whoMaySignIsToldByTheIdsToWrite() throws IOException {
    assertThat(asked(LEDGER, "paint"))
        .contains("Write --by PARTY; may sign: me (Nora), ann (Ann).");
    String signed =
        LEDGER.replaceFirst(
            "(?s)(finish\\n.*?03-01}\\n)", "$1    sign-offs: [{by: ann, on: 2026-03-02}]\n");
    assertThat(asked(signed, "paint"))
        .contains("Write --by PARTY for another signature; it is released already.");
    assertThat(asked(LEDGER.replace("[structural, systems, finish]", "[]"), "rail"))
        .contains("; no party of the ledger is entitled, as its “may-sign” would say.");
  }

  private String asked(String ledger, String substitution) throws IOException {
    Files.writeString(root.resolve("all.yaml"), ledger);
    return Run.in(root, "sign", substitution).err();
  }

  @Test
  void withoutATerminalTheDigitsThatWereReadStandForTheAnswer() throws IOException {
    Run shown = Run.in(root, "sign", "paint", "--by", "ann");
    assertThat(shown.code()).isEqualTo(2);
    assertThat(shown.err()).contains("Nobody has said that Ann signs");
    String digits = shown.err().replaceAll("(?s).*--covers ([0-9a-f]{12})\\..*", "$1");
    refused(
        "is not the one of “aaaaaaaaaaaa”",
        "sign",
        "paint",
        "--by",
        "ann",
        "--covers",
        "aaaaaaaaaaaa");
    refused("is not the one", "sign", "paint", "--by", "ann", "--covers", digits.substring(0, 4));
    assertThat(Run.in(root, "sign", "paint", "--by", "ann", "--covers", digits).err()).isEmpty();
    assertThat(Files.readString(root.resolve("all.yaml"))).contains("covers: " + digits);
  }

  @Test
  void aNoAndAnEndOfTheInputRecordNothing() throws IOException {
    assertThat(Run.asked(root, "no\n", "sign", "paint", "--by", "ann").err())
        .contains("Ann has not signed");
    assertThat(Run.asked(root, "", "sign", "paint", "--by", "ann").err())
        .contains("Nothing was recorded");
    assertThat(root.resolve("all.yaml")).hasContent(LEDGER);
  }

  /** Another assessment would void what was signed: that is nobody’s by-the-way. */
  @Test
  void anAssessmentIsTiedToItsSubstitutionAndNeverInPlaceOfAnother() throws IOException {
    String[] words = {"calculate", "rail", "--method", "external", "--by", "ann", "--id", "rail-a"};
    assertThat(Run.in(root, words).err()).isEmpty();
    assertThat(Files.readString(root.resolve("all.yaml"))).contains("assessment: rail-a");
    words[7] = "rail-b";
    assertThat(Run.in(root, words).err()).contains("names its assessment already, at all.yaml:");
    assertThat(root.resolve("assessments/rail-b.yaml")).doesNotExist();
  }

  private void refused(String why, String... words) throws IOException {
    Run run = Run.in(root, words);
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains(why);
    assertThat(root.resolve("all.yaml")).hasContent(LEDGER);
  }
}

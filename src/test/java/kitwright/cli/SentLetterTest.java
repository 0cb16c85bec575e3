package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import kitwright.ledger.LedgerFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What was sent is what was sent: its file is printed byte for byte, whatever is recorded later.
 */
class SentLetterTest {
  private static final String LEDGER =
      """
      build: {name: S, currency: EUR, started: 2026-01-05}
      parties: [{id: yard, name: Y, role: supplier}]
      kit: [{id: plank, what: larch, qty: 4, price: 20}]
      deliveries: [{id: d1, received: 2026-02-20, from: yard, counted: [{item: plank, qty: 3}]}]
      shortages: [{id: s1, item: plank, qty: 1, found: 2026-02-20, cause: not-packed}]
      claims:
        - {id: c1, against: yard, shortages: [s1], remedy: replacement, sent: 2026-02-24%s}
      """;

  @TempDir private Path root;
  private String hash = "";

  @BeforeEach
  void sendIt() throws IOException {
    write("");
    assertThat(claim("2026-02-24", "--out", "letters").code()).isZero();
    hash = LedgerFolder.sha256(root.resolve("letters/claim-c1.md"));
    write(", letter: {file: letters/claim-c1.md, sha256: " + hash + "}");
  }

  private void write(String letter) throws IOException {
    Files.writeString(root.resolve("all.yaml"), LEDGER.formatted(letter));
  }

  private Run claim(String day, String... more) {
    String[] words = new String[4 + more.length];
    words[0] = "claim";
    words[1] = "c1";
    words[2] = "--today";
    words[3] = day;
    System.arraycopy(more, 0, words, 4, more.length);
    return Run.in(root, words);
  }

  @Test
  void itsBytesArePrintedOnEveryLaterDayWhateverIsRecordedSince() throws IOException {
    String sent = Files.readString(root.resolve("letters/claim-c1.md"));
    assertThat(sent).contains("| larch   |").isNotEqualTo("");
    String later =
        Files.readString(root.resolve("all.yaml"))
            .replace("remedy: replacement", "remedy: refund, costs: [buy]")
            .replace("price: 20", "price: 35");
    Files.writeString(
        root.resolve("all.yaml"),
        later
            + "spending: [{id: buy, on: 2026-02-25, line: l, what: plank, amount: 31, state: paid,"
            + " replaces: s1}]\n");
    for (String day : new String[] {"2026-02-24", "2026-02-25", "2026-03-30", "2026-09-01"}) {
      Run run = claim(day);
      assertThat(run.out()).isEqualTo(sent);
      assertThat(run.err()).doesNotContain("changed");
    }
    assertThat(claim("2026-03-30", "--since").out()).contains("cost of replacement");
  }

  /** A letter written before it is recorded as sent is the letter that is sent, to the byte. */
  @Test
  void whatIsWrittenBeforeItIsRecordedIsWhatIsSent() throws IOException {
    String draft =
        LEDGER.replace(", sent: 2026-02-24%s", "").replace("remedy: replacement", "remedy: credit");
    Files.writeString(root.resolve("all.yaml"), draft);
    Run written = claim("2026-02-24", "--out", "post");
    assertThat(written.err()).contains("kitwright send c1 --letter …/claim-c1.md");
    String letter = Files.readString(root.resolve("post/claim-c1.md"));
    assertThat(letter.replace("\u00a0", " "))
        .doesNotContain("draft")
        .contains("Please answer by Tue 10 March 2026.");
    assertThat(
            Run.in(root, "send", "c1", "--letter", "post/claim-c1.md", "--today", "2026-02-24")
                .code())
        .isZero();
    assertThat(Files.readString(root.resolve("all.yaml"))).contains("reply-by: 2026-03-10");
    assertThat(claim("2026-04-01").out()).isEqualTo(letter);
  }

  @Test
  void aClaimOfWhatCannotBeReadIsNotRecordedAsSent() throws IOException {
    String spoilt =
        LEDGER.replace(", sent: 2026-02-24%s", "").replace("qty: 1, found", "qty: some, found");
    Files.writeString(root.resolve("all.yaml"), spoilt);
    Run sent = Run.in(root, "send", "c1", "--today", "2026-02-24");
    assertThat(sent.code()).isEqualTo(Command.UNREADABLE);
    assertThat(sent.err()).contains("leaves out what cannot be read or is not there: “s1”.");
    assertThat(Files.readString(root.resolve("all.yaml"))).isEqualTo(spoilt);
    assertThat(claim("2026-02-24").err()).contains("leaves out");
  }

  @Test
  void writingItAgainLeavesTheFileAndItsHash() throws IOException {
    Run again = claim("2026-03-30", "--out", "letters");
    assertThat(again.code()).isZero();
    assertThat(again.out()).contains("as it was letters/claim-c1.md");
    assertThat(LedgerFolder.sha256(root.resolve("letters/claim-c1.md"))).isEqualTo(hash);
  }

  @Test
  void aFileThatWasChangedSinceIsToldWithIt() throws IOException {
    Files.writeString(root.resolve("letters/claim-c1.md"), "We ask for two.\n");
    Run run = claim("2026-03-02");
    assertThat(run.out()).isEqualTo("We ask for two.\n");
    assertThat(run.err()).contains("“letters/claim-c1.md” was changed after its hash was recorded");
  }

  @Test
  void aFileThatIsGoneIsToldAndTheLetterWorkedOutAnew() throws IOException {
    Files.delete(root.resolve("letters/claim-c1.md"));
    Run run = claim("2026-03-02");
    assertThat(run.err()).contains("is not there");
    assertThat(run.out()).contains("| larch   |");
  }

  @Test
  void withoutAHashNobodyCanTellAndWithoutAFileItIsWorkedOut() throws IOException {
    write(", letter: letters/claim-c1.md");
    assertThat(claim("2026-03-02").err()).contains("no hash was recorded");
    write("");
    assertThat(claim("2026-03-02").err()).contains("No file is kept of what was sent");
  }
}

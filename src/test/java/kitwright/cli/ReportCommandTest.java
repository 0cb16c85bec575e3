package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reports as a builder asks for them. */
class ReportCommandTest {
  @TempDir private Path ledger;

  @BeforeEach
  void startALedger() {
    assertThat(Run.in(ledger, "start", ".", "--name", "Dabchick").code()).isZero();
  }

  @Test
  void aNewLedgerIsCleanAndReportsAtOnce() {
    assertThat(Run.in(ledger, "check").out()).isEqualTo("Nothing found.\n");
    Run run = Run.in(ledger, "report");
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(ledger.resolve("reports/budget.md")).content().startsWith("# Dabchick");
  }

  @Test
  void startingAgainTouchesNothing() throws IOException {
    Files.writeString(
        ledger.resolve("build.yaml"), "build: {name: Mine, currency: NZD, started: 2026-01-05}\n");
    Run run = Run.in(ledger, "start", ".");
    assertThat(run.out()).doesNotContain("build.yaml");
    assertThat(ledger.resolve("build.yaml")).content().contains("Mine");
  }

  @Test
  void theSameLedgerOnTheSameDayGivesTheSameBytes() throws IOException {
    Run.in(ledger, "report");
    String first = all();
    assertThat(Run.in(ledger, "report").out()).contains("as it was").doesNotContain("written ");
    assertThat(all()).isEqualTo(first);
  }

  @Test
  void aFileOfTheBuildersOwnIsNotReplacedUnlessForced() throws IOException {
    Files.createDirectories(ledger.resolve("reports"));
    Files.writeString(ledger.resolve("reports/budget.md"), "my own notes\n");
    Run run = Run.in(ledger, "report", "budget");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("document-not-written").contains("--force");
    assertThat(ledger.resolve("reports/budget.md")).hasContent("my own notes\n");
    assertThat(Run.in(ledger, "report", "budget", "--force").code()).isZero();
    assertThat(ledger.resolve("reports/budget.md")).content().startsWith("# Dabchick");
  }

  @Test
  void whatIsLackingIsSaidInWhateverIsSentOn() throws IOException {
    Files.writeString(ledger.resolve("x.yaml"), "spending: [{id: s, amount: lots}]\n");
    Files.writeString(ledger.resolve("y.txt"), "kit: []\n");
    Files.createDirectories(ledger.resolve("templates"));
    Files.writeString(ledger.resolve("templates/open.md"), "No heading.\n");
    Run.in(ledger, "report", "budget");
    assertThat(ledger.resolve("reports/budget.md"))
        .content()
        .contains("# Dabchick: the money\n\n> 6 faults in the ledger’s files; what follows lacks");
    assertThat(Run.in(ledger, "budget", "--format", "html").out()).contains("what follows lacks");
    assertThat(Run.in(ledger, "budget", "--format", "json").out())
        .contains("\"lacks\": \"6 faults");
    assertThat(Run.in(ledger, "open", "--format", "markdown").out())
        .startsWith("> 6 faults")
        .contains("\n\nNo heading.");
    assertThat(Run.in(ledger, "week", "--public").out()).doesNotContain("faults");
    Run text = Run.in(ledger, "budget");
    assertThat(text.out()).as("who sees the terminal sees both").doesNotContain("faults");
    assertThat(text.err()).contains("6 faults");
  }

  @Test
  void aTemplateOfTheLedgersOwnTakesThePlaceOfTheBuiltInOne() throws IOException {
    Files.createDirectories(ledger.resolve("templates"));
    Files.writeString(ledger.resolve("templates/budget.md"), "Money, my way.\n");
    assertThat(Run.in(ledger, "report", "budget", "--out", "-").out())
        .startsWith("Money, my way.\n");
  }

  @Test
  void aBrokenTemplateIsNamedWithItsLineAndWritesNothing() throws IOException {
    Files.createDirectories(ledger.resolve("templates"));
    Files.writeString(ledger.resolve("templates/budget.md"), "# Mine\n\n{{no-such-thing}}\n");
    Run run = Run.in(ledger, "report", "budget");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("template-broken, at templates/budget.md:3:1").contains("Mend:");
    assertThat(ledger.resolve("reports")).doesNotExist();
  }

  @Test
  void anUnknownReportIsAnsweredWithTheNearest() {
    assertThat(Run.in(ledger, "report", "budgte").err())
        .isEqualTo("kitwright: There is no report “budgte”. Did you mean “budget”?\n");
  }

  @Test
  void aRecordIsBegunInAFileOfItsOwn() {
    Run run = Run.in(ledger, "new", "shortage", "keel bolts", "item=plank", "qty=1");
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(ledger.resolve("shortages/short-2026-03-02-keel-bolts.yaml")).exists();
    assertThat(Run.in(ledger, "new", "shortage", "x", "itme=plank").err())
        .contains("Did you mean “item”?");
    assertThat(Run.in(ledger, "new", "shortgae").err()).contains("Did you mean “shortage”?");
  }

  private String all() throws IOException {
    try (Stream<Path> files = Files.list(ledger.resolve("reports"))) {
      StringBuilder text = new StringBuilder();
      for (Path file : files.sorted().toList()) {
        text.append(file.getFileName()).append('\n').append(Files.readString(file));
      }
      return text.toString();
    }
  }
}

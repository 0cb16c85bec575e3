package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import kitwright.edit.Deed;
import kitwright.edit.Deeds;
import kitwright.ledger.LedgerFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is not said is asked at a terminal, and refused in one line elsewhere. */
class DeedsAskedTest {
  private static final String LEDGER =
      """
      build: {name: S, currency: EUR, started: 2026-01-05}
      parties:
        - {id: yard, name: Yard, role: supplier}
        - {id: pell, name: Pell, role: lender}
        - {id: me, name: Nora, role: builder}
      budget:
        - {line: hull, title: The hull, amount: 900}
        - {line: tools, title: Tools, amount: 100}
      kit:
        - {id: plank, what: larch plank, qty: 4}
        - {id: bolt, what: bolt M12, qty: 12, crate: C1}
        - {id: rope, what: rope, qty: 26 m}
      deliveries: [{id: d1, from: yard}]
      tasks: [{id: glue, what: Glue, takes: 1 d}]
      shortages: [{id: s1, item: plank, qty: 1, found: 2026-02-20, cause: damaged}]
      spending:
        - {id: o1, on: 2026-02-01, line: hull, what: two planks, amount: 40 EUR, to: yard, state: ordered}
      """;

  @TempDir private Path root;

  @BeforeEach
  void write() throws IOException {
    Files.writeString(root.resolve("all.yaml"), LEDGER);
    Files.writeString(root.resolve("photo.jpg"), "a photo");
  }

  @Test
  void whatIsMissingIsAskedWithItsChoicesAndWrongAnswersAgain() throws IOException {
    Run run = Run.asked(root, "oak\n46,20\n46.20\n7\n1\n\n\n\n\n", "buy");
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .contains("1  hull  The hull")
        .contains("A comma in the number “46,20”. Write 46.20.")
        .contains("There is no budget line “7”. Name one of: hull, tools;");
    assertThat(root.resolve("spending/spend-2026-03-02-oak.yaml"))
        .hasContent(
            """
            spending:
              - id: spend-2026-03-02-oak
                on: 2026-03-02
                line: hull
                what: oak
                amount: 46.20
                state: paid
            """);
    reads();
  }

  @Test
  void onlyWhatIsMissingIsAsked() {
    Run run = Run.asked(root, "", "buy", "oak", "46.20", "EUR", "--line", "hull");
    assertThat(run.code()).isZero();
    assertThat(run.out()).startsWith("new      spending/spend-2026-03-02-oak.yaml");
  }

  @Test
  void anInputThatEndsRecordsNothing() throws IOException {
    Run run = Run.asked(root, "oak\n", "buy");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("The answers ended before all was said. Nothing was recorded.");
    assertThat(files()).containsExactly("all.yaml", "photo.jpg");
  }

  static Stream<Deed> deeds() {
    return Deeds.all().stream();
  }

  @ParameterizedTest
  @MethodSource("deeds")
  void inAPipeEveryDeedSaysInOneLineWhatIsMissing(Deed deed) throws IOException {
    Run run = Run.in(root, deed.word());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err().lines()).hasSize(1);
    assertThat(run.err()).containsAnyOf("It is not said", "Nothing is said");
    assertThat(files()).containsExactly("all.yaml", "photo.jpg");
  }

  @ParameterizedTest
  @MethodSource("deeds")
  void whoTypesNothingAtAllRecordsNothing(Deed deed) throws IOException {
    Run run = Run.asked(root, "\n".repeat(60), deed.word());
    assertThat(run.code()).as(run.all()).isEqualTo(2);
    assertThat(files()).containsExactly("all.yaml", "photo.jpg");
  }

  @Test
  void aPaymentTakesFromItsOrderWhatTheOrderSays() throws IOException {
    assertThat(Run.in(root, "pay", "o1", "15 EUR").code()).isZero();
    assertThat(Run.asked(root, "\n\n\n", "pay", "o1").all()).contains("[25.00 EUR]");
    assertThat(Files.readString(root.resolve("spending/spend-2026-03-02-two-planks-b.yaml")))
        .contains("what: two planks", "to: yard", "amount: 25.00 EUR", "pays: o1");
    reads();
  }

  @Test
  void evidenceGetsItsHashAndMustLieInTheLedger() throws IOException {
    String sha = LedgerFolder.sha256(root.resolve("photo.jpg"));
    assertThat(
            Run.in(root, "short", "bolt", "2", "--cause", "wrong", "--evidence", "gone.jpg").err())
        .contains("there is no file “gone.jpg” in the ledger’s folder")
        .contains("Copy it there first");
    assertThat(
            Run.in(root, "short", "bolt", "2", "--cause", "wrong", "--evidence", "photo.jpg").err())
        .isEmpty();
    assertThat(Files.readString(root.resolve("shortages/short-2026-03-02-bolt.yaml")))
        .contains("evidence: [{file: photo.jpg, sha256: " + sha + "}]");
    reads();
  }

  @Test
  void aClaimIsBegunLineByLineAgainstTheOnlySupplier() throws IOException {
    Run.in(root, "short", "bolt", "2", "--cause", "wrong");
    Run run =
        Run.in(
            root,
            "demand",
            "s1",
            "short-2026-03-02-bolt,qty=1,remedy=refund",
            "--remedy",
            "replacement");
    assertThat(run.err()).isEmpty();
    assertThat(Files.readString(root.resolve("claims/claim-2026-03-02-plank.yaml")))
        .isEqualTo(
            """
            claims:
              - id: claim-2026-03-02-plank
                against: yard
                shortages: [{shortage: s1}, {shortage: short-2026-03-02-bolt, qty: 1, remedy: refund}]
                remedy: replacement
                reply-by: 2026-03-16
            """);
    reads();
  }

  @Test
  void aDayOfTheLogIsBegunAndAddedTo() throws IOException {
    Run.in(root, "log", "--hours", "me=5", "--used", "item=plank,qty=1", "--words", "Rain.");
    Run again = Run.in(root, "log", "--hours", "me=6");
    assertThat(again.out()).contains("In place of the 5 hours of me that the day told before");
    assertThat(Run.in(root, "log", "--hours", "me=5").out()).contains("In place of the 6 hours");
    Run run = Run.in(root, "log", "--hours", "pell=2", "--tasks", "glue=40 %", "--words", "Sun.");
    assertThat(run.out()).doesNotContain("In place of");
    assertThat(run.err()).isEmpty();
    assertThat(root.resolve("log/2026-03-02.md"))
        .hasContent(
            """
            ---
            day: 2026-03-02
            hours: {me: 5, pell: 2}
            used: [{item: plank, qty: 1}]
            tasks: {glue: 40 %}
            ---
            Rain.

            Sun.
            """);
    reads();
  }

  @Test
  void aDayIsToldInTheDialogueToo() throws IOException {
    Run run =
        Run.asked(root, "me\n5.5\n\n1\n40 %\n\nyes\nplank\n2\n1\nno\nno\nRain.\nSun.\n\n", "log");
    assertThat(run.err()).isEmpty();
    assertThat(root.resolve("log/2026-03-02.md"))
        .hasContent(
            """
            ---
            day: 2026-03-02
            hours: {me: 5.5}
            tasks: {glue: 40 %}
            used: [{item: plank, qty: 2, task: glue}]
            ---
            Rain.
            Sun.
            """);
  }

  @Test
  void aCountTellsTheRunningShortfallAndEndsWithShortagesAndTheClaim() throws IOException {
    Run run =
        Run.asked(root, "3\n8 1 1\n24\nyes\nphoto.jpg\nyes\n\nno\nyes\n\nyes\n\n", "count", "d1");
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .contains("1 × plank short; 1 of 1 items so far.")
        .contains("6 × bolt short; 2 of 2 items so far.")
        .contains("2 m of rope short; 3 of 3 items so far.");
    assertThat(Files.readString(root.resolve("all.yaml")))
        .contains(
            "received: 2026-03-02, counted: [{item: plank, qty: 3}, {item: bolt, qty: 8, damaged:"
                + " 1, wrong: 1}, {item: rope, qty: 24 m}]");
    assertThat(files()).contains("claims/claim-2026-03-02-count.yaml");
    reads();
  }

  @Test
  void aCountKeepsWhatWasCountedWhenTheInputEnds() throws IOException {
    Run run = Run.asked(root, "4\n12 kg\n", "count", "d1");
    assertThat(run.out()).contains("“12 kg” is no count, as the promise is");
    assertThat(Files.readString(root.resolve("all.yaml")))
        .contains("counted: [{item: plank, qty: 4}]");
  }

  @Test
  void aCountInAScriptRecordsShortagesAndClaimWhereAsked() throws IOException {
    Run run =
        Run.in(
            root,
            "count",
            "d1",
            "bolt=8,damaged=1",
            "--shortages",
            "--claim",
            "--photo",
            "photo.jpg");
    assertThat(run.err()).isEmpty();
    assertThat(files())
        .containsExactly(
            "all.yaml",
            "claims/claim-2026-03-02-count.yaml",
            "photo.jpg",
            "shortages/short-2026-03-02-bolt-damaged.yaml",
            "shortages/short-2026-03-02-bolt-not-packed.yaml");
    assertThat(Files.readString(root.resolve("claims/claim-2026-03-02-count.yaml")))
        .contains(
            "against: yard", "[short-2026-03-02-bolt-damaged, short-2026-03-02-bolt-not-packed]");
    reads();
  }

  @Test
  void aDeliveryThatNobodyRecordedIsBegunByItsCount() throws IOException {
    assertThat(Run.in(root, "count", "d9", "bolt=12", "--from", "yard").err()).isEmpty();
    assertThat(root.resolve("deliveries/d9.yaml"))
        .hasContent(
            """
            deliveries:
              - id: d9
                received: 2026-03-02
                from: yard
                counted: [{item: bolt, qty: 12}]
            """);
    reads();
  }

  @Test
  void printingWritesNothing() throws IOException {
    Run run = Run.in(root, "count", "d1", "bolt=8", "--shortages", "--print");
    assertThat(run.out())
        .contains("# all.yaml\n", "# shortages/short-2026-03-02-bolt-not-packed.yaml\n");
    assertThat(files()).containsExactly("all.yaml", "photo.jpg");
  }

  private List<String> files() throws IOException {
    try (Stream<Path> all = Files.walk(root)) {
      return all.filter(Files::isRegularFile)
          .map(f -> root.relativize(f).toString())
          .sorted()
          .toList();
    }
  }

  private void reads() {
    assertThat(Run.in(root, "check", "--fail-on", "never").out())
        .doesNotContain("unreadable", "unknown", "dangling");
  }
}

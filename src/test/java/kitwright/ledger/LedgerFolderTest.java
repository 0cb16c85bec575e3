package kitwright.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which files on disk are a ledger, and where one is looked for. */
class LedgerFolderTest {
  private static final String BUILD = "build: {name: Wherry, currency: EUR, started: 2026-01-05}\n";

  @TempDir private Path root;
  private final Findings faults = new Findings();

  @Test
  void filesAreReadInOrderOfTheirPathsWhateverTheFolders() throws IOException {
    write("z.yaml", "kit: [{id: last, what: w, qty: 1}]\n");
    write("b/c/d.yml", "kit: [{id: second, what: w, qty: 1}]\n");
    write("b/a.yaml", BUILD + "kit: [{id: first, what: w, qty: 1}]\n");
    assertThat(read().kit()).extracting(KitItem::id).containsExactly("first", "second", "last");
    assertThat(faults.inOrder()).isEmpty();
  }

  @Test
  void aRecordThatMovesToAnotherFileStaysTheSameButForItsPlace() throws IOException {
    write("build.yaml", BUILD);
    write("a.yaml", "kit: [{id: stem, what: w, qty: 1}]\nstock: [{id: ash, what: w, qty: 2 m}]\n");
    Ledger before = read();
    Files.delete(root.resolve("a.yaml"));
    write("wood/ash.yaml", "stock:\n  - id: ash\n    qty: 2 m\n    what: w\n");
    write("kit/stem.yaml", "kit:\n  - what: w\n    qty: 1\n    id: stem\n");
    Ledger after = read();
    assertThat(after.kit().get(0))
        .usingRecursiveComparison()
        .ignoringFieldsOfTypes(At.class)
        .isEqualTo(before.kit().get(0));
    assertThat(after.stock().get(0))
        .usingRecursiveComparison()
        .ignoringFieldsOfTypes(At.class)
        .isEqualTo(before.stock().get(0));
    assertThat(after.stock().get(0).at()).hasToString("wood/ash.yaml:2:9");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        ".hidden/x.yaml",
        ".git/x.yaml",
        ".x.yaml",
        "reports/x.yaml",
        "deep/reports/x.yaml",
        "templates/x.yaml",
        "node_modules/x.yaml",
        "target/x.yaml",
        "x.yaml.bak",
        "x.txt"
      })
  void whatIsNoPartOfTheLedgerIsPassedOver(String path) throws IOException {
    write("build.yaml", BUILD);
    write(path, "nonsense: [");
    assertThat(LedgerFolder.at(root).files(faults))
        .extracting(SourceFile::path)
        .containsExactly("build.yaml");
    assertThat(faults.inOrder()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "log/2026-05-21.MD",
        "spending.txt",
        "spending.yaml.txt",
        "spending",
        "Kit.YAML",
        "log/day.markdown",
        "log/2026-05-21.md",
        "2026-05-21-launch.md",
        "spending.yaml ",
        "spending.yam",
        "spending.json",
        "reports/spending.yaml",
        "deep/templates/more/spending.yml"
      })
  void whatLooksLikeRecordsAndIsNotReadIsTold(String path) throws IOException {
    write("build.yaml", BUILD);
    write(path, "spending:\n  - {id: a}\n");
    read();
    assertThat(faults.inOrder()).extracting(Finding::rule).containsExactly("file-passed-over");
    assertThat(faults.inOrder().get(0).at().file()).isEqualTo(path);
  }

  @ParameterizedTest
  @CsvSource({
    "Log/2026-05-21.MD, Log/2026-05-21.md",
    "Kit of Parts.YAML, Kit of Parts.yaml",
    "kit.yaml.txt, kit.yaml",
    "kit.YML.TXT, kit.YML.yaml",
    "kit, kit.yaml",
    "v1.2/kit, v1.2/kit.yaml",
    "day.markdown, day.md"
  })
  void theNameThatIsOfferedDiffersInItsEndingOnly(String path, String better) throws IOException {
    write(path, "kit: []\n");
    write("build.yaml", BUILD);
    read();
    assertThat(faults.inOrder().get(0).mend()).startsWith("Rename it to “" + better + "”");
    Files.move(root.resolve(path), root.resolve(better));
    assertThat(LedgerFolder.at(root).files(new Findings()))
        .extracting(SourceFile::path)
        .contains(better);
  }

  @Test
  void noNameIsOfferedThatIsTaken() throws IOException {
    write("build.yaml", BUILD);
    write("kit.yaml", "kit: []\n");
    write("kit.yaml.txt", "kit: []\n");
    read();
    assertThat(faults.inOrder().get(0).mend()).contains("“kit.yaml” is there already");
  }

  @Test
  void aFileInWhichNothingStandsIsTold() throws IOException {
    write("build.yaml", BUILD);
    write("kit.yaml", " \n\n");
    write("tasks.yaml", "# none yet\n");
    read();
    assertThat(faults.inOrder())
        .extracting(finding -> finding.at().file() + ": " + finding.what())
        .containsExactly("kit.yaml: Nothing stands in it.");
  }

  @Test
  void aDayOfTheLogWithoutKeysIsToldTheDayOfItsName() throws IOException {
    write("build.yaml", BUILD);
    write("log/2026-05-21.md", "Swept.\n");
    read();
    assertThat(faults.inOrder().get(0).mend()).contains("“day: 2026-05-21”");
  }

  @Test
  void whatIsPassedOverHoldsWhatItNames() throws IOException {
    write("build.yaml", BUILD);
    write("stock.yaml", STOCK);
    write("cuts.YAML", "cuts: [{from: [oak]}]");
    assertThat(read().unreadTakers("oak"))
        .containsExactly("cuts.YAML, which names it, cannot be read");
    assertThat(read().unreadTakers("ash")).isEmpty();
  }

  @Test
  void aLinkedFileHoldsAllUnlessItIsReadByItself() throws IOException {
    write("build.yaml", BUILD);
    write("stock.yaml", STOCK);
    Files.createSymbolicLink(root.resolve("again.yaml"), root.resolve("stock.yaml"));
    assertThat(read().unreadTakers("oak")).isEmpty();
    Files.createSymbolicLink(root.resolve("gone.yaml"), root.resolve("nowhere.yaml"));
    assertThat(read().unreadTakers("oak"))
        .containsExactly("gone.yaml, which may name it, cannot be read");
  }

  @ParameterizedTest
  @ValueSource(strings = {"evidence/crate.jpg", "Makefile", "notes.txt", "log/README.md", "a.csv"})
  void whatDoesNotLookLikeRecordsIsNotTold(String path) throws IOException {
    write("build.yaml", BUILD);
    write(path, "what to buy: nails\n");
    read();
    assertThat(faults.inOrder()).isEmpty();
  }

  @Test
  void aLinkedFolderAndALinkedTemplateAreTold() throws IOException {
    write("build.yaml", BUILD);
    write("elsewhere/target/x.yaml", "kit: []\n");
    Files.createSymbolicLink(root.resolve("kit"), root.resolve("elsewhere/target"));
    write("elsewhere/week.txt", "{{what}}\n");
    Files.createDirectories(root.resolve("templates"));
    Files.createSymbolicLink(root.resolve("templates/week.md"), root.resolve("elsewhere/week.txt"));
    read();
    assertThat(faults.inOrder())
        .extracting(finding -> finding.rule() + " " + finding.at())
        .containsExactly("link-not-followed kit", "link-not-followed templates/week.md");
    assertThat(faults.inOrder().get(0).what()).contains("link to a folder");
  }

  @Test
  void anUnfinishedMergeIsNamedAsSuch() throws IOException {
    write("build.yaml", BUILD);
    write(
        "kit.yaml",
        """
        kit:
          - id: a
            what: bolt
        <<<<<<< HEAD
            qty: 4
        =======
            qty: 5
        >>>>>>> other
        """);
    read();
    assertThat(faults.inOrder().get(0).what()).startsWith("A merge of two branches");
    assertThat(faults.inOrder().get(0).at()).hasToString("kit.yaml:4:1");
  }

  @Test
  void aRootThatIsHiddenItselfIsRead() throws IOException {
    write(".boat/build.yaml", BUILD);
    assertThat(LedgerFolder.at(root.resolve(".boat")).read(faults)).isPresent();
  }

  @Test
  void aByteOrderMarkIsNoPartOfTheText() throws IOException {
    write("build.yaml", "\uFEFF" + BUILD);
    write("log/d.md", "\uFEFF---\nday: 2026-01-06\nhours: {nora: 2}\n---\nSwept.\n");
    Ledger ledger = read();
    assertThat(ledger.build().at()).hasToString("build.yaml:1:9");
    assertThat(ledger.log()).hasSize(1);
  }

  @Test
  void aFolderNamedLedgerIsMeantFirst() throws IOException {
    write("build.yaml", BUILD);
    write("ledger/build.yaml", BUILD);
    assertThat(LedgerFolder.near(root).map(LedgerFolder::root)).contains(root.resolve("ledger"));
  }

  @Test
  void elseTheNearestFolderUpwardWithABuild() throws IOException {
    write("build.yaml", BUILD);
    write("barn/build.yml", BUILD);
    write("barn/tasks/hull/x.yaml", "tasks: []\n");
    assertThat(LedgerFolder.near(root.resolve("barn/tasks/hull")).map(LedgerFolder::root))
        .contains(root.resolve("barn"));
    Files.createDirectory(root.resolve("yard"));
    assertThat(LedgerFolder.near(root.resolve("yard")).map(LedgerFolder::root)).contains(root);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"\uFEFF" + BUILD, "{build: {name: B}}", "\"build\": {name: B}", "build : x"})
  void aBuildBeginsALineHoweverItIsWritten(String text) throws IOException {
    write("b.yaml", text);
    assertThat(LedgerFolder.near(root).map(LedgerFolder::root)).contains(root);
  }

  /** Whoever is sent to begin a ledger there would have two. */
  @Test
  void whatNobodyMayOpenCanBeTheBuild() throws IOException {
    write("b.yaml", BUILD);
    Path file = root.resolve("b.yaml");
    org.junit.jupiter.api.Assumptions.assumeTrue(
        file.toFile().setReadable(false) && !Files.isReadable(file), "may read everything");
    assertThat(LedgerFolder.near(root).map(LedgerFolder::root)).contains(root);
  }

  @Test
  void aBuildInACommentOrInsideAnotherRecordIsNone() throws IOException {
    write("a.yaml", "# build: none\nparties:\n  - build: no\n");
    assertThat(LedgerFolder.near(root).map(LedgerFolder::root))
        .isNotEqualTo(java.util.Optional.of(root));
  }

  private static final String STOCK =
      "stock: [{id: oak, what: oak, qty: 5 m}]\nparties: [{id: me, name: Me, role: builder}]\n";

  private List<String> doubts(byte[] other) throws IOException {
    write("build.yaml", BUILD);
    write("stock.yaml", STOCK);
    Files.write(root.resolve("more.yaml"), other);
    Ledger ledger = LedgerFolder.at(root).read(faults).orElseThrow();
    return ledger.unreadTakers("oak");
  }

  /** What it holds nobody knows: it may take of anything. */
  @Test
  void aFileThatCannotBeOpenedHoldsAllThatItMayName() throws IOException {
    byte[] utf16 = "cuts: []".getBytes(StandardCharsets.UTF_16);
    assertThat(doubts(utf16)).containsExactly("more.yaml, which may name it, cannot be read");
  }

  @Test
  void oneThatIsNotWhollyUtf8HoldsWhatItNames() throws IOException {
    Charset latin = StandardCharsets.ISO_8859_1;
    assertThat(doubts("# for Bjørn: oak".getBytes(latin)))
        .containsExactly("more.yaml, which names it, cannot be read");
    assertThat(doubts("# for Bjørn: ash".getBytes(latin))).isEmpty();
  }

  @Test
  void aFileWithoutPermissionIsUnopened() throws IOException {
    write("a.yaml", STOCK);
    Path file = root.resolve("a.yaml");
    assumeTrue(file.toFile().setReadable(false, false));
    assumeFalse(Files.isReadable(file), "the superuser reads all");
    assertThat(LedgerFolder.at(root).files(faults))
        .singleElement()
        .satisfies(each -> assertThat(each.opened()).isFalse());
  }

  @Test
  void aFolderThatIsNotThereIsAFault() {
    assertThat(LedgerFolder.at(root.resolve("gone")).files(faults)).isEmpty();
    assertThat(faults.inOrder())
        .singleElement()
        .satisfies(fault -> assertThat(fault.what()).isEqualTo("It is not there."));
  }

  @Test
  void theBuildsCurrencyHoldsForFilesThatStandBeforeIt() throws IOException {
    write("a.yaml", "budget: [{line: hull, title: Hull, amount: 460}]\n");
    write("z.yaml", "parties: []\nbuild: {name: Wherry, currency: JPY, started: 2026-01-05}\n");
    assertThat(read().budget().get(0).amount()).hasToString("460 JPY");
  }

  private Ledger read() {
    return LedgerFolder.at(root).read(faults).orElseThrow();
  }

  private void write(String path, String text) throws IOException {
    Path file = root.resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }
}

package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import kitwright.finding.Findings;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.LedgerFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lists as they are sent become records; the same list again makes no doubles. */
class ImportTest {
  private static final String COLUMNS = "Bezeichnung=what,Menge=qty,Preis=price,Nr=id";

  @TempDir private Path root;

  @BeforeEach
  void write() throws IOException {
    Files.writeString(
        root.resolve("build.yaml"), "build: {name: S, currency: EUR, started: 2026-01-05}\n");
  }

  @Test
  void aPackingListWithDecimalCommasInAnOldCodePage() throws IOException {
    list(
        """
        Nr;Bezeichnung;Menge;Preis\r
        K1;Lärchenbohle, 22 mm;4,5 m;11,40 EUR/m\r
        K2;Bolzen;12;0,80\r
        """,
        Charset.forName("windows-1252"));
    Run run = Run.in(root, "import", "kit", "list.csv", "--columns", COLUMNS);
    assertThat(run.all()).contains("2 new, 0 changed, 0 as they were, 0 refused.");
    assertThat(run.code()).isZero();
    KitItem plank = ledger().kit().get(0);
    assertThat(plank.what()).isEqualTo("Lärchenbohle, 22 mm");
    assertThat(plank.qty()).hasToString("4.5 m");
    assertThat(plank.price().orElseThrow()).hasToString("11.40 EUR/m");
  }

  @Test
  void theSameListAgainMakesNoDoublesAndAnotherChangesOnlyWhatDiffers() throws IOException {
    list("id,what,qty\nK1,bolt,12\nK2,nut,400 cm\n", StandardCharsets.UTF_8);
    Run.in(root, "import", "kit", "list.csv");
    assertThat(Run.in(root, "import", "kit", "list.csv").out())
        .isEqualTo("0 new, 0 changed, 2 as they were, 0 refused.\n");
    list("id,what,qty\nK1,bolt,14\nK2,nut,400 cm\nK3,key,1\n", StandardCharsets.UTF_16);
    assertThat(Run.in(root, "import", "kit", "list.csv").out())
        .contains("1 new, 1 changed, 1 as they were, 0 refused.");
    assertThat(ledger().kit())
        .extracting(item -> item.id() + " " + item.qty())
        .containsExactlyInAnyOrder("K1 14 each", "K2 400 cm", "K3 1 each");
  }

  @Test
  void rowsThatCannotBeReadAreToldWithTheirNumberAndTheOthersTaken() throws IOException {
    list(
        "id,what,qty\nK1,bolt,many\nK2\nK3,nut,4\nK3,nut,5\n,,7\nK4,\"a\nb\",1\n",
        StandardCharsets.UTF_8);
    Run run = Run.in(root, "import", "kit", "list.csv");
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err().lines())
        .satisfiesExactly(
            row -> assertThat(row).startsWith("refused  row 2: “many” is not a quantity"),
            row -> assertThat(row).startsWith("refused  row 3: it has 1 cells where 3 are needed"),
            row -> assertThat(row).startsWith("refused  row 5: “K3” stands in row 4 already"),
            row -> assertThat(row).startsWith("refused  row 6: the row has no id"));
    assertThat(ledger().kit()).extracting(KitItem::id).containsExactly("K3", "K4");
  }

  /** A unit in a column of its own is joined to its number; what is not taken is told. */
  @Test
  void columnsNamedForOneKeyAreJoinedAndTheOthersTold() throws IOException {
    list(
        "Nr;What;Menge;Einheit;Preis;Waehrung;Gewicht\nK1;resin;4,5;kg;21,00;NZD;5\n",
        StandardCharsets.UTF_8);
    Run run =
        Run.in(
            root,
            "import",
            "kit",
            "list.csv",
            "--columns",
            "Nr=id,Menge=qty,Einheit=qty,Preis=price,Waehrung=price");
    assertThat(run.all()).contains("Columns left out: Gewicht.", "1 new");
    KitItem resin = ledger().kit().get(0);
    assertThat(resin.qty()).hasToString("4.5 kg");
    assertThat(resin.price().orElseThrow()).hasToString("21.00 NZD");
  }

  @Test
  void twoColumnsOfOneTitleAreNotJoinedUnasked() throws IOException {
    list("id,what,qty,Qty\nK1,bolt,12,13\n", StandardCharsets.UTF_8);
    Run run = Run.in(root, "import", "kit", "list.csv", "--columns", "Qty=qty");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("Two columns hold “qty”");
  }

  @Test
  void aThousandIsNoOneAndAQuarterInAListOfDecimalCommas() throws IOException {
    list(
        "Nr;Bezeichnung;Menge;Preis\nK1;Leine;12,5 m;3\nK2;Schraube;1.250;0,08\nK3;Harz;1,250"
            + " kg;9\nK4;Kitt;0,250 kg;1.204,50\n",
        StandardCharsets.UTF_8);
    Run run = Run.in(root, "import", "kit", "list.csv", "--columns", COLUMNS);
    assertThat(run.out()).contains("2 new, 0 changed, 0 as they were, 2 refused.");
    assertThat(run.err())
        .contains(
            "row 3: “1.250” can be thousands in this list, or decimals; write 1250 if thousands are"
                + " meant, else 1,2500")
        .contains("row 4: “1,250” can be thousands in this list, or decimals");
    assertThat(ledger().kit())
        .extracting(item -> item.qty() + " at " + item.price().orElseThrow())
        .containsExactly("12.5 m at 3 EUR", "0.25 kg at 1204.50 EUR");
    list(
        "Nr;Bezeichnung;Menge;Preis\nK2;Schraube;1250;0,08\nK3;Harz;1,2500 kg;9\n",
        StandardCharsets.UTF_8);
    assertThat(Run.in(root, "import", "kit", "list.csv", "--columns", COLUMNS).out())
        .contains("2 new, 0 changed, 0 as they were, 0 refused.");
    assertThat(ledger().kit())
        .extracting(item -> item.qty().toString())
        .containsExactlyInAnyOrder("12.5 m", "0.25 kg", "1250 each", "1.25 kg");
  }

  @ParameterizedTest
  @CsvSource({
    "'Nr;Bezeichnung;Menge\nK1;Harz;1.250 kg', refused",
    "'Nr;Bezeichnung;Menge\nK1;Harz;1.250 kg\nK2;Leine;12.5 m', new",
    "'Nr,Bezeichnung,Menge\nK1,Harz,1.250 kg', new",
    "'Nr,Bezeichnung,Menge\nK1,Harz,1.250 kg\nK2,Leine,\"12,5 m\"', refused",
    "'Nr,Bezeichnung,Menge\nK1,Harz,1.250 kg\nK2,Bolzen,\"2,204.50 each\"', new",
  })
  void whatAFullStopPartsIsTakenFromTheListAlone(String list, String told) throws IOException {
    list(list.replace("\\n", "\n"), StandardCharsets.UTF_8);
    Run run = Run.in(root, "import", "kit", "list.csv", "--columns", COLUMNS);
    assertThat(run.err().contains("“1.250” can be thousands")).isEqualTo(told.equals("refused"));
  }

  /** The bank says the day, for what and how much; the rest is the same for all of it. */
  @Test
  void paymentsSayWhatTheirListDoesNot() throws IOException {
    Files.writeString(
        root.resolve("budget.yaml"), "budget: [{line: spars, title: Spars, amount: 300}]\n");
    String titles = "Tag;Zweck;Betrag;Topf\n";
    String list =
        titles
            + "3.02.2026;Leim;23,50;\n04.02.2026;Leim;-9,00;\n05.02.2026;Leim;7,00;spars\n"
            + "05.02.2026;Leim;8,00;\n31.02.2026;Lack;8,00;\n";
    list(list, StandardCharsets.UTF_8);
    String[] words = {
      "import", "spend", "list.csv", "--columns", "Tag=on,Zweck=what,Betrag=amount,Topf=line"
    };
    Run run = Run.in(root, with(words, "--every", "state=paid,line=spars"));
    assertThat(run.out()).contains("2 new, 0 changed, 0 as they were, 3 refused.");
    assertThat(run.err().lines())
        .satisfiesExactly(
            row ->
                assertThat(row)
                    .isEqualTo(
                        "refused  row 3: “-9.00” is below zero; write it above zero; what came back"
                            + " is a row with “refunded” as its state"),
            row -> assertThat(row).startsWith("refused  row 5: “spend-2026-02-05-leim” stands in"),
            row -> assertThat(row).startsWith("refused  row 6: “2026-02-31” is not a day"));
    assertThat(ledger().spending())
        .extracting(each -> each.id() + " " + each.on() + " " + each.amount())
        .containsExactly(
            "spend-2026-02-03-leim 2026-02-03 23.50 EUR",
            "spend-2026-02-05-leim 2026-02-05 7.00 EUR");
    list(titles + "03.02.2026;Leim;23,50;\n", StandardCharsets.UTF_8);
    assertThat(Run.in(root, with(words, "--every", "state=ordered")).out())
        .isEqualTo("0 new, 0 changed, 1 as they were, 0 refused.\n");
    assertThat(Run.in(root, with(words, "--every", "sate=paid")).err())
        .contains("A spend has no plain key “sate”. Did you mean “state”?");
  }

  private static String[] with(String[] words, String... more) {
    return Stream.concat(Stream.of(words), Stream.of(more)).toArray(String[]::new);
  }

  @Test
  void theColumnsNamesAreKept() throws IOException {
    list("Nr;Bezeichnung;Menge\nK1;Bolzen;12\n", StandardCharsets.UTF_8);
    Run.in(root, "import", "kit", "list.csv", "--columns", "Nr=id,Bezeichnung=what,Menge=qty");
    assertThat(Run.in(root, "import", "kit", "list.csv").out()).contains("1 as they were");
  }

  @Test
  void printingWritesNothing() throws IOException {
    list("id,what,qty\nK1,bolt,12\n", StandardCharsets.UTF_8);
    assertThat(Run.in(root, "import", "kit", "list.csv", "--print").out())
        .isEqualTo(
            """
            kit:
              - id: K1
                what: bolt
                qty: 12
            1 new, 0 changed, 0 as they were, 0 refused; nothing is written.
            """);
    try (Stream<Path> files = Files.list(root)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrder("build.yaml", "list.csv");
    }
  }

  @Test
  void theFirstSheetOfAWorkbookIsAListToo() throws IOException {
    Files.copy(Path.of("src/test/resources/list/packing.xlsx"), root.resolve("list.xlsx"));
    Run run =
        Run.in(
            root, "import", "kit", "list.xlsx", "--columns", "Nr=id,Description=what,Quantity=qty");
    assertThat(run.all()).contains("4 new, 0 changed, 0 as they were, 0 refused.");
    assertThat(ledger().kit().get(0).qty()).hasToString("4.5 m");
    assertThat(Run.in(root, "import", "kit", "list.xlsx").out()).contains("4 as they were");
  }

  @Test
  void aListTooLongForOneFileIsWrittenIntoSeveral() throws IOException {
    StringBuilder list = new StringBuilder("id,what,qty\n");
    for (int i = 0; i < 120_000; i++) {
      list.append("K").append(i).append(",").append("plank ".repeat(10)).append(",4\n");
    }
    list(list.toString(), StandardCharsets.UTF_8);
    Run run = Run.in(root, "import", "kit", "list.csv");
    assertThat(run.out()).contains("import-2026-03-02.yaml", "import-2026-03-02-2.yaml");
    assertThat(ledger().kit()).hasSize(120_000);
  }

  @Test
  void whatIsNoListIsOneClearLine() throws IOException {
    assertThat(Run.in(root, "import", "kit", "none.csv").err()).contains("There is no list");
    list("", StandardCharsets.UTF_8);
    assertThat(Run.in(root, "import", "kit", "list.csv").err()).contains("The list is empty");
    list("PK\u0003\u0004", StandardCharsets.UTF_8);
    assertThat(Run.in(root, "import", "kit", "list.csv").err())
        .contains("The workbook is damaged or no xlsx");
    list("a,b\n1,2\n", StandardCharsets.UTF_8);
    assertThat(Run.in(root, "import", "kit", "list.csv").err()).contains("Say which is which");
    list("what,what,qty\n1,2,3\n", StandardCharsets.UTF_8);
    assertThat(Run.in(root, "import", "kit", "list.csv").err()).contains("Two columns hold “what”");
  }

  private void list(String text, Charset charset) throws IOException {
    Files.write(root.resolve("list.csv"), text.getBytes(charset));
  }

  private Ledger ledger() {
    Findings faults = new Findings();
    Ledger ledger = LedgerFolder.at(root).read(faults).orElseThrow();
    assertThat(faults.inOrder()).isEmpty();
    return ledger;
  }
}

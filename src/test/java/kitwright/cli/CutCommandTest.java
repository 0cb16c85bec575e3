package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cuts at the command line. */
class CutCommandTest {
  private static final String LEDGER =
      """
      build: {name: T, what: boat, currency: EUR, started: 2026-01-05}
      stock:
        - {id: ply, what: ply, size: 1530 x 510 x 9 mm, pieces: 1, grain: along, worth: 30 EUR}
      cuts:
        - id: c
          from: [ply]
          kerf: 3 mm
          keep: 300 x 100 mm
          parts: [{mark: rail, length: 1000 mm, width: 100 mm}]
      """;

  @TempDir Path folder;

  private Run run(String... arguments) throws IOException {
    return Run.in(folder, arguments);
  }

  private void ledger(String text) throws IOException {
    Files.writeString(folder.resolve("ledger.yaml"), text);
  }

  @Test
  void oneCommandBooksACutAndPutsItsLeftOversOnTheRack() throws IOException {
    ledger(LEDGER);
    assertThat(run("cut", "c", "--done").code()).isZero();
    assertThat(Files.readString(folder.resolve("ledger.yaml")))
        .contains("- id: c\n    done: " + "2026-03-02" + "\n    used: [{stock: ply, pieces: 1}]\n");
    assertThat(Files.readString(folder.resolve("stock/left-of-c.yaml")))
        .contains("id: ply-c-1", "worth: ");
    Run told = run("cut", "c");
    assertThat(told.out()).contains("Done on Mon 2 March 2026", "Took 1 of ply.", "ply-c-1");
    assertThat(run("cut", "c", "--done").code()).as("not twice").isEqualTo(2);
    assertThat(run("check", "--all").out()).doesNotContain("cut-");
  }

  @Test
  void aCutThatIsSaidToBeDoneTomorrowIsNotDoneInAnyTelling() throws IOException {
    ledger(LEDGER);
    String plan = run("cut", "c").out();
    ledger(LEDGER.replace("kerf:", "done: 2026-03-03\n    kerf:"));
    Run told = run("cut", "c");
    assertThat(told.out()).isEqualTo(plan);
    assertThat(told.err()).contains("said to be done on 2026-03-03, still to come");
    assertThat(run("cut").out()).contains("to be cut").doesNotContain("3 March");
    assertThat(run("cut", "c", "--done").code()).as("not over what is written").isEqualTo(2);
  }

  @Test
  void aPartOfWhichNoneAreWantedIsAFaultOfThePart() throws IOException {
    ledger(LEDGER.replace("width: 100 mm}", "width: 100 mm, qty: 0}"));
    assertThat(run("cut", "c").code()).isEqualTo(1);
    assertThat(run("check").out())
        .contains("None of “rail” are wanted.")
        .contains("Correct what the part asks for, or take it out.");
  }

  @Test
  void nothingIsWrittenWhereALeftOversFileIsThere() throws IOException {
    ledger(LEDGER);
    Files.createDirectories(folder.resolve("stock"));
    Files.writeString(folder.resolve("stock/left-of-c.yaml"), "# mine\n");
    assertThat(run("cut", "c", "--done").code()).isEqualTo(2);
    assertThat(Files.readString(folder.resolve("ledger.yaml"))).isEqualTo(LEDGER);
  }

  @Test
  void jsonNamesTheKindOfCuttingAndEveryCut() throws IOException {
    ledger(LEDGER);
    assertThat(run("cut", "c", "--format", "json").out())
        .contains("\"among\"", "by any straight cuts", "\"cuts\"", "\"way\"", "\"kerf\"");
  }
}

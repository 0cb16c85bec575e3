package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import kitwright.OutsideProgram;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A workbook that a real spreadsheet program (Gnumeric’s ssconvert) writes says the same as the
 * CSV.
 */
class WorkbookIT {
  @TempDir Path root;

  @Test
  void aWorkbookMakesTheSameRecordsAsTheListItWasMadeOf() throws Exception {
    OutsideProgram.needed("ssconvert", "gnumeric");
    Files.writeString(
        root.resolve("build.yaml"), "build: {name: S, currency: EUR, started: 2026-01-05}\n");
    StringBuilder list = new StringBuilder("Nr,Description,Quantity,Price,Crate\n");
    for (int i = 1; i <= 500; i++) {
      list.append("K%d,\"plank %d, ünï\",%d.25 m,%d.40,C%d\n".formatted(i, i, i, i % 90, i % 9));
    }
    Files.writeString(root.resolve("list.csv"), list);
    for (String kind : new String[] {"xlsx", "xlsx2"}) {
      assertThat(convert(kind)).isZero();
      Run book =
          Run.in(
              root,
              "import",
              "kit",
              kind + ".xlsx",
              "--print",
              "--columns",
              "Nr=id,Description=what,Quantity=qty,Price=price,Crate=crate");
      Run text =
          Run.in(
              root,
              "import",
              "kit",
              "list.csv",
              "--print",
              "--columns",
              "Nr=id,Description=what,Quantity=qty,Price=price,Crate=crate");
      assertThat(book.err()).isEmpty();
      assertThat(book.out().replaceAll("(price: \\d+\\.\\d)0?\n", "$1\n"))
          .isEqualTo(text.out().replaceAll("(price: \\d+\\.\\d)0?\n", "$1\n"))
          .contains("500 new");
    }
  }

  private int convert(String kind) throws IOException, InterruptedException {
    String exporter = kind.equals("xlsx") ? "Gnumeric_Excel:xlsx" : "Gnumeric_Excel:xlsx2";
    return new ProcessBuilder("ssconvert", "--export-type=" + exporter, "list.csv", kind + ".xlsx")
        .directory(root.toFile())
        .redirectErrorStream(true)
        .redirectOutput(root.resolve("log.txt").toFile())
        .start()
        .waitFor();
  }
}

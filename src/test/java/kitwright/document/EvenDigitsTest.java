package kitwright.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** NIST SP 811 (2008), 10.5.3: four digits are parted only beside longer numbers. */
class EvenDigitsTest {
  private static String column(String... numbers) {
    List<Row> rows = List.of(numbers).stream().map(each -> Row.row(Cell.text(each))).toList();
    return Document.of(Block.table(Column.columns(Column.right("EUR")), rows)).markdown();
  }

  @Test
  void fourDigitsBesideFiveArePartedToo() {
    assertThat(column("16\u00a0700.00", "2700.00", "850.00", "−2345.50"))
        .contains("16\u00a0700.00", "2\u00a0700.00", " 850.00", "−2\u00a0345.50");
  }

  @Test
  void aloneTheyAreNot() {
    assertThat(column("2700.00", "850.00")).contains("2700.00");
  }

  @Test
  void aSumInWeightierLettersIsAlike() {
    List<Row> rows =
        List.of(Row.row(Cell.text("12\u00a0000")), Row.row(Cell.text("2295.52").strong()));
    assertThat(Document.of(Block.table(Column.columns(Column.right("EUR")), rows)).markdown())
        .contains("**2\u00a0295.52**");
  }

  @Test
  void whatIsNoNumberStaysAsItIs() {
    assertThat(column("12\u00a0000", "2026", "4471-B", "bolt 1234"))
        .contains("4471-B", "bolt 1234");
  }
}

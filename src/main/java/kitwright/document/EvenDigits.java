package kitwright.document;

import java.util.List;
import java.util.regex.Pattern;

/**
 * Numbers of a table written alike: where one has its digits in groups of three, so has each of
 * four digits. Alone such a number is not parted.
 *
 * @see "NIST SP 811 (2008), 10.5.3: four digits are parted only in a column beside longer numbers"
 */
final class EvenDigits {
  private static final Pattern GROUPED =
      Pattern.compile("[−-]?\\d{1,3}(?:\u00a0\\d{3})+(?:\\.\\d+)?");
  private static final Pattern FOUR = Pattern.compile("([−-]?\\d)(\\d{3}(?:\\.\\d+)?)");

  private EvenDigits() {}

  static List<Row> of(List<Row> rows) {
    return rows.stream().flatMap(row -> row.cells().stream()).anyMatch(EvenDigits::isGrouped)
        ? rows.stream().map(EvenDigits::parted).toList()
        : rows;
  }

  private static boolean isGrouped(Cell cell) {
    return GROUPED.matcher(PlainWords.of(cell.shown())).matches();
  }

  private static Row parted(Row row) {
    return new Row(
        row.cells().stream().map(cell -> new Cell(parted(cell.shown()), cell.value())).toList());
  }

  private static Inline parted(Inline shown) {
    if (shown instanceof Inline.Text text) {
      return Inline.text(FOUR.matcher(text.text()).matches() ? parted(text.text()) : text.text());
    }
    return shown instanceof Inline.Strong strong
        ? new Inline.Strong(strong.inside().stream().map(EvenDigits::parted).toList())
        : shown;
  }

  private static String parted(String four) {
    return FOUR.matcher(four).replaceAll("$1\u00a0$2");
  }
}

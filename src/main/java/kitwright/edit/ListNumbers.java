package kitwright.edit;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import kitwright.value.Decimal;
import kitwright.value.Misread;

/**
 * How the numbers of a list of text are written. Where it writes a comma for decimals, {@code
 * 1.234} may be thousands, and so it may where nothing tells and semicolons part the cells, as
 * programs of those countries part them (common practice, no source).
 */
final class ListNumbers {
  private static final Pattern THOUSANDS_OR_DECIMALS =
      Pattern.compile("[+-]?[1-9][0-9]{0,2}[.,][0-9]{3}");
  private static final Pattern POINT = Pattern.compile("[+-]?[0-9]*\\.[0-9]+");

  /** Before the rows were looked at. */
  static final ListNumbers UNSEEN = new ListNumbers(false);

  private final boolean mayPartThousands;

  private ListNumbers(boolean mayPartThousands) {
    this.mayPartThousands = mayPartThousands;
  }

  /**
   * Of delimited text, or of a workbook, in which a person may have typed numbers as text.
   *
   * @param columns those that hold numbers
   */
  static ListNumbers of(List<Csv.Row> rows, Set<Integer> columns, char delimiter) {
    boolean writesPoints = false;
    for (Csv.Row row : rows) {
      for (int column : columns) {
        String number = column < row.cells().size() ? number(row.cells().get(column).strip()) : "";
        if (isDecimalComma(number)) {
          return new ListNumbers(true);
        }
        writesPoints |=
            POINT.matcher(number).matches() && !THOUSANDS_OR_DECIMALS.matcher(number).matches();
      }
    }
    return new ListNumbers(delimiter == ';' && !writesPoints);
  }

  private static boolean isDecimalComma(String number) {
    int comma = number.lastIndexOf(',');
    return comma >= 0
        && number.indexOf('.', comma) < 0
        && Decimal.withoutComma(number).size() == 1
        && number.indexOf(',') == comma;
  }

  /**
   * @throws Misread where a cell's number can be a thousand times what it says
   */
  void requireClear(String cell) throws Misread {
    String number = mayPartThousands ? number(cell) : "";
    if (THOUSANDS_OR_DECIMALS.matcher(number).matches()) {
      throw new Misread(
          "“" + number + "” can be thousands in this list, or decimals",
          "write "
              + number.replaceAll("[.,]", "")
              + " if thousands are meant, else "
              + number.replace('.', ',')
              + "0");
    }
  }

  /** What a cell begins with, up to its unit. */
  static String number(String cell) {
    int end = 0;
    while (end < cell.length() && "0123456789.,+-".indexOf(cell.charAt(end)) >= 0) {
      end++;
    }
    return cell.substring(0, end);
  }
}

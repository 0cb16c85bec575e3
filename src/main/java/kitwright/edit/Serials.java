package kitwright.edit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import kitwright.value.Decimal;

/**
 * The numbers of a workbook’s cells as texts. A day is a number too, told from others by its format
 * alone (ECMA-376 part 1, 18.17.4 and 18.8.30).
 *
 * @param since1904 whether days are counted from 1904 on
 * @param formats the number format of each style
 */
record Serials(boolean since1904, List<String> formats) {
  /** Day 60 is the 29th of February 1900, which never was; only later days are right from here. */
  private static final LocalDate BEGIN = LocalDate.of(1899, 12, 30);

  private static final LocalDate BEGIN_1904 = LocalDate.of(1904, 1, 1);

  /** What is saved beyond 15 figures is noise of binary numbers. */
  private static final MathContext FIGURES = new MathContext(15);

  /** The formats that have numbers only: of these, those of days. */
  static String builtIn(String id) {
    return id.matches("1[4-7]|22|2[7-9]|3[0-6]|5[0-8]") ? "yyyy-mm-dd" : "";
  }

  String told(String value, String style) {
    BigDecimal number = new BigDecimal(value).round(FIGURES);
    boolean day = !style.isEmpty() && isDay(formats.get(Integer.parseInt(style)));
    return day
        ? (since1904 ? BEGIN_1904 : BEGIN).plusDays(number.longValue()).toString()
        : Decimal.print(number.stripTrailingZeros());
  }

  /** Whether a format shows a day: a year or a day of the month outside of quotes and brackets. */
  private static boolean isDay(String format) {
    String plain =
        format.replaceAll("\"[^\"]*\"|\\\\.|\\[[^\\]]*\\]|_.|\\*.", "").toLowerCase(Locale.ROOT);
    return plain.contains("y") || (plain.contains("d") && plain.contains("m"));
  }
}

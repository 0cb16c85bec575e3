package kitwright.substitution;

import java.math.BigDecimal;
import java.text.Normalizer;
import java.util.regex.Pattern;
import kitwright.value.Decimal;
import kitwright.value.Quantity;
import kitwright.value.Size;
import kitwright.value.Unit;

/**
 * Values in one form each, so that the same meaning gives the same words: {@code 22 mm}, {@code
 * 22.0mm} and {@code 0.022 m} are all {@code 0.022 m}.
 */
final class Plain {
  /** White space and every sign that nobody sees: control and format characters. */
  private static final Pattern SPACE = Pattern.compile("[\\s\\p{Z}\\p{Cc}]+");

  private static final Pattern UNSEEN = Pattern.compile("\\p{Cf}+");
  private static final Pattern NAME = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}._/-]*");

  private Plain() {}

  /** Words as they are seen: unseen signs gone, white space folded, letters composed; in quotes. */
  static String words(String text) {
    String seen = UNSEEN.matcher(Normalizer.normalize(text, Normalizer.Form.NFC)).replaceAll("");
    String folded = SPACE.matcher(seen).replaceAll(" ").strip();
    return '"' + folded.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }

  /** An id: bare where nothing in it could be taken for something else. */
  static String name(String id) {
    return NAME.matcher(id).matches() ? id : words(id);
  }

  static String number(BigDecimal number) {
    return Decimal.print(number);
  }

  /** In the one unit of its dimension. */
  static String quantity(Quantity quantity) {
    return quantity.in(unit(quantity.unit())).toString();
  }

  static String size(Size size) {
    return size.toString();
  }

  private static Unit unit(Unit written) {
    return switch (written.dimension()) {
      case LENGTH -> Unit.M;
      case AREA -> Unit.M2;
      case VOLUME -> Unit.L;
      case MASS -> Unit.KG;
      case TIME -> Unit.HOUR;
      case FORCE -> Unit.NEWTON;
      case STRESS -> Unit.MEGAPASCAL;
      case MOMENT -> Unit.NEWTON_METRE;
      case DENSITY -> Unit.KG_PER_M3;
      case AREAL_MASS -> Unit.KG_PER_M2;
      case LINEAR_MASS -> Unit.KG_PER_M;
      case LINEAR_LOAD -> Unit.N_PER_M;
      case SPEED -> Unit.METRE_PER_SECOND;
      case TEMPERATURE -> Unit.CELSIUS;
      case TEMPERATURE_DIFFERENCE -> Unit.KELVIN_DIFFERENCE;
      case ANGLE -> Unit.DEGREE;
      case RATIO -> Unit.ONE;
      case COUNT -> Unit.EACH;
      case PACKAGE -> written;
    };
  }
}

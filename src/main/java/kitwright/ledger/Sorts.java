package kitwright.ledger;

import java.math.BigDecimal;
import java.text.Normalizer;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitwright.value.Days;
import kitwright.value.Decimal;
import kitwright.value.Dimension;
import kitwright.value.Misread;
import kitwright.value.Money;
import kitwright.value.Nearest;
import kitwright.value.Price;
import kitwright.value.Quantity;
import kitwright.value.Size;
import kitwright.value.Unit;

/** The sorts of value that records share. */
final class Sorts {
  private static final String DATE = "(19|20|21)[0-9]{2}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])";

  static final Sort<String> TEXT = new Text();
  static final Sort<String> WORD = new Word();
  static final Sort<Quantity> ANY = new Measure(Unit.ONE, Optional.empty());
  static final Sort<String> ID = new Id();
  static final Sort<LocalDate> HAPPENED = new Day("day that has happened");
  static final Sort<LocalDate> PLANNED = new Day("day");
  static final Sort<Days> DAYS = new Stretch();
  static final Sort<Money> MONEY = new Amount();
  static final Sort<Price> PRICE = new Rate();
  static final Sort<BigDecimal> NUMBER = new PlainNumber();
  static final Sort<Integer> COUNT = new Count();
  static final Sort<BigDecimal> SHARE = new Share();
  static final Sort<BigDecimal> RATIO = new Ratio();
  static final Sort<Size> SIZE = new Sides();
  static final Sort<Boolean> FLAG = new Flag();
  static final Sort<Currency> CURRENCY = new Code();
  static final Sort<String> FILE = new File();
  static final Sort<String> SHA256 = new Digest();

  private Sorts() {}

  /** é as one letter, whether it was typed as one or as e and an accent: both are one id. */
  static String composed(String id) {
    return Normalizer.isNormalized(id, Normalizer.Form.NFC)
        ? id
        : Normalizer.normalize(id, Normalizer.Form.NFC);
  }

  private static class Text extends Sort<String> {
    Text() {
      super("text", "");
    }

    Text(String word) {
      super(word, "");
    }

    @Override
    public String read(String text, Keys keys) throws Misread {
      String stripped = text.strip();
      if (stripped.isEmpty()) {
        throw new Misread("the text is empty", "write something, or leave the key out");
      }
      return stripped;
    }
  }

  /** A text exactly as it is written. */
  private static final class Word extends Sort<String> {
    Word() {
      super("text", "");
    }

    @Override
    public String read(String text, Keys keys) {
      return text;
    }
  }

  /** The path of a file that shows something. */
  private static final class File extends Text {
    File() {
      super("path of a file");
    }
  }

  private static final class Id extends Sort<String> {
    Id() {
      super("id", "^[^\\s/\\\\]{1,120}$");
    }

    @Override
    public boolean mayLookLikeNumber() {
      return true;
    }

    @Override
    public String read(String text, Keys keys) throws Misread {
      if (text.isBlank() || text.length() > 120) {
        throw new Misread("an id has 1 to 120 characters", "write a short name without spaces");
      }
      boolean odd = false;
      for (int i = 0; i < text.length(); i++) {
        odd |= isOdd(text.codePointAt(i));
      }
      if (odd) {
        throw new Misread(
            "the id “" + text + "” holds a space, a slash or an invisible character",
            "use letters, digits, full stops and hyphens");
      }
      return composed(text);
    }

    private static boolean isOdd(int c) {
      return Character.isWhitespace(c)
          || Character.getType(c) == Character.FORMAT
          || Character.isISOControl(c)
          || c == '/'
          || c == '\\';
    }
  }

  private static final class Day extends Sort<LocalDate> {
    Day(String word) {
      super(word, "^\\s*" + DATE + "\\s*$");
    }

    @Override
    public LocalDate read(String text, Keys keys) throws Misread {
      return keys.recall().day(text);
    }
  }

  private static final class Stretch extends Sort<Days> {
    Stretch() {
      super(
          "day, or the first and last of several",
          "^\\s*" + DATE + "(\\s*\\.\\.\\s*" + DATE + ")?\\s*$");
    }

    @Override
    public Days read(String text, Keys keys) throws Misread {
      return Days.parse(text);
    }
  }

  private static final class Amount extends Sort<Money> {
    Amount() {
      super("money", "^\\s*" + NUMBER + "(\\s*[A-Z]{3})?\\s*$");
    }

    @Override
    public Money read(String text, Keys keys) throws Misread {
      return Money.parse(text, keys.currency());
    }

    @Override
    public Optional<Unit> bare() {
      return Optional.of(Unit.ONE);
    }
  }

  private static final class Rate extends Sort<Price> {
    Rate() {
      super("price", "^\\s*\\+?[0-9.]+(\\s+[A-Z]{3})?(\\s*/\\s*\\S+)?\\s*$");
    }

    @Override
    public boolean isNeverNegative() {
      return true;
    }

    @Override
    public Price read(String text, Keys keys) throws Misread {
      return Price.parse(text, keys.currency());
    }

    @Override
    public Optional<Unit> bare() {
      return Optional.of(Unit.ONE);
    }
  }

  private static final class PlainNumber extends Sort<BigDecimal> {
    PlainNumber() {
      super("number", "^" + NUMBER + "$");
    }

    @Override
    public BigDecimal read(String text, Keys keys) throws Misread {
      return Decimal.parse(text);
    }

    @Override
    public Optional<Unit> bare() {
      return Optional.of(Unit.ONE);
    }
  }

  private static final class Count extends Sort<Integer> {
    Count() {
      super("whole number", "^[0-9]{1,6}$");
    }

    @Override
    public boolean isNeverNegative() {
      return true;
    }

    @Override
    public boolean isWhole() {
      return true;
    }

    @Override
    public Integer read(String text, Keys keys) throws Misread {
      if (!text.matches("\\d{1,6}")) {
        throw new Misread("“" + text + "” is not a whole number", "write digits only, such as 4");
      }
      return Integer.valueOf(text);
    }

    @Override
    public Optional<Unit> bare() {
      return Optional.of(Unit.EACH);
    }
  }

  private static final class Share extends Sort<BigDecimal> {
    Share() {
      super("share", "^\\s*" + NUMBER + "\\s*%?\\s*$");
    }

    @Override
    public boolean isNeverNegative() {
      return true;
    }

    @Override
    public BigDecimal read(String text, Keys keys) throws Misread {
      return Quantity.parse(text, Unit.ONE, Dimension.RATIO)
          .amount()
          .multiply(text.strip().endsWith("%") ? Unit.PERCENT.factor() : BigDecimal.ONE);
    }

    @Override
    public Optional<Unit> bare() {
      return Optional.of(Unit.ONE);
    }
  }

  private static final class Ratio extends Sort<BigDecimal> {
    Ratio() {
      super("ratio", "^\\s*" + NUMBER + "\\s*%?\\s*$");
    }

    @Override
    public boolean isNeverNegative() {
      return true;
    }

    @Override
    public BigDecimal read(String text, Keys keys) throws Misread {
      Quantity ratio = Quantity.parse(text, Unit.ONE, Dimension.RATIO);
      return ratio.amount().multiply(ratio.unit().factor());
    }

    @Override
    public Optional<Unit> bare() {
      return Optional.of(Unit.ONE);
    }
  }

  private static final class Sides extends Sort<Size> {
    Sides() {
      super("length x width, or length x width x thickness", "^[^x×*]+([x×*][^x×*]+){1,2}$");
    }

    @Override
    public Size read(String text, Keys keys) throws Misread {
      return Size.parse(text);
    }
  }

  private static final class Flag extends Sort<Boolean> {
    Flag() {
      super("yes or no", "");
    }

    @Override
    public Boolean read(String text, Keys keys) throws Misread {
      return switch (text) {
        case "yes", "true" -> true;
        case "no", "false" -> false;
        default -> throw new Misread("“" + text + "” is neither yes nor no", "write yes or no");
      };
    }

    @Override
    public List<String> words() {
      return List.of("yes", "no", "true", "false");
    }
  }

  private static final class Code extends Sort<Currency> {
    Code() {
      super("currency of ISO 4217", "^[A-Z]{3}$");
    }

    @Override
    public Currency read(String text, Keys keys) throws Misread {
      return Money.currency(text);
    }
  }

  private static final class Digest extends Sort<String> {
    Digest() {
      super("SHA-256", "^\\s*[0-9a-fA-F]{64}\\s*$");
    }

    @Override
    public boolean mayLookLikeNumber() {
      return true;
    }

    @Override
    public String read(String text, Keys keys) throws Misread {
      String digest = text.strip().toLowerCase(Locale.ROOT);
      if (!digest.matches("[0-9a-f]{64}")) {
        throw new Misread(
            "a SHA-256 has 64 hexadecimal digits, this has " + digest.length() + " characters",
            "run “kitwright hash FILE” and paste what it prints");
      }
      return digest;
    }
  }

  /** A quantity; of one dimension where one is named. */
  static final class Measure extends Sort<Quantity> {
    private final Unit fallback;
    private final Optional<Dimension> dimension;

    Measure(Unit fallback, Optional<Dimension> dimension) {
      super(dimension.map(Dimension::word).orElse("quantity"), "");
      this.fallback = fallback;
      this.dimension = dimension;
    }

    /**
     * Fractions of an inch and feet with inches are lengths of several figures. Put together only
     * for the schema: a sort is made for each quantity that is a part of another.
     */
    @Override
    public String pattern() {
      String symbols =
          Arrays.stream(Unit.values())
              .filter(unit -> dimension.isEmpty() || unit.dimension() == dimension.get())
              .flatMap(unit -> unit.symbols().stream())
              .filter(symbol -> !symbol.isEmpty())
              .map(symbol -> symbol.replaceAll("[.^$|*+?()\\[\\]{}\\\\/]", "\\\\$0"))
              .collect(Collectors.joining("|"));
      String figure = "\\+?[0-9][0-9./eE+ \\-]*|\\+?\\.[0-9]+([eE][+-]?[0-9]+)?";
      String one = "(" + figure + ")\\s*(" + symbols + ")?";
      return "^\\s*" + one + "(\\s*" + one + ")?\\s*$";
    }

    @Override
    public boolean mayLookLikeNumber() {
      return bare().isPresent();
    }

    @Override
    public boolean isNeverNegative() {
      return true;
    }

    @Override
    public Quantity read(String text, Keys keys) throws Misread {
      return dimension.isPresent()
          ? Quantity.parse(text, fallback, dimension.get())
          : keys.recall().quantity(text, fallback);
    }

    @Override
    public Optional<Unit> bare() {
      return dimension.isEmpty() || dimension.get() == fallback.dimension()
          ? Optional.of(fallback)
          : Optional.empty();
    }
  }

  /** One word of a closed list, written in kebab-case. */
  static final class Choice<E extends Enum<E>> extends Sort<E> {
    private final Class<E> constants;

    Choice(Class<E> constants) {
      super("word", "");
      this.constants = constants;
    }

    @Override
    public List<String> words() {
      return Stream.of(constants.getEnumConstants()).map(Keys::word).toList();
    }

    @Override
    public E read(String text, Keys keys) throws Misread {
      for (E constant : constants.getEnumConstants()) {
        if (constant.name().length() == text.length() && Keys.word(constant).equals(text)) {
          return constant;
        }
      }
      List<String> all = words();
      throw new Misread(
          "“" + text + "” is not one of the words known here",
          Nearest.to(text, all)
              .map(near -> "did you mean “" + near + "”? The words are: " + String.join(", ", all))
              .orElse("use one of: " + String.join(", ", all)));
    }
  }
}

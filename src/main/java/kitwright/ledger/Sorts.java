package kitwright.ledger;

import static kitwright.ledger.Sort.Trait.MAY_LOOK_LIKE_NUMBER;
import static kitwright.ledger.Sort.Trait.NEVER_NEGATIVE;
import static kitwright.ledger.Sort.Trait.WHOLE;

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
import kitwright.value.Word;

/** The sorts of value that records share. */
final class Sorts {
  private static final String DATE = "(19|20|21)[0-9]{2}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])";

  private static final String SHARE_PATTERN = "^\\s*" + Sort.NUMBER + "\\s*%?\\s*$";

  static final Sort<String> TEXT = Sort.of("text", "", Sorts::text);

  /** A text exactly as it is written. */
  static final Sort<String> WORD = Sort.of("text", "", (text, keys) -> text);

  static final Sort<Quantity> ANY = new Measure(Unit.ONE, Optional.empty());
  static final Sort<String> ID =
      Sort.of("id", "^[^\\s/\\\\]{1,120}$", Sorts::id, MAY_LOOK_LIKE_NUMBER);
  static final Sort<LocalDate> HAPPENED = day("day that has happened");
  static final Sort<LocalDate> PLANNED = day("day");
  static final Sort<Days> DAYS =
      Sort.of(
          "day, or the first and last of several",
          "^\\s*" + DATE + "(\\s*\\.\\.\\s*" + DATE + ")?\\s*$",
          (text, keys) -> Days.parse(text));
  static final Sort<Money> MONEY =
      Sort.in(
          Unit.ONE,
          "money",
          "^\\s*" + Sort.NUMBER + "(\\s*[A-Z]{3})?\\s*$",
          (text, keys) -> Money.parse(text, keys.currency()));
  static final Sort<Price> PRICE =
      Sort.in(
          Unit.ONE,
          "price",
          "^\\s*\\+?[0-9.]+(\\s+[A-Z]{3})?(\\s*/\\s*\\S+)?\\s*$",
          (text, keys) -> Price.parse(text, keys.currency()),
          NEVER_NEGATIVE);
  static final Sort<BigDecimal> NUMBER =
      Sort.in(Unit.ONE, "number", "^" + Sort.NUMBER + "$", (text, keys) -> Decimal.parse(text));
  static final Sort<Integer> COUNT =
      Sort.in(Unit.EACH, "whole number", "^[0-9]{1,6}$", Sorts::count, NEVER_NEGATIVE, WHOLE);
  static final Sort<BigDecimal> SHARE =
      Sort.in(Unit.ONE, "share", SHARE_PATTERN, Sorts::share, NEVER_NEGATIVE);
  static final Sort<BigDecimal> RATIO =
      Sort.in(Unit.ONE, "ratio", SHARE_PATTERN, Sorts::ratio, NEVER_NEGATIVE);
  static final Sort<Size> SIZE =
      Sort.of(
          "length x width, or length x width x thickness",
          "^[^x×*]+([x×*][^x×*]+){1,2}$",
          (text, keys) -> Size.parse(text));
  static final Sort<Boolean> FLAG = new Flag();
  static final Sort<Currency> CURRENCY =
      Sort.of("currency of ISO 4217", "^[A-Z]{3}$", (text, keys) -> Money.currency(text));
  static final Sort<String> FILE = Sort.of("path of a file", "", Sorts::text);
  static final Sort<String> SHA256 =
      Sort.of("SHA-256", "^\\s*[0-9a-fA-F]{64}\\s*$", Sorts::digest, MAY_LOOK_LIKE_NUMBER);

  private Sorts() {}

  /** é as one letter, whether it was typed as one or as e and an accent: both are one id. */
  static String composed(String id) {
    return Normalizer.isNormalized(id, Normalizer.Form.NFC)
        ? id
        : Normalizer.normalize(id, Normalizer.Form.NFC);
  }

  private static String text(String text, Keys keys) throws Misread {
    String stripped = text.strip();
    if (stripped.isEmpty()) {
      throw new Misread("the text is empty", "write something, or leave the key out");
    }
    return stripped;
  }

  private static String id(String text, Keys keys) throws Misread {
    if (text.isBlank() || text.length() > 120) {
      throw new Misread("an id has 1 to 120 characters", "write a short name without spaces");
    }
    for (int i = 0; i < text.length(); i++) {
      if (isOdd(text.codePointAt(i))) {
        throw new Misread(
            "the id “" + text + "” holds a space, a slash or an invisible character",
            "use letters, digits, full stops and hyphens");
      }
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

  private static Sort<LocalDate> day(String word) {
    return Sort.of(word, "^\\s*" + DATE + "\\s*$", (text, keys) -> keys.recall().day(text));
  }

  private static Integer count(String text, Keys keys) throws Misread {
    if (!text.matches("\\d{1,6}")) {
      throw new Misread("“" + text + "” is not a whole number", "write digits only, such as 4");
    }
    return Integer.valueOf(text);
  }

  private static BigDecimal share(String text, Keys keys) throws Misread {
    return Quantity.parse(text, Unit.ONE, Dimension.RATIO)
        .amount()
        .multiply(text.strip().endsWith("%") ? Unit.PERCENT.factor() : BigDecimal.ONE);
  }

  private static BigDecimal ratio(String text, Keys keys) throws Misread {
    Quantity ratio = Quantity.parse(text, Unit.ONE, Dimension.RATIO);
    return ratio.amount().multiply(ratio.unit().factor());
  }

  private static String digest(String text, Keys keys) throws Misread {
    String digest = text.strip().toLowerCase(Locale.ROOT);
    if (!digest.matches("[0-9a-f]{64}")) {
      throw new Misread(
          "a SHA-256 has 64 hexadecimal digits, this has " + digest.length() + " characters",
          "run “kitwright hash FILE” and paste what it prints");
    }
    return digest;
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
      return Stream.of(constants.getEnumConstants()).map(Word::key).toList();
    }

    @Override
    public E read(String text, Keys keys) throws Misread {
      for (E constant : constants.getEnumConstants()) {
        if (constant.name().length() == text.length() && Word.key(constant).equals(text)) {
          return constant;
        }
      }
      List<String> all = words();
      throw new Misread(
          "“" + text + "” is not one of the words known here",
          Nearest.ofWords(text, all)
              .map(near -> "did you mean “" + near + "”? The words are: " + String.join(", ", all))
              .orElse("use one of: " + String.join(", ", all)));
    }
  }
}

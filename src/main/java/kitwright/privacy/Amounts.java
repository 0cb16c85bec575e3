package kitwright.privacy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import kitwright.ledger.Ledger;
import kitwright.value.Money;
import kitwright.value.Price;
import kitwright.value.ThreePoint;

/**
 * A bare number that is an amount or a price of the ledger, where nothing that is counted or
 * measured follows it. One of two digits is no secret: every frame has such a number.
 */
final class Amounts implements Ear {
  private static final int DIGITS = 3;
  private static final Pattern NUMBER =
      Pattern.compile(
          "(?<![\\p{L}\\d.,×-])(?<!x )\\d{1,3}(?:["
              + " ,.'’\u00a0]?\\d{3})*(?:[.,]\\d+)?(?![\\d\\p{L}])");

  /** What follows a sum that is said without its currency. */
  private static final Pattern ENDS =
      Pattern.compile(
          "(?s)\\s*(?:[.;:!?)].*)?|\\s+(?:in all|all in|altogether|all told|each|apiece|left|over"
              + "|short|too (?:much|many)|for (?:it|the|two|three|four|a)).*");

  private final Set<String> amounts = new LinkedHashSet<>();

  Amounts(Ledger ledger) {
    in(ledger).forEach(amount -> writings(amount).forEach(amounts::add));
  }

  /** Every amount and price that a ledger states. */
  static List<BigDecimal> in(Ledger ledger) {
    List<BigDecimal> all = new ArrayList<>();
    ledger.all().forEach(entry -> entry.at().each((within, key, value) -> add(value, all)));
    return all;
  }

  private static void add(Object value, List<BigDecimal> all) {
    if (value instanceof Money money) {
      all.add(money.amount());
    } else if (value instanceof Price price) {
      all.add(price.amount());
    } else if (value instanceof ThreePoint<?> guess) {
      Stream.of(guess.low(), guess.likely(), guess.high()).forEach(each -> add(each, all));
    }
  }

  private static Stream<String> writings(BigDecimal amount) {
    String bare = amount.abs().stripTrailingZeros().toPlainString();
    String below = amount.abs().setScale(0, RoundingMode.DOWN).toPlainString();
    return Stream.of(bare, below).filter(digits -> digits.replace(".", "").length() >= DIGITS);
  }

  @Override
  public void hear(AsRead text, Heard heard) {
    Matcher number = NUMBER.matcher(text.seen());
    while (number.find()) {
      boolean ends = ENDS.matcher(text.seen()).region(number.end(), text.seen().length()).matches();
      if (ends && readings(number.group()).anyMatch(this::isAmount)) {
        heard.put(number.group(), "an amount of the ledger");
      }
    }
  }

  /** A point may part thousands or decimals, and so may a comma. */
  private static Stream<String> readings(String number) {
    return Stream.of("[ '’\u00a0]|,(?=\\d{3})", "[ '’\u00a0]|\\.(?=\\d{3})")
        .map(thousands -> number.replaceAll(thousands, "").replace(',', '.'))
        .filter(digits -> digits.matches("\\d+(?:\\.\\d+)?"))
        .map(digits -> new BigDecimal(digits).stripTrailingZeros().toPlainString());
  }

  private boolean isAmount(String digits) {
    return amounts.contains(digits) && !digits.matches("20\\d\\d");
  }
}

package kitwright.privacy;

import java.util.Currency;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Sums of money in digits and in words, and words that speak of money. */
final class Sums implements Ear {
  private static final String A_SUM = "a sum";

  /** What follows a number with decimals that is a measure, not a sum. */
  private static final String MEASURES =
      "%|°|[×x]\\s?\\d|(?:mm|cm|m|m2|m²|m3|m³|kg|g|l|ml|h|min|d|n|kn|mpa|gpa|k|c|ply|plies|to|degrees?"
          + "|metres?|meters?|litres?|kilos?|hours?|days?|knots?|miles?)(?!\\p{L})";

  private static final Pattern DIGITS =
      Pattern.compile(
          "\\d{1,3}(?:[, \u00a0'’]\\d{3})+[.,]\\d{2}(?!\\d)|\\d{1,3}(?:\\.\\d{3})+,\\d{2}(?!\\d)"
              + "|\\p{Sc}\\s?\\d[\\d.,  ]*|\\d[\\d., ]*\\s?\\p{Sc}"
              + "|(?<![\\p{L}\\d.,×x/-])\\d+[.,]\\d{2}(?![\\d\\p{L}])(?!\\s?(?:"
              + MEASURES
              + "))|(?<![\\p{L}\\d])\\d+(?:[.,]\\d+)?\\s?k(?![\\p{L}\\d])"
              + "|(?<![\\p{L}\\d])\\d[\\d .,'’]*[.,]\\s?[\\p{Pd}](?!\\d)");

  private static final String TENS = "(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)";
  private static final String TEENS =
      "(?:ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen)";
  private static final String ONES = "(?:one|two|three|four|five|six|seven|eight|nine)";

  /** What is counted by hundreds at the bench. */
  private static final String COUNTED =
      "(?:mm|metres?|meters?|strokes?|screws?|holes?|clamps?|staples?|times|nails?|strips?|litres?"
          + "|grams?|kilos?|years?|miles?|turns?|degrees?|newtons?|parts?|pieces?|steps?|passes"
          + "|rivets?|roves?|plugs?|bolts?|hours?|days?|words?|photos?|people|of)";

  private static final Pattern SPOKEN =
      Pattern.compile(
          "(?i)(?<!\\p{L})(?:(?:"
              + ONES
              + "|"
              + TEENS
              + "|"
              + TENS
              + "(?:[ -]"
              + ONES
              + ")?|a|an?\\s+half|half\\s+a|some|few|several|many|couple(?:\\s+of)?|\\d+)"
              + "(?:\\s+and\\s+a\\s+half)?[ -](?:hundred|thousand|grand)"
              + "(?!\\s+(?:and\\s+)?(?:(?!for\\b|in\\b|to\\b)\\w+[ -]){0,2}"
              + COUNTED
              + "(?!\\p{L})))(?!\\p{L})");

  /** As prices are said: “forty-three seventy-five”. Below thirty it is a time of day or a year. */
  private static final Pattern SPOKEN_PRICE =
      Pattern.compile(
          "(?i)(?<!\\p{L})(thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:[ -]"
              + ONES
              + ")?\\s+(?!\\1)(?:"
              + TEENS
              + "|"
              + TENS
              + "(?:[ -]"
              + ONES
              + ")?)(?!\\p{L})");

  private static final Pattern MONEY_WORD =
      Pattern.compile(
          "(?i)(?<!\\p{L})(?:paid|unpaid|pays?|paying|payments?|priced?|prices|pricey|costs?|costing|costly|"
              + "cheap|cheaper|cheapest|dearer|dearest|invoiced?|invoices|bills|budgets?|refund(?:s|ed)?"
              + "|credited|money|cash|cheques?|bank(?!"
              + " (?:the|up|it))|deposits?|instalments?|owed?|owes|fees?|taxe?s?|euros?|€uros?|dollars?|francs?"
              + "|kroner|krone|kronor|yen|quid|bucks|fivers?|tenners?|salary|wages?|discounts?|overdraft|loan"
              + "|bargains?|expensive|afford(?:s|ed|able)?|(?:am|are|is|was|were|flat|stony)\\s+broke|broke\\s+again"
              + "|earn(?:s|ed|ing|ings)?|profits?|bankrupt(?:cy)?|insolven(?:t|cy))(?!\\p{L})");

  private final Pattern codes = codes();

  private static Pattern codes() {
    String all =
        Currency.getAvailableCurrencies().stream()
            .map(Currency::getCurrencyCode)
            .sorted()
            .collect(Collectors.joining("|"));
    return Pattern.compile("\\d\\s?(?:" + all + ")(?!\\p{L})|(?<!\\p{L})(?:" + all + ")\\s?\\d");
  }

  @Override
  public void hear(AsRead text, Heard heard) {
    heard.all(DIGITS, text.seen(), A_SUM);
    heard.all(SPOKEN, text.seen(), A_SUM);
    heard.all(SPOKEN_PRICE, text.seen(), A_SUM);
    heard.all(codes, text.seen().toUpperCase(Locale.ROOT), A_SUM);
    heard.all(MONEY_WORD, text.seen(), "it speaks of money");
  }
}

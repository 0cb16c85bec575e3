package kitwright.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitwright.ledger.Entry;
import kitwright.ledger.Ledger;
import kitwright.ledger.Party;
import kitwright.ledger.Spend;
import kitwright.value.Dimension;
import kitwright.value.Unit;

/**
 * What the public does not read: names of parties and of those who were paid, claims, and money.
 * Errs on the side of silence: a text that only may be about one of these is not allowed.
 *
 * <ul>
 *   <li>A name is a party's whole name, its id, each word of the name that is not an everyday one,
 *       its contact, and whoever a spend was paid to; in any case and any width of letters. One or
 *       two letters are no name of their own.
 *   <li>A claim is any claim's id, and the word itself.
 *   <li>Money is a currency sign, an amount with an ISO 4217 code, a word such as “paid” or
 *       “cheque”, and a number of three digits or more that equals an amount of the ledger or its
 *       whole units, unless a unit follows it.
 * </ul>
 */
final class Discretion {
  private static final Set<String> EVERYDAY =
      Set.of(
          "and",
          "the",
          "of",
          "for",
          "your",
          "own",
          "name",
          "kit",
          "kits",
          "boat",
          "boats",
          "yard",
          "barn",
          "farm",
          "shop",
          "works",
          "marine",
          "timber",
          "wood",
          "sail",
          "sails",
          "supply",
          "supplies",
          "company",
          "sons",
          "brothers",
          "ltd",
          "gmbh",
          "inc",
          "designer",
          "engineer",
          "surveyor",
          "builder",
          "helper",
          "lender",
          "supplier",
          "maker",
          "neighbour");

  private static final Pattern SPEAKS_OF_MONEY =
      Pattern.compile(
          "\\p{Sc}|\\d\\s?(?:euro|dollar|cent|pound|franc|kron)|(?<![\\p{L}\\p{N}])(?:paid|pay|pays|paying|payments?|prices?|priced|pricey"
              + "|costs?|costing|costly|dear|cheap|cheaper|invoiced?|invoices|bills?|budgets?"
              + "|refund(?:s|ed)?|credit(?:s|ed)?|money|cash|cheques?|bank|deposits?|instalments?"
              + "|owed?|owes|fees?|taxe?s?|duty|euros?|cents?|dollars?|pounds?|francs?|kroner|krone"
              + "|kronor|yen|quid|bucks|claim(?:s|ed|ing)?)(?![\\p{L}\\p{N}])");

  private static final Pattern ADDRESS = Pattern.compile("\\S@\\S");
  private static final Pattern NUMBER =
      Pattern.compile("\\d+(?:[.,' \u2019]\\d+)*(?<tail>\\s?[\\p{L}%°]+\\d?)?");
  private static final int TELLING = 3;
  private static final int LONG = 5;

  private final Optional<Pattern> names;
  private final Pattern codes;
  private final Set<String> amounts;

  private Discretion(Optional<Pattern> names, Pattern codes, Set<String> amounts) {
    this.names = names;
    this.codes = codes;
    this.amounts = amounts;
  }

  /** What the public does not read of a ledger. */
  static Discretion of(Ledger ledger) {
    Set<String> names = new HashSet<>();
    ledger.parties().forEach(party -> addNames(party, names));
    ledger.claims().stream().map(Entry::id).map(Discretion::plain).forEach(names::add);
    ledger.spending().stream()
        .map(Spend::to)
        .flatMap(Optional::stream)
        .map(Discretion::plain)
        .forEach(names::add);
    Set<String> amounts =
        Amounted.in(ledger).flatMap(Discretion::writings).collect(Collectors.toSet());
    return new Discretion(pattern(names), codes(), amounts);
  }

  private static void addNames(Party party, Set<String> names) {
    names.add(plain(party.name()));
    String id = plain(party.id());
    if (id.length() >= TELLING && !EVERYDAY.contains(id)) {
      names.add(id);
      names.add(id.replaceAll("[-_.]+", " "));
    }
    party.contact().map(Discretion::plain).ifPresent(names::add);
    Stream.of(plain(party.name()).split("[^\\p{L}\\p{N}]+"))
        .filter(word -> word.codePointCount(0, word.length()) >= TELLING)
        .filter(word -> !EVERYDAY.contains(word))
        .forEach(names::add);
  }

  private static Optional<Pattern> pattern(Set<String> names) {
    List<String> parts =
        names.stream()
            .filter(name -> !name.isBlank())
            .sorted()
            .map(Discretion::asWord)
            .collect(Collectors.toCollection(ArrayList::new));
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(Pattern.compile(String.join("|", parts)));
  }

  /**
   * A long name wherever it stands, even within a word; a short one as a word of its own or with an
   * s. Scripts without spaces have no such ends.
   */
  private static String asWord(String name) {
    boolean spaced =
        name.codePoints().filter(Character::isLetter).allMatch(Discretion::hasCase)
            || name.codePoints().noneMatch(Character::isLetter);
    return spaced && name.length() < LONG
        ? "(?<![\\p{L}\\p{N}])" + Pattern.quote(name) + "s?(?![\\p{L}\\p{N}])"
        : Pattern.quote(name);
  }

  private static boolean hasCase(int letter) {
    return Character.isLowerCase(letter) || Character.isUpperCase(letter);
  }

  private static Pattern codes() {
    String all =
        Currency.getAvailableCurrencies().stream()
            .map(Currency::getCurrencyCode)
            .map(code -> code.toLowerCase(Locale.ROOT))
            .sorted()
            .collect(Collectors.joining("|"));
    return Pattern.compile(
        "\\d\\s?(?:" + all + ")(?![\\p{L}])|(?<![\\p{L}])(?:" + all + ")\\s?\\d");
  }

  /** The digits of an amount, in each way in which it may be written, to the unit too. */
  private static Stream<String> writings(BigDecimal amount) {
    String full = amount.abs().toPlainString();
    String bare = amount.abs().stripTrailingZeros().toPlainString();
    String below = amount.abs().setScale(0, RoundingMode.DOWN).toPlainString();
    String near = amount.abs().setScale(0, RoundingMode.HALF_UP).toPlainString();
    return Stream.of(full, bare, below, near)
        .map(text -> text.replace(".", ""))
        .filter(digits -> digits.length() >= TELLING);
  }

  /** Compatibility forms, one case, no invisible signs, single spaces. */
  private static String plain(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFKC)
        .toLowerCase(Locale.ROOT)
        .replaceAll("[\\p{Cf}\\p{Cc}&&[^\\s]]+", "")
        .replaceAll("[\\s\\p{Z}]+", " ")
        .strip();
  }

  /** Whether the public may read a text. */
  boolean allows(String text) {
    String plain = plain(text);
    return names.filter(pattern -> pattern.matcher(plain).find()).isEmpty()
        && !SPEAKS_OF_MONEY.matcher(plain).find()
        && !codes.matcher(plain).find()
        && !ADDRESS.matcher(plain).find()
        && !holdsAmount(plain);
  }

  /** Not “in”, which is a word before it is an inch, and not “each”, which follows a price. */
  private static boolean isUnit(String tail) {
    return !tail.isEmpty()
        && !tail.equals("in")
        && Unit.of(tail)
            .map(Unit::dimension)
            .filter(measure -> measure != Dimension.COUNT && measure != Dimension.PACKAGE)
            .isPresent();
  }

  private boolean holdsAmount(String plain) {
    Matcher number = NUMBER.matcher(plain);
    while (number.find()) {
      String tail = Optional.ofNullable(number.group("tail")).orElse("").strip();
      String digits = number.group().substring(0, number.group().length() - tail.length());
      if (!isUnit(tail) && amounts.contains(digits.replaceAll("\\D", ""))) {
        return true;
      }
    }
    return false;
  }
}

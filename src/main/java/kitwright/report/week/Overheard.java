package kitwright.report.week;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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

/**
 * What in a text looks private: names of people and firms, sums, claims, telephone numbers and
 * addresses. It rather shows a word too many to the author than one too few to the public, and it
 * changes nothing: what goes out is the author's to say.
 *
 * <p>Common practice, no source: how people write names and sums. Names are searched for without
 * accents, signs and case, whole and word by word, with a genitive s, as initials in capitals, and
 * long ones within other words and file names. An English word that is a name too counts where it
 * is written with a capital.
 */
public final class Overheard {
  /** Something that looks private. */
  record Suspicion(String words, String why) {}

  /** English words that people and firms are called by too. */
  private static final Set<String> COMMON =
      Set.of(
          ("a an and any are art as at august b back baker barn be bearings bell bill bird boat"
                  + " boatbuilder boatbuilders boats boatyard bob bow brass bronze brook brothers"
                  + " builder builders built burn by canvas carpenter chance chandler chandlery"
                  + " chemist chip church club co company composites cook council crane cranes cross"
                  + " customs dale dawn day dean dear designer do down drew east electric electrical"
                  + " energy engineer faith farm fasteners ferry field fittings ford forest foundry"
                  + " frank freight from gale garage glass glen good grace grant green grid guy hall"
                  + " harbour hardware harry has hazel he heath helper hill hire his hope house i if"
                  + " in inc insurance iris ironmonger it its ivy jack joy june king kit kits lane"
                  + " lender library line lines long love ltd maker makers march marina marine mark"
                  + " market marsh mason masts may me metals mill miller moor more my name neighbour"
                  + " new no north not of office on or our out own page paint paints park parts pat"
                  + " penny plywood pool port post power price ramp ray reed resin resins rich rigging"
                  + " river rob rock rod rope rose ross row sail sailmaker sails sandy saw sawmill"
                  + " shaw she shed shipping shop short sky slipway smith so sons south spars spring"
                  + " stable star steel still stone store stores street sue supplier supplies supply"
                  + " surveyor tar the they tide timber to tom tool tools town trailer trailers"
                  + " transport up van victor village walker water way we wells west white wide will"
                  + " wind winter wire with wood woods works workshop yard you young your")
              .split(" "));

  private static final Pattern SUM =
      Pattern.compile(
          "\\d{1,3}(?:[, \u00a0'’]\\d{3})+[.,]\\d{2}(?!\\d)|\\p{Sc}\\s?\\d[\\d.,  ]*|\\d[\\d., "
              + " ]*\\s?\\p{Sc}"
              + "|(?<![\\p{L}\\d.,×x/-])\\d+[.,]\\d{2}(?![\\d\\p{L}])(?!\\s?(?:%|°|[×x]\\s?\\d|(?:mm|cm|m|m2|m3|kg|g|l|ml|h|min|d|n|kn|mpa|gpa|k|c|ply|plies|to)(?!\\p{L})))"
              + "|(?<![\\p{L}\\d])\\d+(?:[.,]\\d+)?\\s?k(?![\\p{L}\\d])|(?i:(?<!\\p{L})(?:(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|twenty|thirty|forty|fifty|a|some|few|\\d+)["
              + " -])(?:hundred|thousand|grand)(?!\\s+(?:and\\s+)?(?:\\w+\\s+)?(?:of|mm|metres?|meters?|strokes?|screws?|holes?|clamps?|staples?|times|nails?|strips?|litres?|grams?|kilos?|years?|miles?|turns?|degrees?|newtons?|parts?|pieces?|steps?|passes|rivets?|hours?))(?!\\p{L}))");

  private static final Pattern MONEY_WORD =
      Pattern.compile(
          "(?i)(?<![\\p{L}])(?:paid|pays?|paying|payments?|priced?|prices|pricey|costs?|costing|costly|"
              + "cheap|cheaper|dearer|invoiced?|invoices|bills|budgets?|refund(?:s|ed)?|credited|money|cash|cheques?|bank(?!"
              + " (?:the|up|it))|deposits?|instalments?|owed?|owes|fees?|taxe?s?|euros?|dollars?|francs?"
              + "|kroner|krone|kronor|yen|quid|bucks|fivers?|tenners?|salary|wages?|discount|overdraft|loan)(?![\\p{L}])");

  private static final Pattern CLAIM_WORD =
      Pattern.compile(
          "(?i)(?<![\\p{L}])(?:claim(?:s|ed|ing)?|lawyers?|solicitors?|court|sue|sued|suing|dispute[sd]?"
              + "|compensation|complain(?:s|ed|ing|ts?)?|warranty|guarantee|legal|reminders?|settled?\\s+with|settlement"
              + "|refuse[sd]?\\s+to|blame[sd]?|fault\\s+of|liab\\w+)(?![\\p{L}])");

  private static final Pattern PHONE = Pattern.compile("\\+?\\d[\\d ().\\-/\u00a0]{5,}\\d");
  private static final Pattern DATE =
      Pattern.compile("\\d{4}-\\d{2}-\\d{2}|\\d{1,2}\\.\\d{1,2}\\.\\d{4}");
  private static final Pattern ADDRESS =
      Pattern.compile("[^\\s<>()\\[\\]\"']+@[^\\s<>()\\[\\]\"']*\\p{L}[^\\s<>()\\[\\]\"']*");
  private static final int PHONE_DIGITS = 7;
  private static final int LONG = 5;

  private final Map<String, Pattern> names = new LinkedHashMap<>();
  private final Map<String, Pattern> capitals = new LinkedHashMap<>();
  private final List<String> claims;
  private final Pattern codes;
  private final Set<String> amounts;

  private Overheard(Ledger ledger) {
    ledger.parties().stream().filter(party -> !party.isPublic()).forEach(this::party);
    ledger.spending().stream()
        .map(Spend::to)
        .flatMap(Optional::stream)
        .filter(payee -> ledger.parties().stream().noneMatch(party -> isPublic(party, payee)))
        .forEach(payee -> name(payee, "somebody who was paid"));
    this.claims = ledger.claims().stream().map(Entry::id).toList();
    this.codes = codes();
    this.amounts =
        Amounted.in(ledger)
            .flatMap(Overheard::writings)
            .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private static boolean isPublic(Party party, String payee) {
    return party.isPublic() && (party.id().equals(payee) || party.name().equals(payee));
  }

  /** What looks private beside the records of a ledger. */
  public static Overheard of(Ledger ledger) {
    return new Overheard(ledger);
  }

  private void party(Party party) {
    name(party.name(), "the name of " + party.id());
    name(party.id(), "the id of a party");
    party.contact().ifPresent(contact -> whole(contact, "how to reach " + party.id()));
    initials(party.name(), "the initials of " + party.id());
  }

  private void whole(String name, String why) {
    forms(name).forEach(form -> names.put(form + "\u0000" + why, word(form)));
  }

  /** A whole name and each of its words. */
  private void name(String name, String why) {
    if (name.strip().split("[^\\p{L}\\p{N}]+").length > 1) {
      whole(name, why);
    }
    for (String word : name.split("[^\\p{L}\\p{M}\\p{N}'’]+")) {
      if (word.codePointCount(0, word.length()) < 2 || word.chars().allMatch(Character::isDigit)) {
        continue;
      }
      for (String form : forms(word)) {
        if (COMMON.contains(form)) {
          capital(word, why);
        } else {
          names.put(form + "\u0000" + why, word(form));
        }
      }
    }
  }

  /** A common word is a name where it is written with a capital, as the record does. */
  private void capital(String word, String why) {
    if (Character.isUpperCase(word.codePointAt(0)) && !isFirmWord(word)) {
      capitals.put(
          word + "\u0000" + why,
          Pattern.compile("(?<![\\p{L}])" + Pattern.quote(word) + "(?:['’]?s)?(?![\\p{L}])"));
    }
  }

  /** What firms are called alike: no capital makes it the name of one. */
  private static final Set<String> FIRM =
      Set.of(
          ("and barn bearings boat boats boatyard brass bronze canvas chandler chandlery chemist"
                  + " club company composites council crane cranes customs designer electric"
                  + " electrical energy farm fasteners ferry fittings foundry freight from garage"
                  + " glass grid harbour hardware hire insurance ironmonger kit library line lines"
                  + " maker makers marina marine market masts metals name of office own paint paints"
                  + " parts plywood post power ramp resin resins rigging rope sail sails saw sawmill"
                  + " shipping shop slipway sons spars steel store stores supplies supply the timber"
                  + " tool tools trailer trailers transport village wire wood works workshop yard"
                  + " your")
              .split(" "));

  private static boolean isFirmWord(String word) {
    return FIRM.contains(word.toLowerCase(Locale.ROOT));
  }

  private void initials(String name, String why) {
    List<String> parts =
        Stream.of(name.strip().split("[\\s.]+")).filter(p -> !p.isEmpty()).toList();
    if (parts.size() < 2 || parts.size() > 4) {
      return;
    }
    String pattern =
        parts.stream()
            .map(part -> Pattern.quote(new String(Character.toChars(part.codePointAt(0)))))
            .collect(
                Collectors.joining("\\.?\\s?", "(?<![\\p{L}\\p{N}])", "\\.?(?![\\p{L}\\p{N}])"));
    capitals.put(name + "\u0000" + why, Pattern.compile(pattern));
  }

  private static Pattern word(String form) {
    return form.length() >= LONG
        ? Pattern.compile(Pattern.quote(form))
        : Pattern.compile("(?<![\\p{L}])" + Pattern.quote(form) + "s?(?![\\p{L}])");
  }

  /** A name as it may be written: without accents, or with the letter that stands for one. */
  private static Set<String> forms(String name) {
    String lower = Normalizer.normalize(name, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
    String doubled =
        lower
            .replace("å", "aa")
            .replace("ä", "ae")
            .replace("ö", "oe")
            .replace("ø", "oe")
            .replace("ü", "ue");
    return new LinkedHashSet<>(List.of(folded(lower), folded(doubled)));
  }

  /** One case, no accents, no signs within words, single spaces. */
  private static String folded(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFKD)
        .toLowerCase(Locale.ROOT)
        .replaceAll("[\\p{M}\\p{Cf}'’`´*_\\\\]+", "")
        .replace("ø", "o")
        .replace("æ", "ae")
        .replace("œ", "oe")
        .replace("ß", "ss")
        .replace("ł", "l")
        .replace("đ", "d")
        .replace("ð", "d")
        .replace("þ", "th")
        .replaceAll("[\\s\\p{Z}\\-]+", " ")
        .strip();
  }

  private static Pattern codes() {
    String all =
        Currency.getAvailableCurrencies().stream()
            .map(Currency::getCurrencyCode)
            .sorted()
            .collect(Collectors.joining("|"));
    return Pattern.compile("\\d\\s?(?:" + all + ")(?!\\p{L})|(?<!\\p{L})(?:" + all + ")\\s?\\d");
  }

  private static Stream<String> writings(BigDecimal amount) {
    String bare = amount.abs().stripTrailingZeros().toPlainString();
    String below = amount.abs().setScale(0, RoundingMode.DOWN).toPlainString();
    return Stream.of(bare, below).filter(digits -> digits.replace(".", "").length() >= 3);
  }

  /** Whether two words are the same without accents, signs and case. */
  static boolean isSame(String one, String other) {
    return !folded(one).isEmpty() && folded(one).equals(folded(other));
  }

  /** What of a text looks private, each thing once. */
  public List<Suspicion> in(String text) {
    String seen = Normalizer.normalize(decoded(text), Normalizer.Form.NFKC);
    String plain = folded(seen);
    Map<String, Suspicion> found = new LinkedHashMap<>();
    names.forEach((name, pattern) -> search(name, pattern, plain, found));
    capitals.forEach((name, pattern) -> search(name, pattern, unsigned(seen), found));
    for (String claim : claims) {
      if (plain.contains(folded(claim))) {
        put(claim, "the id of a claim", found);
      }
    }
    all(SUM, seen, "a sum", found);
    all(codes, seen.toUpperCase(Locale.ROOT), "a sum", found);
    all(MONEY_WORD, seen, "it speaks of money", found);
    all(CLAIM_WORD, seen, "it speaks of a claim", found);
    all(ADDRESS, seen, "an address", found);
    amounts(seen, found);
    phones(seen, found);
    return List.copyOf(found.values());
  }

  private static String unsigned(String text) {
    return text.replaceAll("[\\p{Cf}*_`\\\\]+", "");
  }

  /** The text, and what addresses and character references in it stand for. */
  private static String decoded(String text) {
    StringBuilder all = new StringBuilder(text);
    if (text.contains("%")) {
      try {
        all.append(' ').append(URLDecoder.decode(text.replace("+", "%2B"), StandardCharsets.UTF_8));
      } catch (IllegalArgumentException notEncoded) {
        return text;
      }
    }
    return all.append(entities(text)).toString();
  }

  /** Markdown may write a letter as a character reference. */
  private static String entities(String text) {
    if (!text.contains("&#")) {
      return "";
    }
    return " "
        + Pattern.compile("&#(?:x([0-9A-Fa-f]{1,6})|(\\d{1,7}));")
            .matcher(text)
            .replaceAll(
                match -> {
                  int code =
                      match.group(1) != null
                          ? Integer.parseInt(match.group(1), 16)
                          : Integer.parseInt(match.group(2));
                  return Character.isValidCodePoint(code)
                      ? Matcher.quoteReplacement(new String(Character.toChars(code)))
                      : "";
                });
  }

  private static void search(
      String name, Pattern pattern, String text, Map<String, Suspicion> found) {
    Matcher matcher = pattern.matcher(text);
    if (matcher.find()) {
      put(matcher.group().strip(), name.substring(name.indexOf('\u0000') + 1), found);
    }
  }

  private static void all(Pattern pattern, String text, String why, Map<String, Suspicion> found) {
    Matcher matcher = pattern.matcher(text);
    while (matcher.find()) {
      put(matcher.group().strip(), why, found);
    }
  }

  private static void put(String words, String why, Map<String, Suspicion> found) {
    found.putIfAbsent(words.toLowerCase(Locale.ROOT), new Suspicion(words, why));
  }

  /** A bare number of the ledger's money, where nothing that is counted or measured follows it. */
  private void amounts(String text, Map<String, Suspicion> found) {
    Matcher number =
        Pattern.compile(
                "(?<![\\p{L}\\d.,×-])(?<!x )\\d{1,3}(?:["
                    + " ,'’\u00a0]?\\d{3})*(?:[.,]\\d+)?(?![\\d\\p{L}])")
            .matcher(text);
    while (number.find()) {
      String digits = number.group().replaceAll("[ '’\u00a0]|,(?=\\d{3})", "").replace(',', '.');
      String rest = text.substring(number.end());
      boolean ends =
          rest.isBlank()
              || rest.matches("(?s)\\s*[.;:!?)].*")
              || rest.matches(
                  "(?s)\\s+(?:in all|altogether|all told|each|for (?:it|the|two|three|four|a)).*");
      if (ends && amounts.contains(digits) && !isYear(digits)) {
        put(number.group(), "an amount of the ledger", found);
      }
    }
  }

  private static boolean isYear(String digits) {
    return digits.matches("20\\d\\d");
  }

  private static void phones(String text, Map<String, Suspicion> found) {
    Matcher phone = PHONE.matcher(DATE.matcher(text).replaceAll("x"));
    while (phone.find()) {
      String digits = phone.group().replaceAll("\\D", "");
      boolean sum = phone.group().matches(".*\\d\\.\\d{1,2}.*") && !phone.group().contains("+");
      if (digits.length() >= PHONE_DIGITS && !sum) {
        put(phone.group(), "a telephone number", found);
      }
    }
  }
}

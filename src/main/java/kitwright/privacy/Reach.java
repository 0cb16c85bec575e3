package kitwright.privacy;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitwright.ledger.Ledger;
import kitwright.ledger.Party;

/** How to reach somebody: telephone numbers, mail addresses, and what a party's contact says. */
final class Reach implements Ear {
  private static final String PHONE_NUMBER = "a telephone number";
  private static final int PHONE_DIGITS = 7;
  private static final int LOCAL_DIGITS = 5;
  private static final int LETTERS = 4;

  private static final Pattern PHONE = Pattern.compile("\\+?\\d[\\d ().\\p{Pd}/\u00a0]{3,}\\d");
  private static final Pattern SPOKEN_PHONE =
      Pattern.compile(
          "(?i)(?<!\\p{L})(?:(?:zero|nought|oh|o|one|two|three|four|five|six|seven|eight|nine"
              + "|double|treble|triple)(?!\\p{L})[\\s,;\\p{Pd}]*){7,}");
  private static final Pattern DATE =
      Pattern.compile(
          "\\d{4}-\\d{2}-\\d{2}|\\d{1,2}\\.\\s?\\d{1,2}\\.\\s?\\d{4}|\\d{1,2}/\\d{1,2}/\\d{4}"
              + "|(?:19|20)\\d\\d\\s?[\\p{Pd}/]\\s?(?:19|20)\\d\\d");

  private static final Pattern ADDRESS =
      Pattern.compile(
          "[^\\s<>()\\[\\]\"']+@[^\\s<>()\\[\\]\"']*\\p{L}[^\\s<>()\\[\\]\"']*"
              + "|(?<![\\p{L}\\p{N}])@\\p{L}[\\w.]{2,}"
              + "|(?i:[\\[({]\\s*at\\s*[\\])}]|(?<!\\p{L})at\\s+[\\w-]+\\s+dot\\s+\\w+)");

  private final CommonWords common = CommonWords.read();
  private final Map<Pattern, String> words = new LinkedHashMap<>();

  /** The digits of each contact, with whom they reach. */
  private final Map<String, String> digits = new LinkedHashMap<>();

  static Reach in(Ledger ledger) {
    Reach reach = new Reach();
    ledger.parties().forEach(reach::add);
    return reach;
  }

  /** Also of those who may be named: a name is not a street. */
  private void add(Party party) {
    party
        .contact()
        .ifPresent(
            contact -> {
              String why = "how to reach " + party.id();
              digits.put(contact.replaceAll("\\D", ""), why);
              for (String word : contact.split("[^\\p{L}\\p{M}\\p{N}]+")) {
                word(word, why);
              }
            });
  }

  private void word(String word, String why) {
    for (String form : Folded.forms(word)) {
      if (form.length() >= LETTERS && !common.isEnglish(form)) {
        words.put(
            Pattern.compile("(?<![\\p{L}\\p{N}])" + Pattern.quote(form) + "s?(?![\\p{L}\\p{N}])"),
            why);
      }
    }
  }

  @Override
  public void hear(AsRead text, Heard heard) {
    words.forEach((pattern, why) -> heard.first(pattern, text.folded(), why));
    heard.all(ADDRESS, text.seen(), "an address");
    heard.all(SPOKEN_PHONE, text.seen(), PHONE_NUMBER);
    phones(text.seen(), heard);
  }

  private void phones(String text, Heard heard) {
    Matcher phone = PHONE.matcher(DATE.matcher(text).replaceAll("x"));
    while (phone.find()) {
      String dialled = phone.group().replaceAll("\\D", "");
      boolean sum = phone.group().matches(".*\\d\\.\\d{1,2}.*") && !phone.group().contains("+");
      if (dialled.length() >= PHONE_DIGITS && !sum) {
        heard.put(phone.group(), PHONE_NUMBER);
      } else if (dialled.length() >= LOCAL_DIGITS) {
        digits.forEach(
            (known, why) -> {
              if (known.contains(dialled)) {
                heard.put(phone.group(), why);
              }
            });
      }
    }
  }
}

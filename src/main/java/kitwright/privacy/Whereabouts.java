package kitwright.privacy;

import java.util.regex.Pattern;

/**
 * Where a place lies: degrees north and east in their usual ways, {@code geo:} (RFC 5870), and Open
 * Location Codes.
 *
 * @see "RFC 5870; Open Location Code, specification 1.0: eight digits of its alphabet, +, two more"
 */
final class Whereabouts implements Ear {
  private static final Pattern DEGREES =
      Pattern.compile(
          "(?i)-?\\d{1,2}[.,]\\d{3,}\\s?°?\\s?[NS]?\\s?[,;/ ]\\s?-?\\d{1,3}[.,]\\d{3,}"
              + "|\\d{1,2}\\s?°\\s?\\d{1,2}(?:[.,]\\d+)?\\s?['’′](?:\\s?\\d{1,2}(?:[.,]\\d+)?\\s?[\"”″])?\\s?[NS](?!\\p{L})"
              + "|[NS]\\s?\\d{1,2}\\s?°\\s?\\d{1,2}|\\d{1,2}[.,]\\d+\\s?°\\s?[NS](?!\\p{L})"
              + "|geo:-?\\d");
  private static final Pattern OPEN_LOCATION_CODE =
      Pattern.compile(
          "(?<![\\p{L}\\p{N}])[23456789CFGHJMPQRVWX]{4,8}\\+[23456789CFGHJMPQRVWX]{2,3}(?![\\p{L}\\p{N}])");

  @Override
  public void hear(AsRead text, Heard heard) {
    heard.all(DEGREES, text.seen(), "a place on the map");
    heard.all(OPEN_LOCATION_CODE, text.seen(), "a place on the map");
  }
}

package kitwright.document;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where a link leads or a picture lies, in a form that is safe in Markdown and in a page. */
public final class Destination {
  private static final String LETTERS =
      "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-._~";
  private static final Pattern SCHEME =
      Pattern.compile("([A-Za-z][A-Za-z0-9+.-]*):.*", Pattern.DOTALL);
  private static final Pattern WEB = Pattern.compile("(?i)https?|mailto");

  private final String reference;

  private Destination(String reference) {
    this.reference = reference;
  }

  /** A file, by its path from the document's folder, with forward slashes. */
  public static Destination file(String path) {
    return new Destination(encoded(path.replaceFirst("^/+", ""), LETTERS + "/"));
  }

  /**
   * An address as somebody wrote it: {@code https}, {@code http} or {@code mailto}, or relative.
   * Empty where it has another scheme or names another host without a scheme.
   */
  public static Optional<Destination> written(String address) {
    Matcher scheme = SCHEME.matcher(address);
    boolean trusted =
        scheme.matches()
            ? WEB.matcher(scheme.group(1)).matches()
            : !address.replace('\\', '/').startsWith("//");
    return trusted && address.codePoints().noneMatch(c -> c <= ' ' || c == 0x7F)
        ? Optional.of(new Destination(encoded(address, LETTERS + "/:?#@!$&*+,=%")))
        : Optional.empty();
  }

  /** The URI reference (RFC 3986), with nothing in it that Markdown would read as a sign. */
  public String reference() {
    return reference;
  }

  @Override
  public String toString() {
    return reference;
  }

  private static String encoded(String text, String kept) {
    var out = new StringBuilder();
    for (byte unit : text.getBytes(UTF_8)) {
      if (kept.indexOf(unit) >= 0) {
        out.append((char) unit);
      } else {
        out.append('%').append(HexFormat.of().withUpperCase().toHexDigits(unit));
      }
    }
    return out.toString();
  }
}

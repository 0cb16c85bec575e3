package kitwright.finding;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.HexFormat;

/** A ledger path as a relative reference (RFC 3986, section 4.2). */
final class RelativeUri {
  private static final String UNRESERVED =
      "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-._~";

  private RelativeUri() {}

  /**
   * The path with every byte of its UTF-8 form percent-encoded, save slashes and the unreserved
   * characters. A colon is encoded too, so that no first segment reads as a scheme.
   */
  static String of(String path) {
    var out = new StringBuilder();
    for (byte unit : path.getBytes(UTF_8)) {
      if (unit == '/' || UNRESERVED.indexOf(unit) >= 0) {
        out.append((char) unit);
      } else {
        out.append('%').append(HexFormat.of().withUpperCase().toHexDigits(unit));
      }
    }
    return out.toString();
  }
}

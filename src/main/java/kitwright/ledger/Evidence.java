package kitwright.ledger;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kitwright.value.Misread;
import kitwright.yaml.Fields;

/**
 * A file that shows something.
 *
 * @param file path from the ledger's root
 * @param sha256 what its SHA-256 was when it was recorded, 64 hexadecimal digits
 * @param says what it shows
 */
public record Evidence(
    String file, Optional<String> sha256, Optional<String> says, Optional<String> audience, At at) {
  static List<Evidence> list(Fields f, String key) {
    return f.each(key, Evidence::read, "file");
  }

  static Evidence read(Fields f) {
    return new Evidence(
        f.text("file"),
        f.maybe("sha256", Evidence::digest),
        f.maybeText("says"),
        f.maybeText("audience"),
        At.of(f));
  }

  private static String digest(String text) throws Misread {
    String digest = text.strip().toLowerCase(Locale.ROOT);
    if (!digest.matches("[0-9a-f]{64}")) {
      throw new Misread(
          "a SHA-256 has 64 hexadecimal digits, this has " + digest.length() + " characters",
          "run “kitwright hash FILE” and paste what it prints");
    }
    return digest;
  }
}

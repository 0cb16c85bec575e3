package kitwright.substitution;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import kitwright.ledger.Ledger;
import kitwright.ledger.Substitution;

/**
 * What a signature covers, as one number: the SHA-256 (FIPS 180-4) of a text in UTF-8.
 *
 * @param digits 64 hexadecimal digits in lower case
 */
public record Fingerprint(String digits) {
  /** How many digits tell two versions of a record apart well enough to be copied by hand. */
  private static final int SHORT = 12;

  /** The digits of a text. */
  public static Fingerprint of(String text) {
    return new Fingerprint(
        HexFormat.of().formatHex(sha256().digest(text.getBytes(StandardCharsets.UTF_8))));
  }

  /**
   * The digits of the first form, by which signatures from before there were statements are judged:
   * records as written, without the words and sizes of what is used, conditions and signer.
   */
  static Fingerprint ofFirstForm(Substitution substitution, Ledger ledger) {
    return of(FirstForm.text(substitution, ledger));
  }

  /** Whether digits written in a sign-off, 12 or more, are the first of this. */
  public boolean matches(String covers) {
    return covers.length() >= SHORT && digits.startsWith(covers);
  }

  /** The first twelve digits: what a sign-off has to quote at least. */
  public String brief() {
    return digits.substring(0, SHORT);
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException("every Java has SHA-256", missing);
    }
  }

  @Override
  public String toString() {
    return digits;
  }
}

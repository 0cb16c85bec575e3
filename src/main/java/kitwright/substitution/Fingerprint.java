package kitwright.substitution;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import kitwright.ledger.Ledger;
import kitwright.ledger.Substitution;

/**
 * What a signature covers, as one number: the SHA-256 (FIPS 180-4) of the canonical text of the
 * substitution, its assessment, the sections and materials these name, and its evidence. The same
 * for the same meaning, however the files are laid out; another for any other meaning.
 *
 * @param digits 64 hexadecimal digits in lower case
 */
public record Fingerprint(String digits) {
  /** How many digits tell two versions of a record apart well enough to be copied by hand. */
  private static final int SHORT = 12;

  /** The fingerprint of a substitution as the ledger now tells it. */
  public static Fingerprint of(Substitution substitution, Ledger ledger) {
    byte[] covered = Covered.text(substitution, ledger).getBytes(StandardCharsets.UTF_8);
    return new Fingerprint(HexFormat.of().formatHex(sha256().digest(covered)));
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

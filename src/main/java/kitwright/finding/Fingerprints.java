package kitwright.finding;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;

/**
 * What lets a forge see that today's finding is yesterday's. Lines move and days pass, so a finding
 * is known by its rule and its records; one without records by its rule, file and wording. Equals
 * are numbered in their order.
 */
final class Fingerprints {
  private Fingerprints() {}

  /** One for each finding, in the same order: SHA-256 in hexadecimal, a colon, the number. */
  static List<String> of(List<Finding> findings) {
    Map<String, Integer> seen = new HashMap<>();
    var out = new ArrayList<String>();
    for (Finding finding : findings) {
      String print = sha256(identity(finding));
      out.add(print + ":" + seen.merge(print, 1, Integer::sum));
    }
    return out;
  }

  private static String identity(Finding finding) {
    List<String> parts = new ArrayList<>(List.of(finding.rule()));
    parts.addAll(
        finding.records().isEmpty()
            ? List.of(finding.at().file(), finding.what())
            : finding.records());
    return String.join("\0", parts);
  }

  private static String sha256(String text) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(UTF_8));
      return HexFormat.of().formatHex(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}

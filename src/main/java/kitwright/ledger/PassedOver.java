package kitwright.ledger;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kitwright.finding.Finding;
import kitwright.finding.Severity;
import kitwright.value.Place;

/** Files that look like records but have a name that is not read. */
final class PassedOver {
  /** So much of a file tells what it is. */
  private static final int START = 4096;

  private PassedOver() {}

  /**
   * What is told of a file that is not read; empty where it is none of the ledger’s, such as a
   * photograph.
   */
  static Optional<Finding> finding(String named, Path file, BasicFileAttributes attributes) {
    String lower = named.toLowerCase(Locale.ROOT);
    if (lower.endsWith(".yaml") || lower.endsWith(".yml") || lower.endsWith(".md")) {
      return Optional.of(told(named, "Its ending is not in small letters.", lower));
    }
    if (lower.endsWith(".markdown")) {
      return Optional.of(
          told(named, "It ends in .markdown.", named.replaceFirst("\\.[^.]*$", ".md")));
    }
    boolean isText = lower.endsWith(".txt") || lower.endsWith(".text") || lower.indexOf('.') < 0;
    return isText && attributes.isRegularFile() ? ofText(named, file) : Optional.empty();
  }

  private static Optional<Finding> ofText(String named, Path file) {
    List<String> lines = start(file).replace("\uFEFF", "").lines().toList();
    if (lines.stream().anyMatch(PassedOver::isRecords)) {
      return Optional.of(
          told(
              named,
              "It holds records, but is not named like a file of them.",
              bare(named) + ".yaml"));
    }
    return isLog(lines)
        ? Optional.of(
            told(
                named,
                "It holds a day of the log, but is not named like one.",
                bare(named) + ".md"))
        : Optional.empty();
  }

  /** Whether a kind of record stands at the beginning of the line. */
  private static boolean isRecords(String line) {
    int colon = line.indexOf(':');
    return colon > 0 && Kind.of(line.substring(0, colon).stripTrailing()).isPresent();
  }

  private static boolean isLog(List<String> lines) {
    return !lines.isEmpty()
        && lines.get(0).stripTrailing().equals("---")
        && lines.stream().anyMatch(line -> line.startsWith("day:"));
  }

  private static String bare(String named) {
    return named.replaceFirst("(\\.(?:ya?ml|md))?\\.(?:txt|text)$", "");
  }

  private static String start(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      return new String(in.readNBytes(START), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      return "";
    }
  }

  /** A Markdown file among the days of the log that is none of them. */
  static Finding logWithoutKeys(String named) {
    return new Finding(
        "file-passed-over",
        Severity.WARN,
        new Place(named, 1, 1, 1, 2),
        "It lies among the days of the log, but has no keys between two lines of hyphens.",
        "It is read by nobody, so that the day is missing from the log.",
        "Begin it with a line of three hyphens, “day: 2026-01-31”, and another line of three"
            + " hyphens; or move it elsewhere.",
        List.of());
  }

  private static Finding told(String named, String what, String better) {
    return new Finding(
        "file-passed-over",
        Severity.WARN,
        Place.wholeFile(named),
        what,
        "It is read by nobody, and whatever it records is missing everywhere.",
        "Rename it to “" + better + "”, or move it out of the ledger.",
        List.of());
  }
}

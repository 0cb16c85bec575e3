package kitwright.ledger;

import java.util.List;
import java.util.Optional;
import kitwright.finding.Finding;
import kitwright.finding.Severity;

/**
 * What is known of something that broke inside, so that it can be told as a finding among others.
 *
 * @param record at which it came up, where that is known
 * @param fact which fact could not be worked out, where it was one
 * @param words what the fault says of itself
 */
public record Fault(Optional<Entry> record, Optional<String> fact, String words) {
  private static final String OURS =
      " If all is right there, the fault is Kitwright’s: please report it, with the record.";

  /** Reads it off what was thrown, and off what caused that. */
  public static Fault of(Throwable thrown) {
    Optional<String> fact = Optional.empty();
    Throwable root = thrown;
    for (Throwable each = thrown; each != null; each = each.getCause()) {
      if (each instanceof Facts.Broken broken) {
        fact = Optional.of(broken.fact());
      }
      root = each;
    }
    return new Fault(Optional.empty(), fact, words(root));
  }

  private static String words(Throwable root) {
    if (root instanceof StackOverflowError) {
      return "it is nested too deep";
    }
    if (root instanceof OutOfMemoryError) {
      return "it needs more memory than Java was given";
    }
    String said = root.getMessage();
    return said == null || said.isBlank()
        ? root.getClass().getSimpleName()
        : said.strip().replaceFirst("\\.$", "");
  }

  /** The same, at a record unless it names one itself. */
  public Fault at(Entry looked) {
    return record.isPresent() ? this : new Fault(Optional.of(looked), fact, words);
  }

  /**
   * Tells it.
   *
   * @param rule the finding's name
   * @param what what broke
   * @param follows what therefore is not told
   * @param build where it is told if no record is known
   */
  public Finding finding(String rule, String what, String follows, Entry build) {
    return new Finding(
        rule,
        Severity.STOP,
        record.orElse(build).at().record(),
        what + record.map(entry -> " at the " + entry.named()).orElse("") + ": " + words + ".",
        follows,
        (record.isPresent() ? "Look in that record" : "Look at what was changed last")
            + " for a number or a name that cannot be, and correct it."
            + OURS,
        record.map(entry -> List.of(entry.named())).orElse(List.of()));
  }
}

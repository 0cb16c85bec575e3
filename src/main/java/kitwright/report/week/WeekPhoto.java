package kitwright.report.week;

import java.util.List;
import java.util.Optional;
import kitwright.ledger.Evidence;

/**
 * A photo of a week.
 *
 * @param files where it may lie, from the ledger’s root; the first that is there counts
 * @param name what its page calls it: nothing of its own file name goes out
 * @param picture what the day says of it; empty where only the text shows it
 */
public record WeekPhoto(List<String> files, String name, Optional<Evidence> picture) {
  /** Words that may stand though they look private; {@code place} lets the place in it stand. */
  public List<String> allow() {
    return picture.map(Evidence::allow).orElse(List.of());
  }

  /** What it shows. */
  public Optional<String> says() {
    return picture.flatMap(Evidence::says);
  }
}

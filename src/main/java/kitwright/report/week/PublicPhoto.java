package kitwright.report.week;

import java.util.List;
import kitwright.ledger.Evidence;

/**
 * A photo that its author let the public see.
 *
 * @param name what the public calls it: nothing of its own file name goes out
 */
public record PublicPhoto(Evidence picture, String name) {
  /** Words that may stand though they look private; {@code place} lets the place in it stand. */
  public List<String> allow() {
    return picture.allow();
  }
}

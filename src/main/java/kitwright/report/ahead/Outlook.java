package kitwright.report.ahead;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.ledger.Facts;
import kitwright.network.Plan;
import kitwright.network.Planned;
import kitwright.network.Range;

/**
 * What the look-ahead is asked to show.
 *
 * @param last the last day looked at
 */
public record Outlook(Facts now, LocalDate last, Optional<Suppose> suppose, Optional<Range> range) {
  /** As far as the build looks ahead, without suppositions. */
  public static Outlook of(Facts now) {
    return new Outlook(now, Plan.on(now).horizon(), Optional.empty(), Optional.empty());
  }

  /** The open tasks that can be worked at by the last day, by that day. */
  public List<Planned> tasks() {
    return Plan.on(now).ahead().stream()
        .filter(planned -> !Plan.on(now).workableOn(planned.id()).isAfter(last))
        .toList();
  }

  boolean shows(String task) {
    return Plan.on(now).isOpen(task) && !Plan.on(now).workableOn(task).isAfter(last);
  }
}

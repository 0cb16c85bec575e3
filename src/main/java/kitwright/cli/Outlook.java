package kitwright.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.network.Planned;
import kitwright.network.Range;
import kitwright.openmatter.Bearings;

/**
 * What the look-ahead is asked to show.
 *
 * @param last the last day looked at
 */
record Outlook(Bearings now, LocalDate last, Optional<Suppose> suppose, Optional<Range> range) {
  /** The open tasks that can be worked at by the last day, by that day. */
  List<Planned> tasks() {
    return now.plan().ahead().stream()
        .filter(planned -> !now.plan().workableOn(planned.id()).isAfter(last))
        .toList();
  }

  boolean shows(String task) {
    return now.plan().isOpen(task) && !now.plan().workableOn(task).isAfter(last);
  }
}

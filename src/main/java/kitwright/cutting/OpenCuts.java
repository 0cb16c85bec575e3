package kitwright.cutting;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import kitwright.ledger.Cut;
import kitwright.ledger.Ledger;
import kitwright.ledger.LogDay;
import kitwright.ledger.Task;
import kitwright.value.Ref;

/** In which order cuts are made, and which of those that are done did not say what they took. */
final class OpenCuts {
  private final Ledger ledger;

  OpenCuts(Ledger ledger) {
    this.ledger = ledger;
  }

  /** Cuts that come before another and draw on the same stock, the first first. */
  List<Cut> before(Cut cut) {
    Set<String> from = names(cut);
    List<Cut> before = new ArrayList<>();
    for (Cut other : inOrder()) {
      if (other.id().equals(cut.id())) {
        return before;
      }
      if (names(other).stream().anyMatch(from::contains)) {
        before.add(other);
      }
    }
    return before;
  }

  /** Cuts that are done and draw on the same stock, whose taking nobody wrote. */
  List<Cut> unsaid(Cut cut) {
    Set<String> from = names(cut);
    return ledger.cuts().stream()
        .filter(other -> !other.id().equals(cut.id()) && isUnsaid(other))
        .filter(other -> names(other).stream().anyMatch(from::contains))
        .toList();
  }

  /** Whether a cut is done, but neither it nor the log says which pieces it took. */
  boolean isUnsaid(Cut cut) {
    return cut.done().isPresent() && !cut.at().has("used") && !isInTheLog(cut);
  }

  private boolean isInTheLog(Cut cut) {
    Set<String> from = names(cut);
    return ledger.log().stream()
        .flatMap(day -> day.used().stream().filter(used -> isOf(used, day, cut)))
        .anyMatch(used -> used.stock().filter(stock -> from.contains(stock.id())).isPresent());
  }

  private static boolean isOf(LogDay.Used used, LogDay day, Cut cut) {
    boolean ofTask =
        used.task().isPresent()
            && cut.task().isPresent()
            && used.task().get().id().equals(cut.task().get().id());
    return ofTask || (used.task().isEmpty() && cut.done().filter(day.day()::equals).isPresent());
  }

  /** As the ledger lists them; but what work must be done before other work is cut before it. */
  private List<Cut> inOrder() {
    List<Cut> open = ledger.cutsToMake();
    Map<String, Cut> order = new LinkedHashMap<>();
    for (Cut cut : open) {
      Set<String> ahead = ahead(cut);
      open.stream()
          .filter(other -> !other.id().equals(cut.id()))
          .filter(other -> other.task().filter(task -> ahead.contains(task.id())).isPresent())
          .forEach(other -> order.putIfAbsent(other.id(), other));
      order.putIfAbsent(cut.id(), cut);
    }
    return List.copyOf(order.values());
  }

  /** The tasks that must be done before a cut's own. */
  private Set<String> ahead(Cut cut) {
    Set<String> ahead = new HashSet<>();
    Deque<Ref> next = new ArrayDeque<>();
    cut.task().ifPresent(next::add);
    while (!next.isEmpty()) {
      ledger
          .task(next.remove())
          .map(Task::after)
          .orElse(List.of())
          .forEach(
              link -> {
                if (ahead.add(link.task().id())) {
                  next.add(link.task());
                }
              });
    }
    cut.task().ifPresent(task -> ahead.remove(task.id()));
    return ahead;
  }

  private static Set<String> names(Cut cut) {
    return cut.from().stream().map(Ref::id).collect(Collectors.toSet());
  }
}

package kitwright.kit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitwright.ledger.Ledger;
import kitwright.ledger.Substitution;
import kitwright.ledger.Task;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * Finds promises that are told twice but meant once: a substitution takes an off-cut, and a task on
 * the way to its hold point says that it uses it.
 */
final class SameWork {
  private SameWork() {}

  /** The promises without what is only told a second time. */
  static List<Promise> merged(List<Promise> promises, Ledger ledger) {
    List<Promise> left = new ArrayList<>(promises);
    for (Promise promise : promises) {
      if (promise.to() instanceof Substitution && promise.qty().isPresent()) {
        setOff(promise.qty().get(), onTheWayTo(promise.task(), ledger), left);
      }
    }
    return left;
  }

  private static void setOff(Quantity taken, Set<String> work, List<Promise> left) {
    Quantity credit = taken;
    for (int i = 0; i < left.size(); i++) {
      Promise other = left.get(i);
      if (!(other.to() instanceof Substitution) && isOf(other, work)) {
        Quantity asked = other.qty().orElse(Quantity.none(taken.unit()));
        Quantity rest = asked.less(credit);
        credit = credit.less(asked);
        left.set(i, new Promise(other.to(), Optional.of(rest), other.task(), other.at()));
      }
    }
  }

  private static boolean isOf(Promise promise, Set<String> work) {
    return promise.task().filter(task -> work.contains(task.id())).isPresent();
  }

  /** The held task and everything that must be done before it. */
  private static Set<String> onTheWayTo(Optional<Ref> held, Ledger ledger) {
    Set<String> work = new HashSet<>();
    Deque<Ref> ahead = new ArrayDeque<>();
    held.ifPresent(ahead::add);
    while (!ahead.isEmpty()) {
      Ref task = ahead.remove();
      if (work.add(task.id())) {
        ledger
            .task(task)
            .map(Task::after)
            .orElse(List.of())
            .forEach(link -> ahead.add(link.task()));
      }
    }
    return work;
  }
}

package kitwright.kit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import kitwright.ledger.Ledger;
import kitwright.ledger.Substitution;
import kitwright.ledger.Task;
import kitwright.network.Headways;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * Finds promises that are told twice but meant once: a substitution takes an off-cut, and a task on
 * the way to its hold point says that it uses it.
 */
public final class SameWork {
  private SameWork() {}

  /** The promises without what is only told a second time. */
  static List<Promise> merged(List<Promise> promises, Ledger ledger) {
    List<Promise> left = new ArrayList<>(promises);
    for (Promise promise : promises) {
      if (promise.to() instanceof Substitution) {
        setOff(promise.qty().orElseThrow(), onTheWayTo(promise.task(), ledger), left);
      }
    }
    return left;
  }

  /**
   * What is still asked for: less what is only told a second time, and less what its own work has
   * used. What the log tells of no work in particular may have been for work that is finished.
   */
  static List<Promise> ahead(
      List<Promise> promises, List<Use> uses, Ledger ledger, Headways headways) {
    List<Promise> left = merged(promises, ledger);
    List<Quantity> spent = new ArrayList<>(uses.stream().map(Use::qty).toList());
    for (int i = 0; i < left.size(); i++) {
      Set<String> work = workOf(left.get(i), ledger);
      left.set(i, less(left.get(i), uses, spent, use -> isIn(work, use.task())));
    }
    for (int i = 0; i < left.size(); i++) {
      if (left.get(i).task().filter(headways::hasEnded).isPresent()) {
        left.set(i, less(left.get(i), uses, spent, use -> use.task().isEmpty()));
      }
    }
    List<Promise> ahead = new ArrayList<>();
    for (int i = 0; i < left.size(); i++) {
      Promise told = promises.get(i);
      if (told.qty().isEmpty()) {
        ahead.add(told);
      } else if (!left.get(i).qty().orElseThrow().isNone()) {
        ahead.add(left.get(i));
      }
    }
    return ahead;
  }

  private static Set<String> workOf(Promise promise, Ledger ledger) {
    return promise.to() instanceof Substitution
        ? onTheWayTo(promise.task(), ledger)
        : promise.task().map(Ref::id).map(Set::of).orElse(Set.of());
  }

  /** A promise without what such uses took of it; each use serves one promise. */
  private static Promise less(
      Promise promise, List<Use> uses, List<Quantity> spent, Predicate<Use> own) {
    if (promise.qty().isEmpty()) {
      return promise;
    }
    Quantity rest = promise.qty().get();
    for (int i = 0; i < uses.size(); i++) {
      if (own.test(uses.get(i))) {
        Quantity part = rest.min(spent.get(i));
        rest = rest.less(part);
        spent.set(i, spent.get(i).less(part));
      }
    }
    return new Promise(promise.to(), Optional.of(rest), promise.task(), promise.at());
  }

  private static void setOff(Quantity taken, Set<String> work, List<Promise> left) {
    Quantity credit = taken;
    for (int i = 0; i < left.size(); i++) {
      Promise other = left.get(i);
      if (!(other.to() instanceof Substitution) && isIn(work, other.task())) {
        Quantity asked = other.qty().orElse(Quantity.none(taken.unit()));
        Quantity rest = asked.less(credit);
        credit = credit.less(asked);
        left.set(i, new Promise(other.to(), Optional.of(rest), other.task(), other.at()));
      }
    }
  }

  private static boolean isIn(Set<String> work, Optional<Ref> task) {
    return task.filter(each -> work.contains(each.id())).isPresent();
  }

  /** The ids of the held task and of everything that must be done before it, the held one first. */
  public static Set<String> onTheWayTo(Optional<Ref> held, Ledger ledger) {
    Set<String> work = new LinkedHashSet<>();
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

package kitwright.substitution;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.ledger.Substitution;
import kitwright.value.Ref;

/**
 * Which substitutions are taken to get round which shortages. Where the shortage is decided, it is
 * the one that was chosen; else one that says itself which shortage it answers, unless the shortage
 * lists other ways out beside it: then nobody has chosen yet. One that names no shortage and is
 * chosen for several serves those of one item.
 */
public final class TakenWays {
  private final Map<String, Set<String>> byShortage = new HashMap<>();

  /** Ids of those that are a way out of some shortage, taken or not. */
  private final Set<String> ways = new HashSet<>();

  private final Set<String> taken = new HashSet<>();

  TakenWays(Ledger ledger, Collection<Substitution> substitutions) {
    List<Shortage> oldestFirst =
        ledger.shortages().stream()
            .sorted(Comparator.comparing(Shortage::found).thenComparing(Shortage::id))
            .toList();
    for (Substitution each : substitutions) {
      List<Shortage> answered =
          oldestFirst.stream().filter(shortage -> answers(each, shortage)).toList();
      if (!answered.isEmpty()) {
        ways.add(each.id());
      }
      List<Shortage> chosen =
          answered.stream().filter(shortage -> isTaken(each, shortage)).toList();
      chosen.stream()
          .filter(shortage -> each.shortage().isPresent() || isOfItem(each, shortage, chosen))
          .forEach(shortage -> take(each, shortage));
    }
  }

  private void take(Substitution substitution, Shortage shortage) {
    byShortage.computeIfAbsent(shortage.id(), id -> new LinkedHashSet<>()).add(substitution.id());
    taken.add(substitution.id());
  }

  /** It says so, or says nothing and an option of the shortage names it. */
  private static boolean answers(Substitution substitution, Shortage shortage) {
    return substitution
        .shortage()
        .map(ref -> ref.id().equals(shortage.id()))
        .orElseGet(
            () -> shortage.options().stream().anyMatch(option -> names(option, substitution)));
  }

  private static boolean isTaken(Substitution substitution, Shortage shortage) {
    if (shortage.decided().isPresent()) {
      return shortage.chosen().filter(option -> isBy(option, substitution)).isPresent();
    }
    return substitution.shortage().isPresent()
        && shortage.options().stream().allMatch(option -> isBy(option, substitution));
  }

  /** Whether a way out is this substitution: it names it, or is one and names none. */
  private static boolean isBy(Shortage.Option option, Substitution substitution) {
    return option.substitution().isPresent()
        ? names(option, substitution)
        : option.way() == Shortage.Way.SUBSTITUTE && substitution.shortage().isPresent();
  }

  private static boolean names(Shortage.Option option, Substitution substitution) {
    return option.substitution().filter(ref -> ref.id().equals(substitution.id())).isPresent();
  }

  private static boolean isOfItem(
      Substitution substitution, Shortage shortage, List<Shortage> chosen) {
    String item = substitution.insteadOf().item().map(Ref::id).orElse(chosen.get(0).item().id());
    return shortage.item().id().equals(item);
  }

  /** The shortages of which a substitution takes the place, of some that are asked for. */
  public Set<String> of(Substitution substitution, Collection<String> shortages) {
    Set<String> all = new LinkedHashSet<>();
    for (String shortage : shortages) {
      if (isTaken(substitution, shortage)) {
        all.add(shortage);
      }
    }
    return all;
  }

  /** Whether a substitution is taken to get round a shortage. */
  public boolean isTaken(Substitution substitution, String shortage) {
    return Optional.ofNullable(byShortage.get(shortage))
        .filter(ids -> ids.contains(substitution.id()))
        .isPresent();
  }

  /** Whether it is a way out of a shortage and taken for none: it brings nothing. */
  public boolean isOnlyAnOption(Substitution substitution) {
    return ways.contains(substitution.id()) && !taken.contains(substitution.id());
  }

  /** Whether it is a way out of no shortage: a change of the design. */
  public boolean isOfNoShortage(Substitution substitution) {
    return substitution.shortage().isEmpty() && !ways.contains(substitution.id());
  }
}

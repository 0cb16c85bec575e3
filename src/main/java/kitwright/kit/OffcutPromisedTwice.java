package kitwright.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Cut;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;
import kitwright.ledger.Substitution;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/** Fires where the same stock or off-cut is promised to more work than it is enough for. */
public final class OffcutPromisedTwice implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    for (StockPosition position : Positions.on(day).allStock()) {
      if (position.promises().size() > 1) {
        broken(position, day.ledger()).ifPresent(promise -> out.add(finding(position, promise)));
      }
    }
  }

  /** The promise that cannot be kept: the first that goes beyond what there is. */
  private static Optional<Promise> broken(StockPosition position, Ledger ledger) {
    List<Promise> claims = SameWork.merged(position.promises(), ledger);
    Quantity spoken = Quantity.none(position.amount().unit());
    for (Promise promise : claims) {
      spoken = promise.qty().map(spoken::plus).orElse(spoken);
      if (spoken.compareAmount(position.amount()) > 0) {
        return Optional.of(promise);
      }
    }
    // A task or cut that names no amount needs at least something to be left for it.
    boolean nothingLeft = !spoken.isNone() && spoken.compareAmount(position.amount()) == 0;
    return claims.stream()
        .filter(promise -> nothingLeft && promise.qty().isEmpty())
        .filter(promise -> claims.stream().noneMatch(other -> isSame(promise, other)))
        .findFirst();
  }

  /** What is kept, or sawn, for work that says itself how much it takes is one promise. */
  private static boolean isSame(Promise kept, Promise other) {
    return other.qty().isPresent() && (isSameTask(kept, other) || isPartsOf(kept.to(), other.to()));
  }

  private static boolean isSameTask(Promise kept, Promise other) {
    return kept.task().isPresent() && kept.task().map(Ref::id).equals(other.task().map(Ref::id));
  }

  private static boolean isPartsOf(Entry cut, Entry substitution) {
    return cut instanceof Cut of
        && substitution instanceof Substitution
        && of.instead().filter(ref -> ref.id().equals(substitution.id())).isPresent();
  }

  private Finding finding(StockPosition position, Promise broken) {
    List<String> records = new ArrayList<>(List.of(position.stock().named()));
    position.promises().forEach(promise -> records.add(promise.to().named()));
    return warn(
        broken.at(),
        "Of "
            + position.stock().id()
            + " there are "
            + position.amount().told()
            + ", promised to "
            + position.promises().stream()
                .map(OffcutPromisedTwice::told)
                .collect(Collectors.joining(", "))
            + ".",
        "Whoever comes second finds it sawn up.",
        "Decide who gets it, and give the other work something else or buy more.",
        records.stream().distinct().toList());
  }

  private static String told(Promise promise) {
    return promise.to().named() + promise.qty().map(qty -> " (" + qty.told() + ")").orElse("");
  }
}

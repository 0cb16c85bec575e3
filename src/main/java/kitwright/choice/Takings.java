package kitwright.choice;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.kit.Position;
import kitwright.kit.Positions;
import kitwright.kit.Promise;
import kitwright.kit.StockPosition;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;
import kitwright.ledger.Substitution;
import kitwright.ledger.Task;
import kitwright.network.Plan;
import kitwright.shortage.Serves;
import kitwright.value.Quantity;

/** What a substitution takes of what is at hand, and whose it was. */
final class Takings {
  private final Facts now;
  private final Substitution substitution;

  private Takings(Facts now, Substitution substitution) {
    this.now = now;
    this.substitution = substitution;
  }

  static List<Taken> of(Facts now, Substitution substitution) {
    Takings takings = new Takings(now, substitution);
    return Serves.together(substitution.use()).stream().flatMap(takings::taken).toList();
  }

  private Stream<Taken> taken(Substitution.Take take) {
    Stream<Taken> ofStock =
        take.stock().flatMap(Positions.on(now)::ofStock).stream().map(at -> ofStock(at, take));
    Stream<Taken> ofItem =
        take.item().flatMap(Positions.on(now)::of).stream().map(at -> ofItem(at, take));
    return Stream.concat(ofStock, ofItem);
  }

  private Taken ofStock(StockPosition at, Substitution.Take take) {
    return taken(
        at.stock().id(), at.stock().what(), take.qty(), known(at.doubts(), at.left()), at.ahead());
  }

  private Taken ofItem(Position at, Substitution.Take take) {
    return taken(
        at.item().id(), at.item().what(), take.qty(), known(at.doubts(), at.left()), at.promises());
  }

  private static Optional<Quantity> known(List<String> doubts, Quantity left) {
    return Optional.of(left).filter(any -> doubts.isEmpty());
  }

  private Taken taken(
      String id, String what, Quantity qty, Optional<Quantity> atHand, List<Promise> promises) {
    Quantity more = stillTo(qty, promises);
    Optional<Quantity> left = atHand.filter(qty::convertsTo).map(each -> each.less(more));
    List<Promise> others = promises.stream().filter(this::isOfAnother).toList();
    boolean enough = left.filter(rest -> isEnough(rest, others)).isPresent();
    return new Taken(
        id,
        what,
        qty,
        left,
        atHand.filter(qty::convertsTo).map(more::less).filter(lack -> !lack.isNone()),
        others.stream()
            .filter(promise -> !enough || promise.qty().isEmpty())
            .map(this::name)
            .distinct()
            .toList());
  }

  /** Of what it takes, what its work has not used already; all of it where it is given up. */
  private Quantity stillTo(Quantity take, List<Promise> promises) {
    return substitution.withdrawn().isPresent()
        ? take
        : promises.stream()
            .filter(promise -> promise.to().equals(substitution))
            .flatMap(promise -> promise.qty().stream())
            .filter(take::convertsTo)
            .reduce(Quantity.none(take.unit()), Quantity::plus);
  }

  private static boolean isEnough(Quantity left, List<Promise> others) {
    Quantity spoken =
        others.stream()
            .map(Promise::qty)
            .flatMap(Optional::stream)
            .reduce(Quantity.none(left.unit()), Quantity::plus);
    return spoken.compareAmount(left) <= 0;
  }

  /** Promised to work that is still ahead and is not of this substitution. */
  private boolean isOfAnother(Promise promise) {
    boolean own = promise.to().equals(substitution);
    boolean sameTask =
        promise.task().isPresent()
            && promise.task().map(ref -> ref.id()).equals(substitution.hold().map(ref -> ref.id()));
    boolean done = promise.task().filter(task -> !Plan.on(now).isOpen(task.id())).isPresent();
    return !own && !sameTask && !done;
  }

  private String name(Promise promise) {
    Entry to = promise.to();
    return to instanceof Task task ? task.what() : to.named();
  }
}

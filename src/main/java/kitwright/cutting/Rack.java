package kitwright.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.kit.Positions;
import kitwright.kit.Promise;
import kitwright.kit.StockPosition;
import kitwright.ledger.Cut;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.Stock;
import kitwright.ledger.Substitution;
import kitwright.ledger.Task;
import kitwright.value.Days;
import kitwright.value.Decimal;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Word;

/**
 * The pieces that a cut may draw on.
 *
 * @param pieces with how many of each are free
 * @param withheld why others, or some of these, are not: one sentence each
 */
public record Rack(List<Free> pieces, List<String> withheld) {
  public Rack {
    pieces = List.copyOf(pieces);
    withheld = List.copyOf(withheld);
  }

  /**
   * Stock with so many pieces free for this cut.
   *
   * @param first the number of the first of them; those before go to cuts that are made earlier
   * @param at where the cut names it
   */
  public record Free(Stock stock, int count, int first, Ref at) {}

  /** What other cuts take, that go before. */
  record Gone(Cut to, Map<String, Integer> pieces) {}

  /** What is free for a cut: not used, not promised to other work, not taken by cuts before it. */
  static Rack of(Cut cut, Facts day, List<Gone> gone) {
    Ledger ledger = day.ledger();
    Positions positions = Positions.on(day);
    Map<String, Free> pieces = new LinkedHashMap<>();
    List<String> withheld = new ArrayList<>();
    for (Ref ref : cut.from()) {
      Optional<StockPosition> position = positions.ofStock(ref);
      if (position.isEmpty()) {
        withheld.add(absent(ref, day));
      } else if (position.get().stock().size().isEmpty()) {
        withheld.add(ref.id() + " has no size.");
      }
      if (position.isPresent()
          && position.get().stock().size().isPresent()
          && !pieces.containsKey(ref.id())) {
        Stock stock = position.get().stock();
        int free = free(position.get(), cut, ledger, withheld);
        int taken = taken(stock, gone, withheld);
        pieces.put(
            ref.id(), new Free(stock, Math.max(0, free - taken), Math.min(free, taken) + 1, ref));
      }
    }
    return new Rack(List.copyOf(pieces.values()), withheld);
  }

  private static String absent(Ref ref, Facts day) {
    return day.written()
        .stock(ref)
        .flatMap(Stock::since)
        .map(
            since -> ref.id() + " is there only from " + Days.named(since) + " on, by its “since”.")
        .orElse(Word.capital(day.written().noSuch(Kind.STOCK, ref.id())) + ".");
  }

  private static int taken(Stock stock, List<Gone> gone, List<String> withheld) {
    int taken = 0;
    for (Gone each : gone) {
      int pieces = each.pieces().getOrDefault(stock.id(), 0);
      taken += pieces;
      if (pieces > 0) {
        boolean done = each.to().done().isPresent();
        withheld.add(
            pieces
                + " of "
                + stock.id()
                + (pieces == 1 ? " goes" : " go")
                + (done
                    ? " for what the cut "
                        + each.to().id()
                        + " took: it is done, and nobody wrote its “used”."
                    : " to the cut " + each.to().id() + ", which is planned first."));
      }
    }
    return taken;
  }

  private static int free(StockPosition position, Cut cut, Ledger ledger, List<String> withheld) {
    Optional<String> untold = untold(position, cut, ledger);
    if (untold.isPresent()) {
      withheld.add(untold.get());
      return 0;
    }
    String name = position.stock().id();
    Quantity left = position.left();
    if (!position.used().isNone()) {
      withheld.add(Decimal.print(position.used().amount()) + " of " + name + " are used already.");
    }
    for (Promise promise : position.ahead()) {
      if (promise.to() instanceof Cut || isOver(promise) || isOwn(promise, cut, ledger)) {
        continue;
      }
      String to = promise.to().named();
      if (promise.qty().isPresent()) {
        left = left.less(promise.qty().get());
        withheld.add(
            Decimal.print(promise.qty().get().amount())
                + " of "
                + name
                + " are promised to the "
                + to
                + ".");
      } else if (promise.to().kind() == Kind.TASKS) {
        withheld.add(name + " is kept for the " + to + ".");
        left = Quantity.none(left.unit());
      }
    }
    return Math.max(0, left.amount().intValue());
  }

  /** Why nobody can tell how much of it may be sawn. */
  private static Optional<String> untold(StockPosition position, Cut cut, Ledger ledger) {
    String name = position.stock().id();
    if (Clearance.unclear(position.stock()).isPresent()) {
      return Optional.of("It is not known where a flaw of " + name + " lies: its ends cannot be.");
    }
    Optional<String> uncounted = Clearance.uncounted(position.stock());
    if (uncounted.isPresent()) {
      return uncounted.map(
          says ->
              "It is not known how many pieces of " + name + " there are: it says " + says + ".");
    }
    if (!position.doubts().isEmpty()) {
      return Optional.of(
          "It is not known how much of "
              + name
              + " is left, since "
              + String.join(", and ", position.doubts())
              + ".");
    }
    return Unnamed.keeper(position.stock(), cut, ledger)
        .map(
            nobody ->
                name
                    + " is kept for “"
                    + nobody.id()
                    + "”, and "
                    + ledger.noneHasIt(Kind.TASKS, nobody.id())
                    + ".");
  }

  /** A withdrawn substitution asks for nothing. */
  private static boolean isOver(Promise promise) {
    return promise.to() instanceof Substitution substitution
        && substitution.withdrawn().isPresent();
  }

  /** Promised to the cut's own task, or to the substitution that the cut makes the parts of. */
  private static boolean isOwn(Promise promise, Cut cut, Ledger ledger) {
    if (promise.to() instanceof Substitution substitution) {
      return cut.instead().filter(own -> own.id().equals(substitution.id())).isPresent()
          || isMadeBy(substitution, cut, ledger);
    }
    return cut.task().isPresent()
        && (promise.task().filter(task -> task.id().equals(cut.task().get().id())).isPresent()
            || (promise.to().kind() == Kind.TASKS
                && promise.to().id().equals(cut.task().get().id())));
  }

  /** Where nothing else is said: its held task is the cut's task, or comes straight after it. */
  private static boolean isMadeBy(Substitution substitution, Cut cut, Ledger ledger) {
    if (cut.instead().isPresent() || cut.task().isEmpty() || substitution.hold().isEmpty()) {
      return false;
    }
    String task = cut.task().get().id();
    Ref hold = substitution.hold().get();
    return hold.id().equals(task)
        || ledger.task(hold).map(Task::after).orElse(List.of()).stream()
            .anyMatch(link -> link.task().id().equals(task));
  }
}

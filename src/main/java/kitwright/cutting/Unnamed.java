package kitwright.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.ledger.Cut;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.Stock;
import kitwright.value.Ref;
import kitwright.value.Word;

/**
 * What a plan leaves out since a name stands there that nothing has: it may mean what would serve
 * better, so that nothing is proved.
 */
final class Unnamed {
  private Unnamed() {}

  /** A sentence each. */
  static List<String> in(Cut cut, Ledger ledger) {
    List<String> all = new ArrayList<>();
    cut.task()
        .filter(task -> !ledger.knows(Kind.TASKS, task.id()))
        .filter(task -> isSomethingKept(cut, task, ledger))
        .ifPresent(
            task ->
                all.add(
                    Word.capital(ledger.noSuch(Kind.TASKS, task.id()))
                        + "; what is kept for it might serve better."));
    boolean asks = cut.parts().stream().anyMatch(part -> part.material().isPresent());
    for (Ref ref : cut.from()) {
      Optional<Stock> stock = ledger.stock(ref);
      stock
          .flatMap(each -> keeper(each, cut, ledger))
          .ifPresent(
              task -> all.add(ref.id() + " is kept for nobody knows whom; it might serve better."));
      stock
          .filter(each -> each.size().isPresent() && Clearance.unclear(each).isPresent())
          .ifPresent(
              each ->
                  all.add(
                      "Where a flaw of "
                          + ref.id()
                          + " lies nobody can tell; it might serve better."));
      stock
          .filter(each -> each.size().isPresent() && Clearance.uncounted(each).isPresent())
          .ifPresent(
              each ->
                  all.add(
                      "How many pieces of "
                          + ref.id()
                          + " there are nobody can tell; it might serve better."));
      stock
          .flatMap(Stock::material)
          .filter(material -> asks && !ledger.knows(Kind.MATERIALS, material.id()))
          .ifPresent(
              material ->
                  all.add(
                      "No material is called “"
                          + material.id()
                          + "”; "
                          + ref.id()
                          + " might serve better."));
    }
    return all.stream().distinct().toList();
  }

  private static boolean isSomethingKept(Cut cut, Ref task, Ledger ledger) {
    return cut.from().stream()
        .flatMap(ref -> ledger.stock(ref).stream())
        .flatMap(stock -> stock.keepFor().stream())
        .anyMatch(kept -> !kept.id().equals(task.id()));
  }

  /** The task that stock is kept for, where it is none, nor the cut’s own by the same name. */
  static Optional<Ref> keeper(Stock stock, Cut cut, Ledger ledger) {
    return stock.keepFor().stream()
        .filter(task -> !ledger.knows(Kind.TASKS, task.id()))
        .filter(task -> cut.task().filter(own -> own.id().equals(task.id())).isEmpty())
        .findFirst();
  }
}

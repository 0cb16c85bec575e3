package kitwright.daybook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.LogDay;
import kitwright.ledger.Material;
import kitwright.ledger.Stock;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * Something that was used up, over some days.
 *
 * @param what its name
 */
public record Consumed(String what, Quantity qty) {

  /** What some days used up, in the order in which the log names it; units are drawn together. */
  public static List<Consumed> in(List<LogDay> days, Ledger ledger) {
    return in(days, used -> Optional.of(name(used, ledger)));
  }

  /** The same of what has a name. */
  public static List<Consumed> in(
      List<LogDay> days, Function<LogDay.Used, Optional<String>> called) {
    Map<String, List<Quantity>> sums = new LinkedHashMap<>();
    for (LogDay day : days) {
      for (LogDay.Used used : day.used()) {
        called
            .apply(used)
            .ifPresent(
                name -> add(sums.computeIfAbsent(name, any -> new ArrayList<>()), used.qty()));
      }
    }
    return sums.entrySet().stream()
        .flatMap(each -> each.getValue().stream().map(qty -> new Consumed(each.getKey(), qty)))
        .toList();
  }

  private static void add(List<Quantity> sums, Quantity more) {
    for (int i = 0; i < sums.size(); i++) {
      if (sums.get(i).convertsTo(more)) {
        sums.set(i, sums.get(i).plus(more));
        return;
      }
    }
    sums.add(more);
  }

  private static String name(LogDay.Used used, Ledger ledger) {
    Optional<String> what = used.item().flatMap(ledger::kitItem).map(KitItem::what);
    return what.or(() -> used.stock().flatMap(ledger::stock).map(Stock::what))
        .or(() -> used.material().flatMap(ledger::material).flatMap(Material::what))
        .or(() -> used.item().or(used::stock).or(used::material).map(Ref::id))
        .orElse("something without a name");
  }
}

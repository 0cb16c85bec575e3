package kitwright.daybook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    Map<String, List<Quantity>> sums = new LinkedHashMap<>();
    for (LogDay day : days) {
      for (LogDay.Used used : day.used()) {
        add(sums.computeIfAbsent(name(used, ledger), name -> new ArrayList<>()), used.qty());
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

package kitwright.kit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.KitItem;
import kitwright.ledger.Rule;

/**
 * Fires where every delivery has come and been counted, but some items are in no count and in no
 * shortage. One finding a crate, at its first such item.
 */
public final class KitUncounted implements Rule {
  private static final int NAMED = 5;

  @Override
  public void examine(Facts day, Findings out) {
    boolean allCounted =
        !day.ledger().deliveries().isEmpty()
            && day.ledger().deliveries().stream()
                .allMatch(
                    delivery -> delivery.received().isPresent() && !delivery.counted().isEmpty());
    if (!allCounted) {
      return;
    }
    Set<String> looked = new HashSet<>();
    day.ledger().shortages().forEach(each -> looked.add(each.item().id()));
    // What was counted in another unit is told by units-apart.
    day.ledger().deliveries().stream()
        .flatMap(delivery -> delivery.counted().stream())
        .forEach(line -> looked.add(line.item().id()));
    Map<String, List<KitItem>> byCrate = new LinkedHashMap<>();
    Positions.on(day).all().stream()
        .filter(position -> !position.promised().isNone())
        .map(Position::item)
        .filter(item -> !looked.contains(item.id()))
        .forEach(
            item ->
                byCrate
                    .computeIfAbsent(item.crate().orElse(""), crate -> new ArrayList<>())
                    .add(item));
    byCrate.forEach((crate, items) -> out.add(finding(crate, items)));
  }

  private Finding finding(String crate, List<KitItem> items) {
    String where = crate.isEmpty() ? "without a crate" : "of crate " + crate;
    String named = items.stream().limit(NAMED).map(KitItem::id).collect(Collectors.joining(", "));
    String more = items.size() > NAMED ? " and " + (items.size() - NAMED) + " more" : "";
    return note(
        items.get(0).at().record(),
        "Every delivery is counted, yet "
            + (items.size() == 1 ? "an item " : items.size() + " items ")
            + where
            + (items.size() == 1 ? " is" : " are")
            + " in no count: "
            + named
            + more
            + ".",
        "Nobody knows whether they are there, so nobody can claim them.",
        "Look for them; count what you find, with “qty: 0” where there is none.",
        items.stream().map(KitItem::named).toList());
  }
}

package kitwright.claim;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import kitwright.ledger.Facts;
import kitwright.spending.Books;
import kitwright.spending.Returned;
import kitwright.value.Ref;

/** What came back, by the shortages and the purchases that it is for; of refused money nothing. */
final class Refunds {
  private static final Facts.Fact<Refunds> FACT = day -> new Refunds(Books.on(day));

  private final Map<String, List<Returned>> byShortage = new HashMap<>();
  private final Map<String, List<Returned>> byPurchase = new HashMap<>();

  private Refunds(Books books) {
    for (Returned each : books.returned()) {
      if (each.came().signum() > 0) {
        each.refund().because().map(Ref::id).ifPresent(id -> add(byShortage, id, each));
        each.purchase().ifPresent(purchase -> add(byPurchase, purchase.id(), each));
        each.refund()
            .refunds()
            .map(Ref::id)
            .filter(id -> each.purchase().filter(one -> one.id().equals(id)).isEmpty())
            .ifPresent(id -> add(byPurchase, id, each));
      }
    }
  }

  static Refunds on(Facts day) {
    return FACT.on(day);
  }

  private static void add(Map<String, List<Returned>> index, String id, Returned each) {
    index.computeIfAbsent(id, any -> new ArrayList<>(1)).add(each);
  }

  /** For any of these shortages or purchases, each once, by day. */
  List<Returned> of(Set<String> shortages, Collection<String> purchases) {
    Map<String, Returned> all = new TreeMap<>();
    Stream.concat(found(byShortage, shortages), found(byPurchase, purchases))
        .forEach(each -> all.putIfAbsent(each.refund().id(), each));
    return all.values().stream().sorted(Comparator.comparing(each -> each.refund().on())).toList();
  }

  private static Stream<Returned> found(Map<String, List<Returned>> index, Collection<String> ids) {
    return ids.stream().flatMap(id -> index.getOrDefault(id, List.of()).stream());
  }
}

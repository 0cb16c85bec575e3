package kitwright.shortage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitwright.ledger.Ledger;
import kitwright.ledger.Spend;
import kitwright.value.Ref;

/** What was bought because of each shortage. */
final class Purchases {
  private final LocalDate today;
  private final Map<String, List<Purchase>> byShortage = new HashMap<>();
  private final Set<String> givenBack = new HashSet<>();
  private final Set<String> ordersPaid = new HashSet<>();
  private final Map<String, LocalDate> inStock = new HashMap<>();

  Purchases(Ledger ledger, LocalDate today) {
    this.today = today;
    List<Spend> spends =
        ledger.spending().stream().filter(spend -> !spend.on().isAfter(today)).toList();
    for (Spend spend : spends) {
      spend.refunds().map(Ref::id).ifPresent(givenBack::add);
      spend.pays().map(Ref::id).ifPresent(ordersPaid::add);
    }
    ledger.stock().stream()
        .filter(stock -> stock.since().filter(day -> day.isAfter(today)).isEmpty())
        .forEach(
            stock ->
                stock
                    .bought()
                    .ifPresent(ref -> inStock.put(ref.id(), stock.since().orElse(today))));
    spends.forEach(spend -> take(spend, spend.pays().flatMap(ledger::spend)));
  }

  /** What was bought because of a shortage and not given back. */
  List<Purchase> because(String shortage) {
    return byShortage.getOrDefault(shortage, List.of());
  }

  private void take(Spend spend, Optional<Spend> order) {
    Optional<Ref> because = spend.because().or(() -> order.flatMap(Spend::because));
    boolean counts =
        spend.state() != Spend.State.REFUNDED
            && !givenBack.contains(spend.id())
            && !ordersPaid.contains(spend.id());
    if (because.isPresent() && counts) {
      byShortage
          .computeIfAbsent(because.get().id(), id -> new ArrayList<>())
          .add(
              new Purchase(
                  spend,
                  spend.item().or(() -> order.flatMap(Spend::item)),
                  spend.qty().or(() -> order.flatMap(Spend::qty)),
                  expected(spend, order),
                  here(spend, order)));
    }
  }

  private static Optional<LocalDate> expected(Spend spend, Optional<Spend> order) {
    return spend.expected().or(() -> order.flatMap(Spend::expected));
  }

  /** Here: in stock, or paid and its day of arrival not to come. */
  private Optional<LocalDate> here(Spend spend, Optional<Spend> order) {
    Optional<LocalDate> stocked =
        Optional.ofNullable(inStock.get(spend.id()))
            .or(() -> order.flatMap(o -> Optional.ofNullable(inStock.get(o.id()))));
    if (stocked.isPresent() || spend.state() != Spend.State.PAID) {
      return stocked;
    }
    LocalDate day = expected(spend, order).filter(spend.on()::isBefore).orElse(spend.on());
    return day.isAfter(today) ? Optional.empty() : Optional.of(day);
  }
}

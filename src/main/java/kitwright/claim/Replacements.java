package kitwright.claim;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.ledger.Spend;
import kitwright.value.Ref;

/** What was bought in place of missing things, by shortage. */
final class Replacements {
  private static final Facts.Fact<Replacements> FACT = day -> new Replacements(day.ledger());

  private final Map<String, List<Spend>> byShortage = new HashMap<>();

  private Replacements(Ledger ledger) {
    Set<String> paid = new HashSet<>();
    ledger.spending().forEach(spend -> spend.pays().map(Ref::id).ifPresent(paid::add));
    for (Spend spend : ledger.spending()) {
      boolean counts = spend.state() == Spend.State.PAID || !paid.contains(spend.id());
      if (counts && spend.withdrawn().isEmpty()) {
        named(spend, ledger).stream()
            .flatMap(id -> ledger.shortage(id).stream())
            .filter(shortage -> isOfTheThing(spend, shortage, ledger))
            .forEach(
                shortage ->
                    byShortage.computeIfAbsent(shortage.id(), id -> new ArrayList<>(1)).add(spend));
      }
    }
  }

  static Replacements on(Facts day) {
    return FACT.on(day);
  }

  /** Payments for the thing, and orders of it that are not paid. */
  List<Spend> of(Shortage shortage) {
    return List.copyOf(byShortage.getOrDefault(shortage.id(), List.of()));
  }

  /** The shortages that a spend, or the order that it pays, names. */
  private static List<Ref> named(Spend spend, Ledger ledger) {
    Map<String, Ref> all = new HashMap<>();
    withOrder(spend, ledger)
        .flatMap(each -> Stream.concat(each.because().stream(), each.replaces().stream()))
        .forEach(ref -> all.putIfAbsent(ref.id(), ref));
    return List.copyOf(all.values());
  }

  private static Stream<Spend> withOrder(Spend spend, Ledger ledger) {
    return Stream.concat(Stream.of(spend), spend.pays().flatMap(ledger::spend).stream());
  }

  /** Whether a spend, or the order that it pays, bought the thing that a shortage lacks. */
  static boolean isOfTheThing(Spend spend, Shortage shortage, Ledger ledger) {
    return spend.state() != Spend.State.REFUNDED
        && withOrder(spend, ledger)
            .anyMatch(
                each ->
                    is(each.replaces(), shortage.id())
                        || (is(each.because(), shortage.id())
                            && is(each.item(), shortage.item().id())));
  }

  private static boolean is(Optional<Ref> ref, String id) {
    return ref.filter(named -> named.id().equals(id)).isPresent();
  }
}

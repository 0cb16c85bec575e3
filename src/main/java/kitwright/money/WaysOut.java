package kitwright.money;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.ledger.Spend;
import kitwright.ledger.Substitution;
import kitwright.ledger.Task;
import kitwright.spending.Books;
import kitwright.spending.Exchange;
import kitwright.spending.Valued;
import kitwright.value.Money;
import kitwright.value.Ref;
import kitwright.value.ThreePoint;

/**
 * What open shortages are still going to cost. A way out costs what its option says, less what is
 * paid and ordered because of the shortage already. Of an undecided shortage the forecast takes the
 * cheapest way out.
 */
final class WaysOut {
  private final Facts day;
  private final Ledger ledger;
  private final Exchange exchange;
  private final Map<String, List<Valued>> because = new HashMap<>();
  private final Map<String, Task> userOf = new HashMap<>();

  WaysOut(Facts day, Exchange exchange, List<Valued> valued) {
    this.day = day;
    ledger = day.ledger();
    this.exchange = exchange;
    valued.forEach(
        each ->
            each.answers()
                .ifPresent(
                    shortage ->
                        because.computeIfAbsent(shortage.id(), id -> new ArrayList<>()).add(each)));
    ledger.tasks().stream()
        .sorted(Comparator.comparing(Task::id))
        .forEach(
            task ->
                task.uses().stream()
                    .flatMap(use -> use.item().stream())
                    .forEach(item -> userOf.putIfAbsent(item.id(), task)));
  }

  /**
   * The open shortages that have a way out with a cost.
   *
   * @param covered ids of shortages that are over
   */
  List<OpenShortage> priced(Set<String> covered) {
    return ledger.shortages().stream()
        .filter(shortage -> !covered.contains(shortage.id()))
        .sorted(Comparator.comparing(Shortage::id))
        .flatMap(shortage -> open(shortage).stream())
        .toList();
  }

  /**
   * The others.
   *
   * @param known ids of shortages that are over, or of which all is on its way
   */
  List<UnpricedShortage> unpriced(Set<String> known) {
    return ledger.shortages().stream()
        .filter(shortage -> !known.contains(shortage.id()))
        .filter(shortage -> open(shortage).isEmpty())
        .map(shortage -> new UnpricedShortage(shortage, line(shortage)))
        .toList();
  }

  private Optional<OpenShortage> open(Shortage shortage) {
    boolean decided = shortage.decided().isPresent();
    Optional<Shortage.Option> chosen = shortage.chosen();
    Money spent =
        because.getOrDefault(shortage.id(), List.of()).stream()
            .map(Valued::signed)
            .reduce(Money.zero(exchange.home()), Money::plus);
    List<ThreePoint<Money>> costs =
        shortage.options().stream()
            .filter(
                option ->
                    !decided || chosen.filter(one -> one.at().equals(option.at())).isPresent())
            .flatMap(option -> cost(option, spent).stream())
            .toList();
    return costs.isEmpty()
        ? Optional.empty()
        : Optional.of(new OpenShortage(shortage, line(shortage), costs));
  }

  private Optional<ThreePoint<Money>> cost(Shortage.Option option, Money spent) {
    Money zero = Money.zero(exchange.home());
    Money off = spent.max(zero);
    return WayCost.of(option, day, exchange)
        .map(
            all ->
                new ThreePoint<>(
                    all.low().minus(off).max(zero),
                    all.likely().minus(off).max(zero),
                    all.high().minus(off).max(zero)));
  }

  /**
   * The line of a shortage: what it says itself; else that of its first spend; else that of the
   * task that uses the item, or that holds for its substitution.
   */
  private String line(Shortage shortage) {
    Stream<Ref> first =
        because.getOrDefault(shortage.id(), List.of()).stream()
            .map(Valued::spend)
            .min(Comparator.comparing(Spend::on).thenComparing(Spend::id))
            .map(Spend::line)
            .stream();
    Stream<Ref> using =
        Optional.ofNullable(userOf.get(shortage.item().id())).flatMap(Task::budget).stream();
    Stream<Ref> holding =
        shortage.options().stream()
            .flatMap(option -> option.substitution().flatMap(ledger::substitution).stream())
            .flatMap(substitution -> heldLine(substitution).stream());
    return Stream.of(shortage.line().stream(), first, using, holding)
        .flatMap(refs -> refs)
        .map(Ref::id)
        .filter(line -> ledger.knows(Kind.BUDGET, line))
        .findFirst()
        .orElse(Books.NO_LINE);
  }

  private Optional<Ref> heldLine(Substitution substitution) {
    return substitution.hold().flatMap(ledger::task).flatMap(Task::budget);
  }
}

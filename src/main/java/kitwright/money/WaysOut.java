package kitwright.money;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.ledger.Spend;
import kitwright.ledger.Substitution;
import kitwright.ledger.Task;
import kitwright.value.Money;
import kitwright.value.Ref;
import kitwright.value.ThreePoint;

/**
 * What open shortages are still going to cost. A way out costs what its option says, less what is
 * paid and ordered because of the shortage already. Of an undecided shortage the forecast takes the
 * cheapest way out.
 */
final class WaysOut {
  private final Ledger ledger;
  private final Exchange exchange;
  private final LocalDate asOf;
  private final Map<String, List<Valued>> because = new HashMap<>();
  private final Map<String, Task> userOf = new HashMap<>();

  private WaysOut(Ledger ledger, Exchange exchange, LocalDate asOf, List<Valued> valued) {
    this.ledger = ledger;
    this.exchange = exchange;
    this.asOf = asOf;
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
  static List<OpenShortage> of(
      Ledger ledger, Exchange exchange, LocalDate asOf, List<Valued> valued, Set<String> covered) {
    WaysOut ways = new WaysOut(ledger, exchange, asOf, valued);
    return ledger.shortages().stream()
        .filter(shortage -> !covered.contains(shortage.id()))
        .sorted(Comparator.comparing(Shortage::id))
        .flatMap(shortage -> ways.open(shortage).stream())
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
        : Optional.of(new OpenShortage(shortage, line(shortage), decided, costs));
  }

  private Optional<ThreePoint<Money>> cost(Shortage.Option option, Money spent) {
    if (option.way() == Shortage.Way.BUY && option.cost().isEmpty()) {
      return Optional.empty(); // nobody knows what it costs
    }
    ThreePoint<Money> asked = option.cost().orElse(ThreePoint.fixed(Money.zero(exchange.home())));
    Optional<Money> low = left(asked.low(), spent);
    Optional<Money> likely = left(asked.likely(), spent);
    Optional<Money> high = left(asked.high(), spent);
    return low.isPresent() && likely.isPresent() && high.isPresent()
        ? Optional.of(
            new ThreePoint<>(low.get(), likely.get(), high.get()).rising(Money::compareAmount))
        : Optional.empty();
  }

  private Optional<Money> left(Money cost, Money spent) {
    Money zero = Money.zero(exchange.home());
    return exchange.home(cost, asOf).money().map(all -> all.minus(spent.max(zero)).max(zero));
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

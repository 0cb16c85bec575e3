package kitwright.money;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.Loan;
import kitwright.spending.Books;
import kitwright.spending.Exchange;
import kitwright.spending.Valued;
import kitwright.value.Money;
import kitwright.value.Ref;
import kitwright.value.ThreePoint;

/** The damage to borrowed tools that is still owed to their lenders, in money. */
final class Repairs {
  private final Ledger ledger;
  private final Exchange exchange;
  private final LocalDate asOf;
  private final List<Valued> valued;

  private Repairs(Ledger ledger, Exchange exchange, LocalDate asOf, List<Valued> valued) {
    this.ledger = ledger;
    this.exchange = exchange;
    this.asOf = asOf;
    this.valued = valued;
  }

  static List<OpenRepair> of(
      Ledger ledger, Exchange exchange, LocalDate asOf, List<Valued> valued) {
    Repairs repairs = new Repairs(ledger, exchange, asOf, valued);
    return ledger.borrowed().stream()
        .flatMap(loan -> loan.repair().stream().flatMap(each -> repairs.open(loan, each)))
        .toList();
  }

  private Stream<OpenRepair> open(Loan loan, Loan.Repair repair) {
    if (!repair.isOwed()) {
      return Stream.empty();
    }
    String line =
        repair
            .line()
            .map(Ref::id)
            .filter(id -> ledger.knows(Kind.BUDGET, id))
            .orElse(Books.NO_LINE);
    return Stream.of(new OpenRepair(loan, line, repair.cost().flatMap(all -> left(all, loan))));
  }

  private Optional<ThreePoint<Money>> left(ThreePoint<Money> cost, Loan loan) {
    Optional<Money> low = left(cost.low(), loan);
    Optional<Money> likely = left(cost.likely(), loan);
    Optional<Money> high = left(cost.high(), loan);
    return low.isPresent() && likely.isPresent() && high.isPresent()
        ? Optional.of(
            new ThreePoint<>(low.get(), likely.get(), high.get()).rising(Money::compareAmount))
        : Optional.empty();
  }

  private Optional<Money> left(Money cost, Loan loan) {
    Money zero = Money.zero(exchange.home());
    Money spent =
        valued.stream()
            .filter(each -> each.repairs().filter(ref -> ref.id().equals(loan.id())).isPresent())
            .map(Valued::signed)
            .reduce(zero, Money::plus)
            .max(zero);
    return exchange.home(cost, asOf).money().map(all -> all.minus(spent).max(zero));
  }
}

package kitwright.loan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import kitwright.ledger.Build;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Loan;
import kitwright.ledger.Party;
import kitwright.value.Dimension;
import kitwright.value.Money;
import kitwright.value.Quantity;
import kitwright.value.Unit;

/**
 * How a borrowed tool stands on a day.
 *
 * @param lender empty where the reference dangles
 * @param daysKept days it was or has been with us, the first and the last counted
 * @param daysLeft days until it is due, below zero when it is late; empty where it is back or no
 *     day was agreed
 * @param saved what hiring one for those days would have cost, by calendar days; empty without a
 *     hire rate
 */
public record LoanStanding(
    Loan loan,
    Optional<Party> lender,
    State state,
    long daysKept,
    Optional<Long> daysLeft,
    Optional<Money> saved) {
  /** Where the tool is, and whether it should be. */
  public enum State {
    WITH_US,
    OVERDUE,
    RETURNED
  }

  private static final Facts.Fact<List<LoanStanding>> FACT =
      day ->
          day.ledger().borrowed().stream().map(loan -> of(loan, day.ledger(), day.day())).toList();

  /** Every tool borrowed up to the end of the day, in the ledger's order. */
  public static List<LoanStanding> on(Facts day) {
    return FACT.on(day);
  }

  /** How one tool stands, borrowed on that day or before. */
  static LoanStanding of(Loan loan, Ledger ledger, LocalDate today) {
    Optional<LocalDate> returned = loan.returned();
    Optional<Long> left =
        returned.isPresent()
            ? Optional.empty()
            : loan.due().map(day -> ChronoUnit.DAYS.between(today, day));
    long kept = Math.max(0, ChronoUnit.DAYS.between(loan.on(), returned.orElse(today)) + 1);
    long agreed =
        loan.due()
            .map(due -> Math.max(0, ChronoUnit.DAYS.between(loan.on(), due) + 1))
            .map(most -> Math.min(most, kept))
            .orElse(kept);
    return new LoanStanding(
        loan,
        ledger.party(loan.from()),
        state(returned, left),
        kept,
        left,
        saved(loan, agreed, ledger.build().week()));
  }

  private static State state(Optional<LocalDate> returned, Optional<Long> left) {
    if (returned.isPresent()) {
      return State.RETURNED;
    }
    return left.filter(days -> days < 0).isPresent() ? State.OVERDUE : State.WITH_US;
  }

  /**
   * For the days for which it was lent: what is kept longer saves nothing. A rate without a unit is
   * for a day; weeks count in sevenths, hours as hours of a working day.
   */
  private static Optional<Money> saved(Loan loan, long kept, Build.Week week) {
    Quantity days = new Quantity(BigDecimal.valueOf(kept), Unit.DAY);
    Quantity hours = new Quantity(week.hours().multiply(BigDecimal.valueOf(kept)), Unit.HOUR);
    return loan.hireRate()
        .filter(rate -> rate.per().map(Unit::dimension).orElse(Dimension.TIME) == Dimension.TIME)
        .map(rate -> rate.of(rate.per().equals(Optional.of(Unit.HOUR)) ? hours : days));
  }

  public boolean isBack() {
    return state == State.RETURNED;
  }
}

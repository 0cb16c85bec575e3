package kitwright.report.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.document.Cell;
import kitwright.document.Value;
import kitwright.ledger.Facts;
import kitwright.loan.LoanStanding;
import kitwright.money.Saving;
import kitwright.report.words.Say;
import kitwright.spending.Exchange;
import kitwright.value.Money;

/** What was saved: by what was at hand, and by borrowing instead of hiring; a sentence each. */
public final class Savings {
  private Savings() {}

  public static List<Cell> of(Facts now) {
    List<Cell> saved = new ArrayList<>();
    Saving.byStock(now).stream()
        .filter(saving -> saving.amount().signum() > 0)
        .map(
            saving ->
                told(
                    "By using what was at hand (" + saving.substitution() + "): ", saving.amount()))
        .forEach(saved::add);
    borrowed(now)
        .filter(money -> money.signum() > 0)
        .map(money -> told("By borrowing tools instead of hiring them: ", money))
        .ifPresent(saved::add);
    return saved;
  }

  private static Cell told(String how, Money money) {
    return Cell.text(how + Say.money(money)).with(new Value.Cash(money).beside());
  }

  private static Optional<Money> borrowed(Facts now) {
    Exchange exchange = Exchange.on(now);
    return LoanStanding.on(now).stream()
        .flatMap(loan -> loan.saved().stream())
        .flatMap(saved -> exchange.home(saved, now.day()).money().stream())
        .reduce(Money::plus);
  }
}

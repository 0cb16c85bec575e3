package kitwright.report.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.document.Inline;
import kitwright.ledger.Facts;
import kitwright.loan.LoanStanding;
import kitwright.money.Saving;
import kitwright.report.words.Say;
import kitwright.spending.Exchange;
import kitwright.value.Money;

/** What was saved: by what was at hand, and by borrowing instead of hiring; a sentence each. */
public final class Savings {
  private Savings() {}

  public static List<Inline> of(Facts now) {
    List<Inline> saved = new ArrayList<>();
    Saving.byStock(now).stream()
        .filter(saving -> saving.amount().signum() > 0)
        .map(
            saving ->
                "By using what was at hand ("
                    + saving.substitution()
                    + "): "
                    + Say.money(saving.amount()))
        .map(Inline::text)
        .forEach(saved::add);
    borrowed(now)
        .filter(money -> money.signum() > 0)
        .map(money -> "By borrowing tools instead of hiring them: " + Say.money(money))
        .map(Inline::text)
        .ifPresent(saved::add);
    return saved;
  }

  private static Optional<Money> borrowed(Facts now) {
    Exchange exchange = Exchange.on(now);
    return LoanStanding.on(now).stream()
        .flatMap(loan -> loan.saved().stream())
        .flatMap(saved -> exchange.home(saved, now.day()).money().stream())
        .reduce(Money::plus);
  }
}

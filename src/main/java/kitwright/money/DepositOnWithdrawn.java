package kitwright.money;

import java.util.List;
import java.util.Optional;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Spend;
import kitwright.spending.Books;
import kitwright.value.Days;
import kitwright.value.Money;

/** Fires where an order was given up, and what was paid for it has not come back. */
public final class DepositOnWithdrawn implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    day.ledger().spending().stream()
        .filter(order -> order.state() == Spend.State.ORDERED && order.withdrawn().isPresent())
        .forEach(order -> examine(order, Books.on(day), out));
  }

  private void examine(Spend order, Books books, Findings out) {
    List<Spend> paid = books.paymentsOf(order);
    Money kept = books.paid(order).minus(books.givenBack(order, Optional.empty()));
    if (kept.signum() > 0 && paid.stream().noneMatch(Spend::inFull)) {
      out.add(finding(order, paid.get(0), kept));
    }
  }

  private Finding finding(Spend order, Spend payment, Money kept) {
    return warn(
        payment.at().of("pays"),
        "The order "
            + order.id()
            + " was given up on "
            + Days.named(order.withdrawn().orElseThrow())
            + ", and "
            + kept.told()
            + " that were paid for it have not come back.",
        "They count as spent, for nothing.",
        "Ask for them, and record what comes with “state: refunded” and “refunds: "
            + payment.id()
            + "”; where the seller keeps them, write “in-full: yes” on the payment.",
        List.of(payment.named(), order.named()));
  }
}

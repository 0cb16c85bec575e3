package kitwright.money;

import java.math.BigDecimal;
import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Spend;
import kitwright.spending.Books;
import kitwright.spending.Exchange;
import kitwright.spending.Valued;
import kitwright.value.Money;

/** Fires where a little of an order stays open though its payment looks like the whole. */
public final class OrderNearlyPaid implements Rule {
  /** A discount, a rate or a bank's fee; more than that is more likely an instalment. */
  private static final BigDecimal LITTLE = new BigDecimal("0.05");

  @Override
  public void examine(Facts day, Findings out) {
    for (Valued each : Account.on(day).spends()) {
      Spend order = each.spend();
      if (order.state() == Spend.State.ORDERED) {
        Money open = each.counted();
        Exchange.on(day)
            .home(order.amount(), day.day(), order.rate())
            .money()
            .filter(all -> open.compareAmount(all.times(LITTLE)) <= 0)
            .ifPresent(all -> out.add(finding(order, open, payment(order, day))));
      }
    }
  }

  private static Spend payment(Spend order, Facts day) {
    return Books.on(day).paymentsOf(order).stream()
        .reduce((earlier, later) -> later.on().isBefore(earlier.on()) ? earlier : later)
        .orElse(order);
  }

  private Finding finding(Spend order, Money open, Spend payment) {
    return note(
        payment.at().of("amount"),
        "Of the order "
            + order.id()
            + " ("
            + order.amount().told()
            + ") "
            + open.told()
            + " stay open.",
        "They stand as ordered, and in the forecast, until somebody pays them.",
        "If nothing more is owed, write “in-full: yes” on the "
            + payment.named()
            + "; else leave it.",
        List.of(payment.named(), order.named()));
  }
}

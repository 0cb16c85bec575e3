package kitwright.money;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Spend;
import kitwright.spending.Exchange;
import kitwright.value.Money;

/** Fires where more is paid than was ordered. */
public final class PaidBeyondOrder implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    Exchange exchange = Exchange.on(day);
    Map<String, Money> paid = new HashMap<>();
    List<Spend> byDay =
        day.ledger().spending().stream()
            .filter(spend -> spend.pays().isPresent())
            .sorted(Comparator.comparing(Spend::on).thenComparing(Spend::id))
            .toList();
    for (Spend spend : byDay) {
      spend
          .pays()
          .flatMap(day.ledger()::spend)
          .ifPresent(
              order ->
                  exchange
                      .inOrder(spend, order, day.day())
                      .map(part -> paid.merge(order.id(), part, Money::plus))
                      .filter(any -> spend.cause().isEmpty())
                      .filter(sum -> isBeyond(sum, order, day))
                      .ifPresent(sum -> out.add(beyond(spend, order, sum))));
    }
  }

  /** What came back of the order or of a payment of it was not paid in the end. */
  private static boolean isBeyond(Money sum, Spend order, Facts day) {
    Money left = sum;
    for (Spend back : day.ledger().spending()) {
      boolean ofIt =
          back.refunds()
              .flatMap(day.ledger()::spend)
              .filter(bought -> isOf(bought, order))
              .isPresent();
      if (ofIt) {
        left = Exchange.on(day).inOrder(back, order, day.day()).map(left::minus).orElse(left);
      }
    }
    return left.compareAmount(order.amount()) > 0;
  }

  private static boolean isOf(Spend bought, Spend order) {
    return bought.id().equals(order.id())
        || bought.pays().filter(ref -> ref.id().equals(order.id())).isPresent();
  }

  private Finding beyond(Spend payment, Spend order, Money sum) {
    return note(
        payment.at().of("amount"),
        "With the "
            + payment.named()
            + " "
            + sum.told()
            + " are paid for "
            + order.id()
            + ", of which "
            + order.amount().told()
            + " were ordered.",
        "Either it was dearer than ordered, or something was paid twice.",
        "Compare the invoice; if it was dearer, write “cause: price” on the payment; what was paid"
            + " twice ask back, and record it with “state: refunded” and “refunds: "
            + payment.id()
            + "”.",
        List.of(payment.named(), order.named()));
  }
}

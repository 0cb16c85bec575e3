package kitwright.money;

import java.util.List;
import java.util.Optional;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Spend;
import kitwright.value.Days;
import kitwright.value.Money;
import kitwright.value.Ref;

/** Fires where an order was given up, and what was paid for it has not come back. */
public final class DepositOnWithdrawn implements Rule {
  @Override
  public String name() {
    return "deposit-on-withdrawn";
  }

  @Override
  public void examine(Facts day, Findings out) {
    Exchange exchange = Exchange.of(day.ledger());
    day.ledger().spending().stream()
        .filter(order -> order.state() == Spend.State.ORDERED && order.withdrawn().isPresent())
        .forEach(order -> examine(order, exchange, day, out));
  }

  private void examine(Spend order, Exchange exchange, Facts day, Findings out) {
    List<Spend> paid =
        day.ledger().spending().stream()
            .filter(spend -> spend.state() == Spend.State.PAID && names(spend.pays(), order))
            .toList();
    List<Spend> back =
        day.ledger().spending().stream()
            .filter(spend -> spend.state() == Spend.State.REFUNDED)
            .filter(
                spend ->
                    names(spend.refunds(), order)
                        || paid.stream().anyMatch(payment -> names(spend.refunds(), payment)))
            .toList();
    Money kept = sum(paid, order, exchange, day).minus(sum(back, order, exchange, day));
    if (kept.signum() > 0 && paid.stream().noneMatch(Spend::inFull)) {
      out.add(finding(order, paid.get(0), kept));
    }
  }

  private static boolean names(Optional<Ref> ref, Spend spend) {
    return ref.filter(named -> named.id().equals(spend.id())).isPresent();
  }

  private static Money sum(List<Spend> parts, Spend order, Exchange exchange, Facts day) {
    return parts.stream()
        .flatMap(part -> exchange.inOrder(part, order, day.day()).stream())
        .reduce(Money.zero(order.amount().currency()), Money::plus);
  }

  private Finding finding(Spend order, Spend payment, Money kept) {
    return new Finding(
        name(),
        Severity.WARN,
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

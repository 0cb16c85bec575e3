package kitwright.money;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;
import kitwright.ledger.Spend;
import kitwright.value.Money;

/** Fires where a payment equals an open order that nobody has paid, and does not name it. */
public final class PaymentUnlinked implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    Ledger ledger = day.ledger();
    Map<Money, List<Spend>> unpaid = unpaid(ledger);
    for (Spend payment : ledger.spending()) {
      if (payment.state() == Spend.State.PAID && payment.pays().isEmpty()) {
        List<Spend> orders = unpaid.getOrDefault(payment.amount(), List.of());
        Optional<Spend> order = orders.stream().filter(each -> isAlike(each, payment)).findFirst();
        order.ifPresent(
            each -> {
              orders.remove(each);
              out.add(finding(payment, each));
            });
      }
    }
  }

  /** Orders that stand and that no payment names, by their money. */
  private static Map<Money, List<Spend>> unpaid(Ledger ledger) {
    Set<String> paid = new HashSet<>();
    ledger.spending().forEach(spend -> spend.pays().ifPresent(order -> paid.add(order.id())));
    Map<Money, List<Spend>> unpaid = new HashMap<>();
    ledger.spending().stream()
        .filter(each -> each.state() == Spend.State.ORDERED && each.withdrawn().isEmpty())
        .filter(each -> !paid.contains(each.id()))
        .forEach(each -> unpaid.computeIfAbsent(each.amount(), any -> new ArrayList<>()).add(each));
    return unpaid;
  }

  /** On the same line or to the same firm, and not before it was ordered. */
  private static boolean isAlike(Spend order, Spend payment) {
    boolean there =
        order.line().id().equals(payment.line().id())
            || (order.to().isPresent() && order.to().equals(payment.to()));
    return there && !payment.on().isBefore(order.on());
  }

  private Finding finding(Spend payment, Spend order) {
    return note(
        payment.at().of("amount"),
        "The "
            + payment.named()
            + " is as much as the order "
            + order.id()
            + " ("
            + order.amount().told()
            + "), and does not say that it pays it.",
        "Both count, one as paid and one as still to be paid.",
        "If it pays the order, write “pays: "
            + order.id()
            + "”; if it is another purchase, nothing is to be done.",
        List.of(payment.named(), order.named()));
  }
}

package kitwright.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.edit.Answers;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.Spend;
import kitwright.value.Days;

/** Refuses a payment of what is no order, and a refund of what is no payment. */
final class NoSuchDeal {
  private NoSuchDeal() {}

  /**
   * @param all what was answered, by key
   */
  static void refuse(Map<String, Answers.Answer> all, Ledger ledger) {
    spend("pays", all, ledger)
        .filter(spend -> spend.state() != Spend.State.ORDERED)
        .ifPresent(spend -> refusePayment(spend, ledger));
    spend("refunds", all, ledger)
        .filter(spend -> spend.state() == Spend.State.REFUNDED)
        .ifPresent(NoSuchDeal::refuseRefund);
  }

  private static Optional<Spend> spend(String key, Map<String, Answers.Answer> all, Ledger ledger) {
    return Optional.ofNullable(all.get(key))
        .flatMap(answer -> ledger.find(Kind.SPENDING, answer.written()));
  }

  private static void refusePayment(Spend spend, Ledger ledger) {
    List<String> orders =
        ledger.spending().stream()
            .filter(each -> each.state() == Spend.State.ORDERED && each.withdrawn().isEmpty())
            .map(Spend::id)
            .toList();
    throw new Refusal(
        "“" + spend.id() + "” is no order: " + happened(spend) + ".",
        (orders.isEmpty() ? "" : "Name the order that is paid: " + String.join(", ", orders) + ". ")
            + "What was bought without an order is recorded with “kitwright buy”. Nothing was"
            + " changed.");
  }

  private static void refuseRefund(Spend spend) {
    throw new Refusal(
        "“" + spend.id() + "” is no payment: " + happened(spend) + ".",
        "Name the payment of which money came back"
            + spend.refunds().map(ref -> ", such as " + ref.id()).orElse("")
            + ". Nothing was changed.");
  }

  private static String happened(Spend spend) {
    String how =
        switch (spend.state()) {
          case ORDERED -> "ordered";
          case PAID -> "paid";
          case REFUNDED -> "money that came back";
        };
    return "it was " + how + " on " + Days.named(spend.on());
  }
}

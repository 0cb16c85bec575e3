package kitwright.money;

import java.util.List;
import java.util.Optional;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;
import kitwright.ledger.Spend;

/** Fires where a spend's keys do not go with its state. */
public final class SpendContradictory implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    day.written().spending().forEach(spend -> examine(spend, day.written(), out));
  }

  private void examine(Spend spend, Ledger ledger, Findings out) {
    if (spend.pays().isPresent() && spend.state() != Spend.State.PAID) {
      add(spend, "pays", "Only a payment pays an order", out);
    }
    if (spend.refunds().isPresent() && spend.state() != Spend.State.REFUNDED) {
      add(spend, "refunds", "Only a refund gives something back", out);
    }
    if (spend.inFull() && spend.pays().isEmpty()) {
      add(spend, "in-full", "Only a payment that names its order in “pays” closes it", out);
    }
    if (spend.withdrawn().isPresent() && spend.state() != Spend.State.ORDERED) {
      add(spend, "withdrawn", "Only an order can be given up", out);
    }
    Optional<Spend> paid = spend.pays().flatMap(ledger::spend);
    if (paid.filter(order -> order.state() != Spend.State.ORDERED).isPresent()) {
      add(spend, "pays", "“" + paid.get().id() + "” is no order", out);
    }
  }

  private void add(Spend spend, String key, String why, Findings out) {
    out.add(
        warn(
            spend.at().of(key),
            why + "; the " + spend.named() + " is in state “" + word(spend) + "”.",
            "The key “" + key + "” has no effect.",
            "Correct the state, or take the key out.",
            List.of(spend.named())));
  }

  private static String word(Spend spend) {
    return switch (spend.state()) {
      case ORDERED -> "ordered";
      case PAID -> "paid";
      case REFUNDED -> "refunded";
    };
  }
}

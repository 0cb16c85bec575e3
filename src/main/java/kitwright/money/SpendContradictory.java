package kitwright.money;

import java.util.List;
import java.util.Optional;
import kitwright.finding.Finding;
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
      out.add(
          odd(
              spend,
              "in-full",
              "The " + spend.named() + " says that nothing more is owed, and names no order.",
              "Name the order under “pays”, or take “in-full” out."));
    }
    if (spend.withdrawn().isPresent() && spend.state() != Spend.State.ORDERED) {
      add(spend, "withdrawn", "Only an order can be given up", out);
    }
    Optional<Spend> paid = spend.pays().flatMap(ledger::spend);
    if (paid.filter(order -> order.state() != Spend.State.ORDERED).isPresent()) {
      out.add(
          odd(
              spend,
              "pays",
              "The " + spend.named() + " pays “" + paid.get().id() + "”, which is no order.",
              "Name under “pays” the order that it pays, or take “pays” out."));
    }
  }

  private void add(Spend spend, String key, String why, Findings out) {
    out.add(
        odd(
            spend,
            key,
            why + "; the " + spend.named() + " is in state “" + word(spend) + "”.",
            "Correct “state”, or take “" + key + "” out."));
  }

  private Finding odd(Spend spend, String key, String what, String mend) {
    return warn(
        spend.at().of(key),
        what,
        "The key “" + key + "” has no effect.",
        mend,
        List.of(spend.named()));
  }

  private static String word(Spend spend) {
    return switch (spend.state()) {
      case ORDERED -> "ordered";
      case PAID -> "paid";
      case REFUNDED -> "refunded";
    };
  }
}

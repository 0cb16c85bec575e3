package kitwright.money;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Spend;

/** Fires where a refund does not say what it gives back. */
public final class RefundUnlinked implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    day.written().spending().stream()
        .filter(spend -> spend.state() == Spend.State.REFUNDED && spend.refunds().isEmpty())
        .forEach(refund -> out.add(unlinked(refund)));
  }

  private Finding unlinked(Spend refund) {
    return note(
        refund.at().of("state"),
        "The refund " + refund.id() + " does not say which payment it gives back.",
        "It is taken from the line "
            + refund.line()
            + " as a whole, and nobody sees when too much comes back.",
        "Add “refunds: ID” with the payment or the order.",
        List.of(refund.named()));
  }
}

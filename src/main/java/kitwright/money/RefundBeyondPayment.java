package kitwright.money;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Spend;

/** Fires where more is refunded than was paid. */
public final class RefundBeyondPayment implements Rule {
  @Override
  public String name() {
    return "refund-beyond-payment";
  }

  @Override
  public void examine(Facts day, Findings out) {
    Account.on(day).refused().stream()
        .filter(each -> each.purchase().isPresent() && each.left().signum() > 0)
        .forEach(each -> out.add(beyond(each, each.purchase().get())));
    Account.on(day).refused().stream()
        .filter(each -> each.purchase().isEmpty())
        .forEach(each -> out.add(beyondLine(each)));
  }

  private Finding beyond(Refused each, Spend purchase) {
    return new Finding(
        name(),
        Severity.STOP,
        each.refund().at().of("amount"),
        "The refund "
            + each.refund().id()
            + " gives back "
            + each.asked().told()
            + ", but of "
            + purchase.named()
            + " only "
            + each.left().told()
            + " were paid and not yet refunded.",
        "Only " + each.left().told() + " count as come back; a refund never makes money.",
        "Correct the amount, or name in “refunds” the payment that it really gives back.",
        List.of(each.refund().named(), purchase.named()));
  }

  private Finding beyondLine(Refused each) {
    return new Finding(
        name(),
        Severity.STOP,
        each.refund().at().of("amount"),
        "The refund "
            + each.refund().id()
            + " gives back "
            + each.asked().told()
            + ", but only "
            + each.left().told()
            + " were paid on the line "
            + each.refund().line()
            + " and not yet refunded.",
        "Only " + each.left().told() + " count as come back; a refund never makes money.",
        "Name in “refunds” the payment that it gives back, or correct the amount.",
        List.of(each.refund().named()));
  }
}

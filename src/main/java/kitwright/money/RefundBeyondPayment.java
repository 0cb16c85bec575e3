package kitwright.money;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Spend;
import kitwright.spending.Refused;
import kitwright.value.Days;

/** Fires where more is refunded than was paid. */
public final class RefundBeyondPayment implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    List<String> lacks = Lacks.ofSpending(day);
    Account.on(day).refused().stream()
        .filter(each -> each.purchase().isPresent() && !each.isOfUnpaid())
        .forEach(each -> out.add(beyond(each, each.purchase().get(), lacks)));
    Account.on(day).refused().stream()
        .filter(each -> each.purchase().isEmpty())
        .forEach(each -> out.add(beyondLine(each, lacks)));
  }

  private Finding beyond(Refused each, Spend purchase, List<String> lacks) {
    return stop(
        each.refund().at().of("amount"),
        (lacks.isEmpty() ? "The refund " : Lacks.asFar(lacks) + "the refund ")
            + each.refund().id()
            + " gives back "
            + each.asked().told()
            + (each.left().signum() > 0
                ? ", but of "
                    + purchase.named()
                    + " only "
                    + each.left().told()
                    + " were paid and not yet refunded."
                : ", but all that was paid for " + purchase.named() + " had come back already."),
        follows(each) + Lacks.why(lacks),
        "Correct the amount, or name in “refunds” the payment that it really gives back.",
        List.of(each.refund().named(), purchase.named()));
  }

  private static String follows(Refused each) {
    return (each.left().signum() > 0
            ? "Only " + each.left().told() + " count as come back"
            : "It does not count as come back")
        + "; a refund never makes money.";
  }

  private Finding beyondLine(Refused each, List<String> lacks) {
    return stop(
        each.refund().at().of("amount"),
        (lacks.isEmpty() ? "The refund " : Lacks.asFar(lacks) + "the refund ")
            + each.refund().id()
            + " gives back "
            + each.asked().told()
            + ", but "
            + (each.left().signum() > 0 ? "only " + each.left().told() + " were" : "nothing was")
            + " paid on the line "
            + each.refund().line()
            + " by "
            + Days.named(each.refund().on())
            + " and not yet refunded.",
        follows(each) + Lacks.why(lacks),
        "Name in “refunds” the payment that it gives back, or correct its day or its amount.",
        List.of(each.refund().named()));
  }
}

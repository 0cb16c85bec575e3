package kitwright.money;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Spend;
import kitwright.spending.Books;
import kitwright.spending.Refused;
import kitwright.value.Days;

/** Fires where a refund names something that nobody had paid by then. */
public final class RefundOfUnpaid implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    Books.on(day).refused().stream()
        .filter(Refused::isOfUnpaid)
        .forEach(
            each ->
                each.refund()
                    .refunds()
                    .flatMap(day.ledger()::spend)
                    .ifPresent(bought -> out.add(unpaid(each.refund(), bought))));
  }

  private Finding unpaid(Spend refund, Spend bought) {
    return stop(
        refund.at().of("refunds"),
        "The refund "
            + refund.id()
            + " gives back "
            + bought.id()
            + ", of which nothing was paid by "
            + Days.named(refund.on())
            + ".",
        "It does not count as come back until a payment stands before it.",
        mend(bought),
        List.of(refund.named(), bought.named()));
  }

  private static String mend(Spend bought) {
    return switch (bought.state()) {
      case ORDERED ->
          "Record the payment (“state: paid, pays: "
              + bought.id()
              + "”), or name the payment that this gives back; an order given up has"
              + " “withdrawn: DATE” instead of a refund.";
      case PAID ->
          "Correct the day of the refund or of the payment ("
              + Days.named(bought.on())
              + "), or name the payment that this gives back.";
      case REFUNDED -> "Name under “refunds” the payment that this gives back, not a refund.";
    };
  }
}

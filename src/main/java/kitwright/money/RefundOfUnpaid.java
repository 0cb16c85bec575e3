package kitwright.money;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;
import kitwright.ledger.Spend;
import kitwright.value.Days;

/** Fires where a refund names something that nobody had paid by then. */
public final class RefundOfUnpaid implements Rule {
  @Override
  public String name() {
    return "refund-of-unpaid";
  }

  @Override
  public void examine(Facts day, Findings out) {
    day.ledger().spending().stream()
        .filter(spend -> spend.state() == Spend.State.REFUNDED)
        .forEach(
            refund ->
                refund
                    .refunds()
                    .flatMap(day.ledger()::spend)
                    .filter(bought -> !wasPaid(bought, refund.on(), day.ledger()))
                    .ifPresent(bought -> out.add(unpaid(refund, bought))));
  }

  private static boolean wasPaid(Spend bought, LocalDate by, Ledger ledger) {
    return switch (bought.state()) {
      case PAID -> !bought.on().isAfter(by);
      case REFUNDED -> false;
      case ORDERED ->
          ledger.spending().stream()
              .anyMatch(
                  spend ->
                      spend.state() == Spend.State.PAID
                          && !spend.on().isAfter(by)
                          && named(spend.pays(), bought));
    };
  }

  private static boolean named(Optional<kitwright.value.Ref> ref, Spend spend) {
    return ref.filter(named -> named.id().equals(spend.id())).isPresent();
  }

  private Finding unpaid(Spend refund, Spend bought) {
    return new Finding(
        name(),
        Severity.STOP,
        refund.at().of("refunds"),
        "The refund "
            + refund.id()
            + " gives back "
            + bought.id()
            + ", of which nothing was paid by "
            + Days.named(refund.on())
            + ".",
        "It does not count as come back until a payment stands before it.",
        "Record the payment (“state: paid, pays: "
            + bought.id()
            + "”), or name the payment that this gives back; an order given up has"
            + " “withdrawn: DATE” instead of a refund.",
        List.of(refund.named(), bought.named()));
  }
}

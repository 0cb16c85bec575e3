package kitwright.money;

import java.util.List;
import java.util.Optional;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Spend;
import kitwright.spending.Exchange;
import kitwright.value.Money;

/** Fires where tax and duty are more than the amount that they are part of. */
public final class TaxBeyondAmount implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    Exchange exchange = Exchange.of(day.written());
    day.written().spending().stream()
        .filter(spend -> spend.tax().isPresent() || spend.duty().isPresent())
        .filter(spend -> isBeyond(spend, exchange))
        .forEach(spend -> out.add(beyond(spend)));
  }

  private static boolean isBeyond(Spend spend, Exchange exchange) {
    Money zero = Money.zero(spend.amount().currency());
    Money parts = in(spend, spend.tax(), exchange).plus(in(spend, spend.duty(), exchange));
    return parts.compareAmount(spend.amount().max(zero)) > 0;
  }

  private static Money in(Spend spend, Optional<Money> part, Exchange exchange) {
    return part.flatMap(
            money -> exchange.convert(money, spend.amount().currency(), spend.on()).money())
        .orElse(Money.zero(spend.amount().currency()));
  }

  private Finding beyond(Spend spend) {
    String key = spend.tax().isPresent() ? "tax" : "duty";
    return stop(
        spend.at().of(key),
        "Tax and duty of the "
            + spend.named()
            + " ("
            + spend.tax().map(Money::told).orElse("no tax")
            + ", "
            + spend.duty().map(Money::told).orElse("no duty")
            + ") are more than its amount of "
            + spend.amount().told()
            + ".",
        "The shares of tax, duty and goods are false.",
        "“amount” holds everything that was paid, tax and duty within it; correct it or the tax.",
        List.of(spend.named()));
  }
}

package kitwright.money;

import java.util.List;
import java.util.Optional;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.At;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Spend;
import kitwright.value.Money;

/** Fires where an amount is below zero that cannot be. */
public final class MoneyNegative implements Rule {
  @Override
  public String name() {
    return "money-negative";
  }

  @Override
  public void examine(Facts day, Findings out) {
    day.ledger().spending().forEach(spend -> spend(spend, out));
    day.ledger().budget().forEach(line -> judge(line, line.at(), "amount", line.amount(), out));
    day.ledger()
        .budget()
        .forEach(
            line ->
                line.remaining()
                    .ifPresent(left -> judge(line, line.at(), "remaining", left.low(), out)));
    maybe(day.ledger().build(), "contingency", day.ledger().build().contingency(), out);
    maybe(day.ledger().build(), "own-hour", day.ledger().build().ownHour(), out);
    day.ledger()
        .shortages()
        .forEach(
            shortage ->
                shortage
                    .options()
                    .forEach(
                        option ->
                            option
                                .cost()
                                .ifPresent(
                                    cost ->
                                        judge(shortage, option.at(), "cost", cost.low(), out))));
  }

  private void spend(Spend spend, Findings out) {
    judge(spend, spend.at(), "amount", spend.amount(), out);
    maybe(spend, "tax", spend.tax(), out);
    maybe(spend, "duty", spend.duty(), out);
  }

  private void maybe(Entry entry, String key, Optional<Money> money, Findings out) {
    money.ifPresent(amount -> judge(entry, entry.at(), key, amount, out));
  }

  private void judge(Entry entry, At at, String key, Money money, Findings out) {
    if (money.signum() < 0) {
      out.add(
          new Finding(
              name(),
              Severity.STOP,
              at.of(key),
              "“" + key + "” of the " + entry.named() + " is below zero: " + money + ".",
              "A spend below zero is left out of every sum; another amount makes sums false.",
              "Write it above zero; money that comes back is a spend with “state: refunded”.",
              List.of(entry.named())));
    }
  }
}

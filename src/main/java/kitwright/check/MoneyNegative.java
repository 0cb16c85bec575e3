package kitwright.check;

import java.util.List;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.value.Money;
import kitwright.value.ThreePoint;

/** Fires where an amount of money is below zero: the words beside it say which way it goes. */
public final class MoneyNegative extends KeyRule {
  @Override
  void examine(Seen seen, Facts day, Findings out) {
    if (seen.value() instanceof Money money) {
      examine(seen, money, out);
    } else if (seen.value() instanceof ThreePoint<?> guess && guess.low() instanceof Money low) {
      examine(seen, low, out);
    }
  }

  private void examine(Seen seen, Money money, Findings out) {
    if (money.signum() < 0) {
      out.add(
          stop(
              seen.at().of(seen.key().name()),
              "“"
                  + seen.key().name()
                  + "” of the "
                  + seen.entry().named()
                  + " is below zero: "
                  + money
                  + ".",
              "A spend below zero is left out of every sum; another amount makes sums false.",
              "Write it above zero; money that comes back is a spend with “state: refunded”,"
                  + " which names under “refunds” what it gives back.",
              List.of(seen.entry().named())));
    }
  }
}

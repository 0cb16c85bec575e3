package kitwright.money;

import java.time.LocalDate;
import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Spend;
import kitwright.value.Days;

/**
 * Fires where money is said to have been ordered away, paid or got back on a day that is still to
 * come.
 */
public final class PaidInFuture implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    day.written().spending().stream()
        .filter(spend -> spend.on().isAfter(day.day()))
        .forEach(spend -> out.add(tooEarly(spend, day.day())));
  }

  private Finding tooEarly(Spend spend, LocalDate today) {
    String state =
        switch (spend.state()) {
          case ORDERED -> "ordered";
          case PAID -> "paid";
          case REFUNDED -> "refunded";
        };
    return warn(
        spend.at().of("on"),
        "The "
            + spend.named()
            + " says “"
            + state
            + "” for "
            + Days.named(spend.on())
            + "; today is "
            + Days.named(today)
            + ".",
        "It is left out of every sum until that day.",
        spend.state() == Spend.State.ORDERED
            ? "Correct the date, or take the order out until it is made."
            : "Correct the date, or write “state: ordered”, with the day of the order, until the"
                + " money has moved.",
        List.of(spend.named()));
  }
}

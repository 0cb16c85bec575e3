package kitwright.claim;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Claim;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Spend;
import kitwright.spending.Returned;
import kitwright.value.Money;

/** Fires where more money has come back for a claim than was granted, or asked. */
public final class RefundBeyondGranted implements Rule {
  /** Of the sum, what rates of two days may make of money that came in another currency. */
  private static final BigDecimal BY_RATE = new BigDecimal("0.05");

  @Override
  public void examine(Facts day, Findings out) {
    for (ClaimStanding claim : ClaimStandings.on(day).all()) {
      List<Money> due = claim.due();
      if (claim.cameBack().refunds().isEmpty() || isUnsaid(claim)) {
        continue;
      }
      for (Money came : claim.cameBack().takenOff()) {
        Money most =
            due.stream()
                .filter(sum -> sum.currency().equals(came.currency()))
                .reduce(Money.zero(came.currency()), Money::plus);
        if (came.compareAmount(most.plus(margin(claim, most))) > 0) {
          out.add(finding(claim, came, most));
        }
      }
    }
  }

  /**
   * Whether nobody says how much it is: a settlement without its sum, goods asked and not money.
   */
  private static boolean isUnsaid(ClaimStanding claim) {
    return claim.due().isEmpty() && !isRefused(claim);
  }

  private static boolean isRefused(ClaimStanding claim) {
    return claim.state() == ClaimStanding.State.SETTLED
        && Stream.concat(
                claim.settled().stream(),
                claim.lines().stream().flatMap(line -> line.asking().settled().stream()))
            .allMatch(
                end ->
                    switch (end.how()) {
                      case REFUSED, WITHDRAWN -> true;
                      case REPLACED, CREDITED, REFUNDED -> false;
                    });
  }

  private static Money margin(ClaimStanding claim, Money most) {
    boolean isAbroad =
        claim.cameBack().refunds().stream()
            .anyMatch(each -> !each.came().currency().equals(most.currency()));
    return isAbroad ? most.times(BY_RATE) : Money.zero(most.currency());
  }

  private Finding finding(ClaimStanding standing, Money came, Money most) {
    Claim claim = standing.claim();
    List<Returned> refunds = standing.cameBack().refunds();
    Spend last = refunds.get(refunds.size() - 1).refund();
    boolean isOver = standing.state() == ClaimStanding.State.SETTLED;
    return warn(
        last.at().of("amount"),
        "With the refund "
            + last.id()
            + " "
            + came.told()
            + " have come back for the "
            + claim.named()
            + ", "
            + (isOver ? "which granted " : "which asks ")
            + (most.signum() > 0 ? most.told() : "nothing")
            + ".",
        came.minus(most).told()
            + " more than that count as come back: a refund written down twice makes the build look"
            + " cheaper than it is.",
        "If it is written down twice, take one out; if it came for something else, correct its"
            + " “because” or “refunds”; if they gave more, write what they granted into the claim.",
        List.of(last.named(), claim.named()));
  }
}

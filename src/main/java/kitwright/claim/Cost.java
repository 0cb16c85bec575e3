package kitwright.claim;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.ledger.Claim;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.Spend;
import kitwright.value.Money;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * A purchase that a claim asks back.
 *
 * @param replaced how much of it stands for what was missing, where more was bought: no more than
 *     its share of the price is asked
 */
public record Cost(Spend spend, Optional<Quantity> replaced) {

  /** All of it. */
  public static Cost whole(Spend spend) {
    return new Cost(spend, Optional.empty());
  }

  /**
   * What purchases in place of so much of a thing are asked for; the first make up for it first.
   */
  static List<Cost> of(List<Spend> spends, Quantity missing) {
    List<Cost> all = new ArrayList<>();
    Quantity left = missing;
    for (Spend spend : spends) {
      Optional<Quantity> bought = spend.qty().filter(missing::convertsTo);
      Quantity part = bought.map(left::min).orElse(left);
      boolean more = bought.filter(qty -> qty.compareAmount(part) > 0).isPresent();
      all.add(new Cost(spend, more ? Optional.of(part) : Optional.empty()));
      left = bought.isPresent() ? left.less(part) : left;
    }
    return List.copyOf(all);
  }

  /** Of the spending that a claim names what costs the builder something, each once. */
  static List<Spend> of(List<Ref> refs, Claim claim, Ledger ledger) {
    return refs.stream()
        .flatMap(ref -> ledger.spend(ref).stream())
        .filter(spend -> isNone(spend, claim, ledger).isEmpty())
        .distinct()
        .toList();
  }

  /** Why spending that a claim names is no cost of its own, as a clause; empty where it is one. */
  static Optional<String> isNone(Spend spend, Claim claim, Ledger ledger) {
    if (spend.state() == Spend.State.REFUNDED) {
      return Optional.of("which is money that came back");
    }
    if (spend.withdrawn().isPresent()) {
      return Optional.of("which was given up");
    }
    if (hasComeBack(spend, claim, ledger)) {
      return Optional.of("which was given back in full before the claim went out");
    }
    return spend
        .pays()
        .map(Ref::id)
        .filter(order -> claim.spends().stream().anyMatch(ref -> ref.id().equals(order)))
        .filter(order -> ledger.find(Kind.SPENDING, order).isPresent())
        .map(order -> "which pays the order " + order + " that it asks for too");
  }

  /** Whether the seller gave all of it back; what comes after the claim went out, it brought. */
  private static boolean hasComeBack(Spend spend, Claim claim, Ledger ledger) {
    Money back =
        ledger.spending().stream()
            .filter(each -> each.state() == Spend.State.REFUNDED)
            .filter(each -> each.refunds().filter(ref -> ref.id().equals(spend.id())).isPresent())
            .filter(each -> claim.sent().filter(sent -> !each.on().isBefore(sent)).isEmpty())
            .map(Spend::amount)
            .filter(sum -> sum.currency().equals(spend.amount().currency()))
            .reduce(Money.zero(spend.amount().currency()), Money::plus);
    return back.compareAmount(spend.amount()) >= 0;
  }

  /** What is asked of an amount that was spent on it. */
  public Money of(Money amount) {
    return replaced
        .map(
            part ->
                Money.rounded(
                    amount
                        .amount()
                        .multiply(part.in(bought().unit()).amount())
                        .divide(bought().amount(), 12, RoundingMode.HALF_UP),
                    amount.currency()))
        .orElse(amount);
  }

  /** What is asked, in the currency of the purchase. */
  public Money asked() {
    return of(spend.amount());
  }

  private Quantity bought() {
    return spend.qty().orElseThrow();
  }
}

package kitwright.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.ledger.Claim;
import kitwright.spending.Share;
import kitwright.value.Money;
import kitwright.value.Quantity;

/**
 * The ends of a line of a claim, parted among what was bought in place of the goods and what is
 * still owed: each takes its quantity, and brings its money, once.
 *
 * @param bought of what was bought
 * @param owed of the rest
 */
record Ends(List<Claim.Settlement> bought, List<Claim.Settlement> owed) {

  /**
   * Goods that were sent end first what is owed, as does money of the kind that is asked for it;
   * any other end takes first what was bought. One without a quantity takes all that is left.
   *
   * @param asked what is asked for what is owed
   */
  static Ends parted(
      List<Claim.Settlement> ends, Quantity bought, Quantity owed, Claim.Remedy asked) {
    List<Claim.Settlement> ofBought = new ArrayList<>();
    List<Claim.Settlement> ofOwed = new ArrayList<>();
    Quantity leftOfBought = bought;
    Quantity leftOfOwed = owed;
    for (Claim.Settlement end : ends) {
      Quantity left = leftOfBought.plus(leftOfOwed);
      Quantity taken = taken(end, left);
      boolean owedFirst = isOfOwed(end.how(), asked);
      Quantity first = taken.min(owedFirst ? leftOfOwed : leftOfBought);
      Quantity second = taken.less(first);
      Quantity partOfBought = owedFirst ? second : first;
      Quantity partOfOwed = owedFirst ? first : second;
      leftOfBought = leftOfBought.less(partOfBought);
      leftOfOwed = leftOfOwed.less(partOfOwed);
      Optional<Money> money =
          end.amount()
              .map(all -> partOfBought.isNone() ? none(all) : share(all, partOfBought, taken));
      if (!partOfBought.isNone()) {
        ofBought.add(part(end, partOfBought, money));
      }
      if (!partOfOwed.isNone() || partOfBought.isNone()) {
        Optional<Money> rest = end.amount().map(all -> all.minus(money.orElse(none(all))));
        ofOwed.add(taken.isNone() ? end : part(end, partOfOwed, rest));
      }
    }
    return new Ends(List.copyOf(ofBought), List.copyOf(ofOwed));
  }

  private static Quantity taken(Claim.Settlement end, Quantity left) {
    if (end.qty().isEmpty()) {
      return left;
    }
    return end.qty()
        .filter(left::convertsTo)
        .map(qty -> qty.in(left.unit()).min(left))
        .orElse(Quantity.none(left.unit()));
  }

  private static boolean isOfOwed(Claim.Outcome how, Claim.Remedy asked) {
    return switch (how) {
      case REPLACED -> true;
      case CREDITED -> asked == Claim.Remedy.CREDIT;
      case REFUNDED -> asked == Claim.Remedy.REFUND;
      case REFUSED, WITHDRAWN -> false;
    };
  }

  private static Money none(Money like) {
    return Money.zero(like.currency());
  }

  private static Money share(Money all, Quantity part, Quantity whole) {
    return Share.of(all, part.amount(), whole.amount());
  }

  private static Claim.Settlement part(Claim.Settlement end, Quantity part, Optional<Money> money) {
    return new Claim.Settlement(end.on(), end.how(), Optional.of(part), money, end.at());
  }
}

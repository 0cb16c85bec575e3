package kitwright.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.ledger.Claim;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Spend;
import kitwright.spending.Books;
import kitwright.spending.Share;
import kitwright.value.Money;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * A purchase that a claim asks back.
 *
 * @param replaced how much of it stands for what was missing, where more was bought: no more than
 *     its share of the price is asked
 * @param paid what it has cost so far: of an order what was paid, nobody asks back what he has not
 *     spent
 * @param borne of that, what the seller had not given back when the claim went out: no more is
 *     asked
 */
public record Cost(Spend spend, Optional<Quantity> replaced, Money paid, Money borne) {

  /** Of a purchase all that was not given back when a claim went out. */
  static Cost of(Spend spend, Optional<Quantity> replaced, Claim claim, Facts day) {
    return new Cost(spend, replaced, Books.on(day).paid(spend), borne(spend, claim, day));
  }

  /**
   * What purchases in place of so much of a thing are asked for; the first make up for it first.
   */
  static List<Cost> of(List<Spend> spends, Quantity missing, Claim claim, Facts day) {
    List<Cost> all = new ArrayList<>();
    Quantity left = missing;
    for (Spend spend : spends) {
      Optional<Quantity> bought = spend.qty().filter(missing::convertsTo);
      Quantity part = bought.map(left::min).orElse(left);
      boolean more = bought.filter(qty -> qty.compareAmount(part) > 0).isPresent();
      all.add(of(spend, more ? Optional.of(part) : Optional.empty(), claim, day));
      left = bought.isPresent() ? left.less(part) : left;
    }
    return List.copyOf(all);
  }

  /** Of the spending that a claim names what costs the builder something, each once. */
  static List<Spend> of(List<Ref> refs, Claim claim, Facts day) {
    return refs.stream()
        .flatMap(ref -> day.ledger().spend(ref).stream())
        .filter(spend -> isNone(spend, claim, day).isEmpty())
        .distinct()
        .toList();
  }

  /** Why spending that a claim names is no cost of its own, as a clause; empty where it is one. */
  static Optional<String> isNone(Spend spend, Claim claim, Facts day) {
    if (spend.state() == Spend.State.REFUNDED) {
      return Optional.of("which is money that came back");
    }
    if (spend.withdrawn().isPresent()) {
      return Optional.of("which was given up");
    }
    if (Books.on(day).paid(spend).signum() <= 0) {
      return Optional.of("which is ordered, and nothing of it is paid yet");
    }
    if (borne(spend, claim, day).signum() <= 0) {
      return Optional.of("which was given back in full before the claim went out");
    }
    return spend
        .pays()
        .map(Ref::id)
        .filter(order -> claim.spends().stream().anyMatch(ref -> ref.id().equals(order)))
        .filter(order -> day.ledger().find(Kind.SPENDING, order).isPresent())
        .map(order -> "which pays the order " + order + " that it asks for too");
  }

  /** What the seller had not given back by then; what comes after a claim went out, it brought. */
  private static Money borne(Spend spend, Claim claim, Facts day) {
    Books books = Books.on(day);
    return books.paid(spend).minus(books.givenBack(spend, claim.sent()));
  }

  /** What is asked of an amount that was spent on it. */
  public Money of(Money amount) {
    return Share.of(amount, asked(), paid);
  }

  /** What is asked, in the currency of the purchase. */
  public Money asked() {
    return replaced
        .map(part -> Share.of(paid, part.in(bought().unit()).amount(), bought().amount()))
        .orElse(paid)
        .min(borne);
  }

  private Quantity bought() {
    return spend.qty().orElseThrow();
  }
}

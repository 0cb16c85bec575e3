package kitwright.claim;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitwright.ledger.Claim;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Spend;
import kitwright.spending.Books;
import kitwright.spending.Exchange;
import kitwright.spending.Returned;
import kitwright.value.Money;

/**
 * What refunds brought for a claim, as far as it counts as come back.
 *
 * @param refunds for its shortages, and for its costs from the day it was sent on: what the seller
 *     gave back of a cost before, the claim does not ask
 * @param takenOff the same in the currencies of what is due, one sum each
 * @param unreckoned what came in another currency, and has no rate into one of these
 */
public record CameBack(List<Returned> refunds, List<Money> takenOff, List<Money> unreckoned) {
  static final CameBack NONE = new CameBack(List.of(), List.of(), List.of());

  public CameBack {
    refunds = List.copyOf(refunds);
    takenOff = List.copyOf(takenOff);
    unreckoned = List.copyOf(unreckoned);
  }

  /**
   * What came by the end of the day that may be for a claim.
   *
   * @param costs ids of the spending that it names or asks
   */
  static List<Returned> mayBeFor(Claim claim, Set<String> costs, Facts day) {
    Set<String> shortages = new HashSet<>();
    claim.shortages().forEach(ref -> shortages.add(ref.id()));
    Set<String> orders = orders(costs, day);
    List<Returned> refunds = new ArrayList<>();
    Set<String> bought = new HashSet<>(costs);
    bought.addAll(orders);
    for (Returned each : Refunds.on(day).of(shortages, bought)) {
      boolean ofCost = isOf(each, costs, orders);
      boolean before = claim.sent().filter(sent -> !each.refund().on().isBefore(sent)).isEmpty();
      if (!(ofCost && before)) {
        refunds.add(each);
      }
    }
    return refunds;
  }

  /**
   * Of what came for a claim.
   *
   * @param due what is to come, before anything came
   */
  static CameBack of(List<Returned> refunds, List<Money> due, Facts day) {
    List<Money> takenOff = new ArrayList<>();
    List<Money> unreckoned = new ArrayList<>();
    for (Returned each : refunds) {
      inDue(each, due, day).ifPresentOrElse(takenOff::add, () -> unreckoned.add(each.came()));
    }
    return new CameBack(refunds, Sums.of(takenOff.stream()), Sums.of(unreckoned.stream()));
  }

  /** Orders that the costs pay: a refund may name either. */
  private static Set<String> orders(Set<String> costs, Facts day) {
    Set<String> orders = new HashSet<>();
    for (String cost : costs) {
      day.ledger()
          .<Spend>find(Kind.SPENDING, cost)
          .map(spend -> Books.on(day).purchaseOf(spend).id())
          .ifPresent(orders::add);
    }
    return orders;
  }

  private static boolean isOf(Returned each, Set<String> costs, Set<String> orders) {
    return each.purchase().filter(purchase -> costs.contains(purchase.id())).isPresent()
        || each.refund()
            .refunds()
            .filter(ref -> costs.contains(ref.id()) || orders.contains(ref.id()))
            .isPresent();
  }

  /**
   * In its own currency where that is asked, else in the purchase’s, else by the rate of its day.
   */
  static Optional<Money> inDue(Returned each, List<Money> due, Facts day) {
    return in(each.came(), due)
        .or(() -> each.ofPurchase().flatMap(sum -> in(sum, due)))
        .or(
            () ->
                due.stream()
                    .flatMap(sum -> converted(each, sum.currency(), day).stream())
                    .findFirst());
  }

  private static Optional<Money> in(Money came, List<Money> due) {
    return due.isEmpty() || due.stream().anyMatch(sum -> sum.currency().equals(came.currency()))
        ? Optional.of(came)
        : Optional.empty();
  }

  private static Optional<Money> converted(Returned each, Currency into, Facts day) {
    Exchange exchange = Exchange.on(day);
    LocalDate on = each.refund().on();
    return exchange
        .home(each.came(), on, each.refund().rate())
        .money()
        .flatMap(home -> exchange.convert(home, into, on).money());
  }
}

package kitwright.shortage;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kitwright.kit.Position;
import kitwright.kit.Positions;
import kitwright.ledger.Claim;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.substitution.SubstitutionStandings;
import kitwright.substitution.TakenWays;
import kitwright.value.Quantity;

/**
 * Works out what covers each shortage of an item. Every delivery, order, purchase, substitution and
 * promise brings its own quantity, once: to the shortage that it names, else to the oldest, in the
 * order in which they come. What the maker sends answers first what was asked of him as goods.
 */
final class Covering {
  private final SubstitutionStandings substitutions;
  private final Ledger ledger;
  private final Positions positions;
  private final LocalDate today;
  private final Purchases purchases;
  private final Promised promised;
  private final Maker maker;

  Covering(Ledger ledger, SubstitutionStandings substitutions, Positions positions) {
    this.substitutions = substitutions;
    this.ledger = ledger;
    this.positions = positions;
    this.today = positions.day();
    purchases = new Purchases(ledger, today);
    promised = new Promised(ledger);
    maker = Maker.of(ledger);
  }

  /** The account of an item with its shortages, given in the order found. */
  Balance balance(Position position, List<Shortage> shortages) {
    KitItem item = position.item();
    List<Purchase> bought = new Fulfilled(position, maker, purchases).stillToCount();
    if (shortages.isEmpty() && bought.isEmpty()) {
      return new Balance(
          position, List.of(), Quantity.none(position.promised().unit()), List.of(), List.of());
    }
    List<Shortage> goodsFirst =
        shortages.stream()
            .sorted(Comparator.comparing(shortage -> !promised.asksGoods(shortage)))
            .toList();
    Arrivals all = new Arrivals(position, goodsFirst, delivery -> true);
    Arrivals sent = new Arrivals(position, goodsFirst, delivery -> maker.sends(delivery, item));
    Dealing dealing = new Dealing(shortages, today);
    all.parts().forEach(part -> dealing.arrived(part, maker.sends(part.delivery(), item)));
    substitute(dealing);
    bought.forEach(dealing::bought);
    dealing.deal(ledger);
    all.toCome(position, today).forEach(dealing::sent);
    shortages.forEach(shortage -> dealing.promised(shortage, promised.goods(shortage.id()), sent));
    dealing.expect(ledger, substitutions, positions);
    List<ShortageStanding> standings =
        dealing.rests().stream().map(rest -> standing(rest, Optional.of(item), all, sent)).toList();
    return new Balance(
        position,
        standings,
        Hidden.of(position, shortages),
        dealing.spare(),
        dealing.spareToCome());
  }

  /** A shortage of an item that the kit does not know. */
  ShortageStanding alone(Shortage shortage) {
    Dealing dealing = new Dealing(List.of(shortage), today);
    substitute(dealing);
    purchases.of(shortage.item().id()).forEach(dealing::bought);
    dealing.deal(ledger);
    dealing.promised(shortage, promised.goods(shortage.id()), Arrivals.NONE);
    dealing.expect(ledger, substitutions, positions);
    return standing(dealing.rests().get(0), Optional.empty(), Arrivals.NONE, Arrivals.NONE);
  }

  private void substitute(Dealing dealing) {
    TakenWays taken = substitutions.taken();
    substitutions
        .where(each -> !dealing.answeredBy(each, taken).isEmpty())
        .forEach(
            each ->
                dealing.substituted(
                    each,
                    Serves.of(each.substitution(), positions, ledger).qty(),
                    dealing.answeredBy(each.substitution(), taken)));
  }

  private ShortageStanding standing(
      Rest rest, Optional<KitItem> item, Arrivals all, Arrivals sent) {
    Shortage shortage = rest.shortage();
    List<Claim> claimed = promised.claims(shortage.id());
    return new ShortageStanding(
        shortage,
        item,
        rest.left().isNone() && rest.coming().isEmpty()
            ? ShortageStanding.State.COVERED
            : openState(rest, claimed),
        rest.covers(),
        rest.coming(),
        all.of(shortage),
        sent.of(shortage),
        claimed,
        substitutions.answering(shortage.id()),
        shortage.chosen(),
        ChronoUnit.DAYS.between(shortage.found(), today));
  }

  private ShortageStanding.State openState(Rest rest, List<Claim> claimed) {
    if (rest.left().isNone() && rest.coming().stream().allMatch(Coming::isPromised)) {
      return ShortageStanding.State.PROMISED;
    }
    if (claimed.stream().anyMatch(claim -> isAnswered(claim, rest.shortage()))) {
      return ShortageStanding.State.ANSWERED;
    }
    return claimed.stream().anyMatch(claim -> claim.sent().isPresent())
        ? ShortageStanding.State.CLAIMED
        : ShortageStanding.State.FOUND;
  }

  /** An end of the claim or of its line is an answer, whatever else the record leaves out. */
  private static boolean isAnswered(Claim claim, Shortage shortage) {
    boolean settled =
        claim.settled().isPresent()
            || claim.asked().stream()
                .filter(line -> line.shortage().id().equals(shortage.id()))
                .anyMatch(line -> !line.settled().isEmpty());
    return settled || (claim.sent().isPresent() && hasWord(claim));
  }

  private static boolean hasWord(Claim claim) {
    return claim.events().stream()
        .anyMatch(
            event ->
                switch (event.what()) {
                  case ANSWERED, PROMISED, DISPUTED, GRANTED, REFUSED, DELIVERED, PAID -> true;
                  case SENT, ACKNOWLEDGED, REMINDED -> false;
                });
  }
}

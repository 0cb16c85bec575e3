package kitwright.shortage;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.kit.Awaited;
import kitwright.kit.Position;
import kitwright.ledger.Claim;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.ledger.Substitution;
import kitwright.value.Quantity;

/**
 * Works out what covers each shortage of an item: first what was counted good later, then approved
 * substitutions, then what was bought, and last the money that came back.
 */
final class Covering {
  private final kitwright.substitution.Standings substitutions;
  private final LocalDate today;
  private final Purchases purchases;
  private final Map<String, List<Claim>> claims = new HashMap<>();

  Covering(Ledger ledger, kitwright.substitution.Standings substitutions, LocalDate today) {
    this.substitutions = substitutions;
    this.today = today;
    this.purchases = new Purchases(ledger, today);
    for (Claim claim : ledger.claims()) {
      claim
          .shortages()
          .forEach(ref -> claims.computeIfAbsent(ref.id(), id -> new ArrayList<>()).add(claim));
    }
  }

  /** The account of an item with its shortages, given in the order found. */
  Balance balance(Position position, List<Shortage> shortages) {
    if (shortages.isEmpty()) {
      return new Balance(position, List.of(), Quantity.none(position.promised().unit()));
    }
    Quantity hidden = Hidden.of(position, shortages);
    Arrivals arrivals = new Arrivals(position, shortages, hidden);
    List<Standing> standings =
        shortages.stream()
            .map(shortage -> standing(shortage, Optional.of(position), arrivals.cover(shortage)))
            .toList();
    return new Balance(position, standings, hidden);
  }

  /** A shortage of an item that the kit does not know. */
  Standing alone(Shortage shortage) {
    return standing(shortage, Optional.empty(), List.of());
  }

  private Standing standing(Shortage shortage, Optional<Position> position, List<Cover> delivered) {
    List<Claim> claimed = claims.getOrDefault(shortage.id(), List.of());
    List<kitwright.substitution.Standing> answers = substitutions.answering(shortage.id());
    Rest rest = new Rest(shortage.qty());
    delivered.forEach(cover -> rest.take(cover.how(), cover.qty(), cover.by(), cover.on()));
    answers.forEach(answer -> substituted(answer, rest));
    purchases.because(shortage.id()).forEach(purchase -> bought(purchase, shortage, rest));
    claimed.forEach(claim -> credited(claim, rest));
    Optional<LocalDate> promised = promised(shortage, position, claimed);
    return new Standing(
        shortage,
        position.map(Position::item),
        rest.isNone() ? Standing.State.COVERED : openState(claimed, promised),
        rest.covers(),
        claimed,
        answers,
        promised,
        ChronoUnit.DAYS.between(shortage.found(), today));
  }

  private static void substituted(kitwright.substitution.Standing answer, Rest rest) {
    if (answer.isApproved()) {
      Substitution substitution = answer.substitution();
      rest.take(
          Cover.How.SUBSTITUTED,
          substitution.insteadOf().qty(),
          substitution,
          answer.signedOn().orElseThrow());
    }
  }

  /** A spend that a shortage caused need not be for the thing itself: spare knives are not. */
  private static void bought(Purchase purchase, Shortage shortage, Rest rest) {
    if (purchase.here().isPresent() && isTheThing(purchase, shortage)) {
      rest.take(
          Cover.How.BOUGHT,
          purchase.qty().orElse(shortage.qty()),
          purchase.spend(),
          purchase.here().get());
    }
  }

  private static boolean isTheThing(Purchase purchase, Shortage shortage) {
    if (purchase.item().isPresent()) {
      return purchase.item().get().id().equals(shortage.item().id());
    }
    return purchase.qty().isPresent() && isToBeBought(shortage);
  }

  private static boolean isToBeBought(Shortage shortage) {
    return shortage
        .decided()
        .filter(
            decided ->
                shortage.options().stream()
                    .filter(option -> option.name().equals(decided.option()))
                    .anyMatch(option -> option.way() == Shortage.Way.BUY))
        .isPresent();
  }

  private void credited(Claim claim, Rest rest) {
    claim
        .settled()
        .filter(end -> !end.on().isAfter(today))
        .filter(end -> end.how() == Claim.Outcome.CREDITED || end.how() == Claim.Outcome.REFUNDED)
        .ifPresent(end -> rest.take(Cover.How.CREDITED, rest.qty(), claim, end.on()));
  }

  private Optional<LocalDate> promised(
      Shortage shortage, Optional<Position> position, List<Claim> claimed) {
    Stream<LocalDate> bySupplier = claimed.stream().flatMap(claim -> lastPromise(claim).stream());
    Stream<LocalDate> onItsWay =
        position.stream()
            .flatMap(each -> each.awaited().stream())
            .map(Awaited::delivery)
            .flatMap(delivery -> delivery.expected().stream());
    Stream<LocalDate> ordered =
        purchases.because(shortage.id()).stream()
            .filter(purchase -> purchase.here().isEmpty() && isTheThing(purchase, shortage))
            .flatMap(purchase -> purchase.expected().stream());
    return Stream.of(bySupplier, onItsWay, ordered).flatMap(days -> days).min(LocalDate::compareTo);
  }

  /** A later promise takes the place of an earlier one; a refusal or withdrawal ends it. */
  private Optional<LocalDate> lastPromise(Claim claim) {
    boolean ended =
        claim
            .settled()
            .filter(end -> !end.on().isAfter(today) && end.how() != Claim.Outcome.REPLACED)
            .isPresent();
    return ended
        ? Optional.empty()
        : claim.events().stream()
            .filter(event -> !event.on().isAfter(today))
            .filter(event -> event.expect().isPresent())
            .reduce((earlier, later) -> later.on().isBefore(earlier.on()) ? earlier : later)
            .flatMap(Claim.Event::expect);
  }

  private Standing.State openState(List<Claim> claimed, Optional<LocalDate> promised) {
    if (promised.isPresent()) {
      return Standing.State.PROMISED;
    }
    List<Claim> sent =
        claimed.stream()
            .filter(claim -> claim.sent().filter(day -> !day.isAfter(today)).isPresent())
            .toList();
    if (sent.isEmpty()) {
      return Standing.State.FOUND;
    }
    return sent.stream().anyMatch(this::isAnswered)
        ? Standing.State.ANSWERED
        : Standing.State.CLAIMED;
  }

  private boolean isAnswered(Claim claim) {
    boolean settled = claim.settled().filter(end -> !end.on().isAfter(today)).isPresent();
    return settled
        || claim.events().stream()
            .filter(event -> !event.on().isAfter(today))
            .anyMatch(
                event ->
                    switch (event.what()) {
                      case ANSWERED, PROMISED, DISPUTED, GRANTED, REFUSED, DELIVERED, PAID -> true;
                      case SENT, ACKNOWLEDGED, REMINDED -> false;
                    });
  }
}

package kitwright.openmatter;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import kitwright.claim.ClaimStanding;
import kitwright.claim.ClaimStandings;
import kitwright.ledger.Claim;
import kitwright.ledger.Delivery;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Party;
import kitwright.ledger.Shortage;
import kitwright.ledger.Spend;
import kitwright.shortage.Coming;
import kitwright.shortage.ShortageStanding;
import kitwright.value.Days;

/** Who is to move in a recorded shortage, and what is to be done next. */
final class ShortageMove {
  private final Facts now;
  private final Map<String, Delivery> uncounted;

  ShortageMove(Facts now) {
    this.now = now;
    uncounted = uncounted(now.ledger());
  }

  /** Whose move it is. */
  String waitsFor(ShortageStanding standing) {
    if (chosen(standing).isPresent()) {
      return "you";
    }
    return switch (standing.state()) {
      case FOUND -> "you";
      case ANSWERED -> "you";
      case CLAIMED, PROMISED -> supplier(standing);
      case COVERED -> "nobody";
    };
  }

  /** Who has promised it; else whom it is claimed from. */
  private String supplier(ShortageStanding standing) {
    Ledger ledger = now.ledger();
    return standing.coming().stream()
        .flatMap(part -> sender(part.by()).stream())
        .findFirst()
        .or(
            () ->
                standing.claims().stream()
                    .flatMap(claim -> ledger.party(claim.against()).stream())
                    .map(Party::name)
                    .findFirst())
        .orElse("the seller");
  }

  private Optional<String> sender(Entry entry) {
    if (entry instanceof Delivery delivery) {
      return Optional.of(now.ledger().nameOf(delivery.from().id()));
    }
    if (entry instanceof Claim claim) {
      return now.ledger().party(claim.against()).map(Party::name);
    }
    return entry instanceof Spend spend ? spend.to().map(now.ledger()::nameOf) : Optional.empty();
  }

  /**
   * What is to be done.
   *
   * @param last the last day on which another way can still be taken in time
   */
  String next(ShortageStanding standing, Optional<LocalDate> last) {
    Optional<String> chosen = chosen(standing);
    if (chosen.isPresent()) {
      return chosen.get();
    }
    if (standing.shortage().decided().isEmpty() && standing.shortage().options().size() > 1) {
      return "choose a way out: "
          + standing.shortage().options().stream()
              .map(Shortage.Option::name)
              .collect(Collectors.joining(", "))
          + bought(standing);
    }
    return switch (standing.state()) {
      case FOUND ->
          Optional.ofNullable(uncounted.get(standing.shortage().item().id()))
                  .map(delivery -> "count " + delivery.id() + ", which may hold it; then ")
                  .orElse("")
              + toClaim(standing)
              + bought(standing);
      case CLAIMED ->
          Awaited.of(sent(standing), claims(standing), last) + rest(standing) + bought(standing);
      case ANSWERED ->
          brokenPromise(standing)
              ? "ask again: what was promised did not come" + rest(standing) + bought(standing)
              : standing.claims().stream().allMatch(claim -> isClosed(claim, standing.shortage()))
                  ? "get it another way: the claim brings no goods"
                      + rest(standing)
                      + bought(standing)
                  : "settle what was answered to "
                      + claims(standing)
                      + rest(standing)
                      + bought(standing);
      case PROMISED -> "see that it comes on " + Days.named(standing.promisedFor().orElseThrow());
      case COVERED -> "nothing";
    };
  }

  /** Of what was used up nobody owes any. */
  private static String toClaim(ShortageStanding standing) {
    if (standing.shortage().cause() == Shortage.Cause.USED_UP) {
      return "get it another way: nobody owes what was used up";
    }
    return standing.claims().isEmpty()
        ? "claim it from the supplier"
        : "send the drafted claim" + rest(standing);
  }

  /** What of it no claim names, where some do. */
  private static String rest(ShortageStanding standing) {
    return standing.isClaimedInPart()
        ? ", and claim the " + standing.unclaimed().told() + " that no claim names"
        : "";
  }

  /** What to record where one has helped oneself, whatever was decided before. */
  private static String bought(ShortageStanding standing) {
    return "; bought it instead? “kitwright buy … --replaces "
        + standing.shortage().id()
        + "”, or “replaces:” in the payment";
  }

  private static boolean brokenPromise(ShortageStanding standing) {
    return standing.lapsed().stream().anyMatch(each -> each.how() == Coming.How.PROMISED);
  }

  /** Whether the claim, or its part for the shortage, has come to its end. */
  private boolean isClosed(Claim claim, Shortage shortage) {
    return ClaimStandings.on(now)
        .of(claim.id())
        .filter(
            standing ->
                standing.state() == ClaimStanding.State.SETTLED
                    || standing.lines().stream()
                        .map(line -> line.asking())
                        .filter(asking -> asking.shortage().id().equals(shortage.id()))
                        .allMatch(asking -> asking.isSettled()))
        .isPresent();
  }

  private List<ClaimStanding> sent(ShortageStanding standing) {
    return standing.claims().stream()
        .flatMap(claim -> ClaimStandings.on(now).of(claim.id()).stream())
        .filter(claim -> !claim.isDraft())
        .toList();
  }

  private static String claims(ShortageStanding standing) {
    return standing.claims().stream().map(claim -> claim.id()).collect(Collectors.joining(", "));
  }

  /** What the decision asks, where it asks something now. */
  private Optional<String> chosen(ShortageStanding standing) {
    Optional<Shortage.Option> option = standing.chosen();
    if (option.isEmpty()) {
      return Optional.empty();
    }
    return switch (option.get().way()) {
      case WAIT -> Optional.empty();
      case DO_WITHOUT ->
          Optional.of("ask somebody entitled whether it may be left out, or get it another way");
      case BUY ->
          standing.promisedFor().isPresent()
              ? Optional.empty()
              : Optional.of(
                  "buy it, as decided, and record the order or the payment with “replaces: "
                      + standing.shortage().id()
                      + "”");
      case SUBSTITUTE ->
          standing.substitutions().stream()
              .filter(each -> !each.isWithdrawn() && !each.isApproved())
              .findFirst()
              .map(each -> "get substitution " + each.substitution().id() + " signed");
    };
  }

  /** Deliveries that came and nobody has counted, by the items that their lists name. */
  private static Map<String, Delivery> uncounted(Ledger ledger) {
    Map<String, Delivery> byItem = new HashMap<>();
    ledger.deliveries().stream()
        .filter(each -> each.received().isPresent() && each.counted().isEmpty())
        .forEach(each -> each.packed().forEach(line -> byItem.putIfAbsent(line.item().id(), each)));
    return byItem;
  }
}

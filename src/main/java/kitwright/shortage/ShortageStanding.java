package kitwright.shortage;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import kitwright.ledger.Claim;
import kitwright.ledger.KitItem;
import kitwright.ledger.Shortage;
import kitwright.substitution.SubstitutionStanding;
import kitwright.value.Money;
import kitwright.value.Quantity;

/**
 * How a shortage stands on a day. Worked out from the records, never typed by hand.
 *
 * @param item the item of the kit; empty where the reference dangles
 * @param covers what has come of it so far
 * @param coming what is on its way, the first to come first; never more than is open
 * @param arrived what counts brought in answer, whoever sent it and whatever was bought meanwhile
 * @param sent the part of that which came from whom it is owed by
 * @param claims that name it, drafts among them, as the ledger lists them
 * @param substitutions that answer it, withdrawn ones among them
 * @param chosen the way out that was chosen by that day
 * @param age days since it was found
 */
public record ShortageStanding(
    Shortage shortage,
    Optional<KitItem> item,
    State state,
    List<Cover> covers,
    List<Coming> coming,
    Quantity arrived,
    Quantity sent,
    List<Claim> claims,
    List<SubstitutionStanding> substitutions,
    Optional<Shortage.Option> chosen,
    long age) {
  /** How far a shortage has come, in this order. */
  public enum State {
    /** Recorded, and nobody has been told. */
    FOUND,
    /** A claim was sent. */
    CLAIMED,
    /** The supplier has answered, but promised no day. */
    ANSWERED,
    /** Somebody has named a day on which all that is open shall come. */
    PROMISED,
    /** Nothing is open any more. */
    COVERED
  }

  public ShortageStanding {
    covers = List.copyOf(covers);
    coming = List.copyOf(coming);
    claims = List.copyOf(claims);
    substitutions = List.copyOf(substitutions);
  }

  /** What nothing covers yet, in the shortage's own unit. */
  public Quantity open() {
    return shortage.qty().less(covered());
  }

  /** What is covered in any way. */
  public Quantity covered() {
    return sum(cover -> true);
  }

  /** What neither is here nor comes on a day that anybody has named. */
  public Quantity unsupplied() {
    return coming.stream()
        .filter(each -> each.on().isPresent())
        .map(Coming::qty)
        .reduce(open(), Quantity::less);
  }

  /** The day on which the last of what is open comes; empty where some of it comes on no day. */
  public Optional<LocalDate> expected() {
    return isOpen() && unsupplied().isNone()
        ? coming.stream().flatMap(each -> each.on().stream()).max(LocalDate::compareTo)
        : Optional.empty();
  }

  /** What was to come by a day that has passed, and is neither here nor said anew. */
  public List<Coming> lapsed() {
    return coming.stream().filter(each -> each.lapsed().isPresent()).toList();
  }

  /** The same, by the word of others alone. */
  public Optional<LocalDate> promisedFor() {
    return coming.stream().allMatch(Coming::isPromised) ? expected() : Optional.empty();
  }

  public boolean isOpen() {
    return state != State.COVERED;
  }

  /** The day on which the last of it was covered. */
  public Optional<LocalDate> coveredOn() {
    return isOpen() ? Optional.empty() : covers.stream().map(Cover::on).max(LocalDate::compareTo);
  }

  /**
   * What is owed and no claim names: a claim may name a part. What came before any was sent is none
   * of what they ask; what was used up nobody owes.
   */
  public Quantity unclaimed() {
    if (shortage.cause() == Shortage.Cause.USED_UP) {
      return Quantity.none(shortage.qty().unit());
    }
    Quantity owed = shortage.qty().less(sent);
    Quantity left = claims.isEmpty() ? owed : shortage.qty().less(unasked());
    for (Claim claim : claims) {
      for (Claim.Asked line : claim.asked()) {
        if (line.shortage().id().equals(shortage.id())) {
          Quantity asked = line.qty().orElse(shortage.qty());
          left = asked.convertsTo(left) ? left.less(asked) : left;
        }
      }
    }
    return owed.min(left);
  }

  /** Whether claims name it, and yet not all that is owed of it. */
  public boolean isClaimedInPart() {
    return !claims.isEmpty() && !unclaimed().isNone();
  }

  /** What came from whom it is owed by before any claim was sent. */
  private Quantity unasked() {
    Optional<LocalDate> first =
        claims.stream().flatMap(claim -> claim.sent().stream()).min(LocalDate::compareTo);
    return sum(
        cover -> cover.how() == Cover.How.DELIVERED && first.filter(cover.on()::isAfter).isEmpty());
  }

  /** What the open part is worth at the kit's price, in the price's currency. */
  public Optional<Money> openValue() {
    return value(open());
  }

  /** What the whole shortage was worth at the kit's price. */
  public Optional<Money> value() {
    return value(shortage.qty());
  }

  /** What so much of it is worth at the kit's price; empty where the kit has no price for it. */
  public Optional<Money> value(Quantity qty) {
    return item.flatMap(each -> each.cost(qty));
  }

  private Quantity sum(Predicate<Cover> which) {
    return covers.stream()
        .filter(which)
        .map(Cover::qty)
        .reduce(Quantity.none(shortage.qty().unit()), Quantity::plus);
  }
}

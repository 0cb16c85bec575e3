package kitwright.shortage;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import kitwright.ledger.Claim;
import kitwright.ledger.KitItem;
import kitwright.ledger.Shortage;
import kitwright.value.Money;
import kitwright.value.Quantity;

/**
 * How a shortage stands on a day. Worked out from the records, never typed by hand.
 *
 * @param item the item of the kit; empty where the reference dangles
 * @param covers what has come of it so far
 * @param claims that name it, drafts among them, as the ledger lists them
 * @param substitutions that answer it, withdrawn ones among them
 * @param promisedFor the earliest day for which the supplier or a seller has promised it
 * @param age days since it was found
 */
public record Standing(
    Shortage shortage,
    Optional<KitItem> item,
    State state,
    List<Cover> covers,
    List<Claim> claims,
    List<kitwright.substitution.Standing> substitutions,
    Optional<LocalDate> promisedFor,
    long age) {
  /** How far a shortage has come, in this order. */
  public enum State {
    /** Recorded, and nobody has been told. */
    FOUND,
    /** A claim was sent. */
    CLAIMED,
    /** The supplier has answered, but promised no day. */
    ANSWERED,
    /** Somebody has named a day on which it shall come. */
    PROMISED,
    /** Nothing is open any more. */
    COVERED
  }

  public Standing {
    covers = List.copyOf(covers);
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

  /** What is covered in one way. */
  public Quantity covered(Cover.How how) {
    return sum(cover -> cover.how() == how);
  }

  public boolean isOpen() {
    return state != State.COVERED;
  }

  /** The day on which the last of it was covered. */
  public Optional<LocalDate> coveredOn() {
    return isOpen() ? Optional.empty() : covers.stream().map(Cover::on).max(LocalDate::compareTo);
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
    return item.flatMap(KitItem::price)
        .filter(price -> price.prices(qty))
        .map(price -> price.of(qty));
  }

  private Quantity sum(Predicate<Cover> which) {
    return covers.stream()
        .filter(which)
        .map(Cover::qty)
        .reduce(Quantity.none(shortage.qty().unit()), Quantity::plus);
  }
}

package kitwright.claim;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.ledger.Claim;
import kitwright.shortage.Balance;
import kitwright.shortage.ShortageStanding;
import kitwright.value.Money;
import kitwright.value.Quantity;

/**
 * A line of a claim: a shortage, or so much of it, and what is asked for that.
 *
 * @param shortage as it stands on the day
 * @param balance the account of its item; empty where the kit does not know it
 * @param sent what came from the supplier for this line since
 * @param asked the money that is asked for what is still owed, a sum a currency
 * @param granted the money that was granted for it, a sum a currency
 */
public record Line(
    ShortageStanding shortage,
    Optional<Balance> balance,
    Asking asking,
    Quantity sent,
    List<Money> asked,
    List<Money> granted) {
  public Line {
    asked = List.copyOf(asked);
    granted = List.copyOf(granted);
  }

  public Claim.Remedy remedy() {
    return asking.remedy();
  }

  /** How much it is about. */
  public Quantity qty() {
    return asking.qty();
  }

  /** What the supplier still owes of it. */
  public Quantity owed() {
    return qty().less(sent);
  }

  /** What of it neither came nor has an end of its own. */
  public Quantity open() {
    Quantity replaced = asking.ended(true).less(sent);
    return owed().less(replaced).less(asking.ended(false));
  }

  /** What they still owe is worth at the kit's price, in the price's currency. */
  public Optional<Money> value() {
    return worth(owed());
  }

  /** What is open of it is worth at the kit's price, in the price's currency. */
  public Optional<Money> openValue() {
    return worth(open());
  }

  private Optional<Money> worth(Quantity of) {
    return shortage.item().flatMap(item -> item.cost(of));
  }

  /** The money that is asked for what is open of it: of its cost all, whatever came since. */
  public List<Money> openMoney() {
    if (asking.isSettled() || !asking.isForMoney()) {
      return List.of();
    }
    return remedy() == Claim.Remedy.COST ? asked : openValue().stream().toList();
  }

  /**
   * The money that is to come for it, before anything came: what its ends say, and what is open.
   */
  List<Money> due() {
    return asking.isSettled()
        ? granted
        : Sums.of(
            Stream.concat(
                asking.settled().stream().flatMap(end -> end.amount().stream()),
                openMoney().stream()));
  }

  /** Whether nothing of it is open. */
  public boolean isOver() {
    return open().isNone();
  }
}

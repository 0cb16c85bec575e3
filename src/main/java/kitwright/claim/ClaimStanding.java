package kitwright.claim;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.ledger.Claim;
import kitwright.ledger.Party;
import kitwright.spending.Returned;
import kitwright.value.Money;

/**
 * How a claim stands on a day. Worked out from the records, never typed by hand.
 *
 * @param against empty where the reference dangles
 * @param lines what is asked, in the order of the claim
 * @param costs the spending that it asks back besides
 * @param events up to that day, by day
 * @param settled how all of it ended that has no end of its own, if it has by that day
 * @param cameBack what refunds up to that day brought for its shortages and costs
 * @param promisedFor the day promised last, while it has not passed
 * @param lapsed the day promised last, where it has passed
 * @param age days since it was sent; empty while it is a draft
 * @param daysLeft days until the answer is due, below zero when it is late; empty where none is
 *     awaited or no day was set
 */
public record ClaimStanding(
    Claim claim,
    Optional<Party> against,
    State state,
    List<Line> lines,
    List<Cost> costs,
    List<Claim.Event> events,
    Optional<Claim.Settlement> settled,
    CameBack cameBack,
    Optional<LocalDate> promisedFor,
    Optional<LocalDate> lapsed,
    Optional<Long> age,
    Optional<Long> daysLeft) {
  /** How far a claim has come. */
  public enum State {
    /** Not sent. */
    DRAFT,
    /** Sent, and no word since. */
    SENT,
    /** They have it, but have not answered. */
    ACKNOWLEDGED,
    /** They have answered; the matter is not closed. */
    ANSWERED,
    /** They have said something else. */
    DISPUTED,
    /** They have said no. */
    REFUSED,
    SETTLED
  }

  public ClaimStanding {
    lines = List.copyOf(lines);
    costs = List.copyOf(costs);
    events = List.copyOf(events);
  }

  public boolean isDraft() {
    return state == State.DRAFT;
  }

  /** Whether the answer is late. */
  public boolean isOverdue() {
    return daysLeft.filter(days -> days < 0).isPresent();
  }

  /** What the goods are worth that it asks to be sent, one sum a currency, by its code. */
  public List<Money> goods() {
    return Sums.of(
        lines.stream()
            .filter(line -> !line.asking().isForMoney() && !line.owed().isNone())
            .flatMap(line -> line.value().stream()));
  }

  /** The same of what has no end of its own yet. */
  public List<Money> openGoods() {
    return Sums.of(
        lines.stream()
            .filter(line -> !line.asking().isForMoney() && !line.isOver())
            .flatMap(line -> line.openValue().stream()));
  }

  /** What the shortages cost besides, one sum a currency, by its code. */
  public List<Money> extraCosts() {
    return Sums.of(costs.stream().map(Cost::asked));
  }

  /** The money that it asks, one sum a currency, by its code. */
  public List<Money> asked() {
    return Sums.of(
        Stream.concat(
            lines.stream().flatMap(line -> line.asked().stream()),
            costs.stream().map(Cost::asked)));
  }

  /** The money that was granted, one sum a currency, by its code. */
  public List<Money> granted() {
    return Sums.of(
        Stream.concat(
            lines.stream().flatMap(line -> line.granted().stream()),
            settled.flatMap(Claim.Settlement::amount).or(() -> grantedInAll()).stream()));
  }

  /** The last word on money for all of it; none where the end of a line names its own. */
  private Optional<Money> grantedInAll() {
    boolean isToldByLine =
        lines.stream()
            .flatMap(line -> line.asking().settled().stream())
            .anyMatch(end -> end.amount().isPresent());
    return events.stream()
        .filter(event -> !isToldByLine)
        .filter(event -> event.what() == Claim.What.GRANTED && event.of().isEmpty())
        .flatMap(event -> event.amount().stream())
        .reduce((earlier, later) -> later);
  }

  /** The money that has come back, one sum a currency, by its code. */
  public List<Money> paid() {
    return Sums.of(cameBack.refunds().stream().map(Returned::came));
  }

  /**
   * The money that is still to come: of what has an end what was granted, of the rest what is
   * asked.
   */
  public List<Money> open() {
    return Sums.less(due(), cameBack.takenOff());
  }

  /** The money that is to come, before anything came. */
  List<Money> due() {
    if (state == State.SETTLED) {
      return granted();
    }
    return Sums.of(
        Stream.concat(
            lines.stream().flatMap(line -> line.due().stream()), costs.stream().map(Cost::asked)));
  }

  /** The same with what came back. */
  ClaimStanding receiving(CameBack came) {
    return new ClaimStanding(
        claim,
        against,
        state,
        lines,
        costs,
        events,
        settled,
        came,
        promisedFor,
        lapsed,
        age,
        daysLeft);
  }
}

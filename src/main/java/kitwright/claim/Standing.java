package kitwright.claim;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import kitwright.ledger.Claim;
import kitwright.ledger.Party;
import kitwright.ledger.Spend;
import kitwright.value.Money;

/**
 * How a claim stands on a day. Worked out from the records, never typed by hand.
 *
 * @param against empty where the reference dangles
 * @param lines one a shortage that the ledger knows
 * @param costs the spending that it asks back
 * @param events up to that day, by day
 * @param settled how it ended, if it has by that day
 * @param age days since it was sent; empty while it is a draft
 * @param daysLeft days until the answer is due, below zero when it is late; empty where none is
 *     awaited or no day was set
 */
public record Standing(
    Claim claim,
    Optional<Party> against,
    State state,
    List<Line> lines,
    List<Spend> costs,
    List<Claim.Event> events,
    Optional<Claim.Settlement> settled,
    Optional<LocalDate> promisedFor,
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
    /** They have said no, or something else. */
    DISPUTED,
    SETTLED
  }

  public Standing {
    lines = List.copyOf(lines);
    costs = List.copyOf(costs);
    events = List.copyOf(events);
  }

  public boolean isDraft() {
    return state == State.DRAFT;
  }

  /** Whether an answer is still owed. */
  public boolean awaitsAnswer() {
    return state == State.SENT || state == State.ACKNOWLEDGED;
  }

  /** Whether the answer is late. */
  public boolean isOverdue() {
    return daysLeft.filter(days -> days < 0).isPresent();
  }

  /** What the lines are worth, one sum a currency, by its code. */
  public List<Money> goods() {
    return sums(lines.stream().flatMap(line -> line.value().stream()));
  }

  /** What the shortages cost besides, one sum a currency, by its code. */
  public List<Money> extraCosts() {
    return sums(costs.stream().map(Spend::amount));
  }

  /** Everything claimed, one sum a currency, by its code. */
  public List<Money> total() {
    return sums(Stream.concat(goods().stream(), extraCosts().stream()));
  }

  private static List<Money> sums(Stream<Money> amounts) {
    TreeMap<String, Money> all = new TreeMap<>();
    amounts.forEach(amount -> all.merge(amount.currency().getCurrencyCode(), amount, Money::plus));
    return List.copyOf(all.values());
  }
}

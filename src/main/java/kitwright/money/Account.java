package kitwright.money;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.ledger.Facts;
import kitwright.ledger.Spend;
import kitwright.spending.Refused;
import kitwright.spending.Valued;
import kitwright.value.Money;

/**
 * The money of a build on a day, all in its currency.
 *
 * @param lines in the order of the budget
 * @param elsewhere what stands on no line of the budget; empty where there is no such thing
 * @param whole the sum of the lines and of what stands elsewhere
 * @param contingency kept back for what nobody foresaw, beyond the lines
 * @param spends what counts, spend by spend
 * @param unvalued spends that a rate is missing for; they are in no sum, which is then “at least”
 * @param refused refunds, or parts of them, that give back what nobody paid; in no sum
 * @param ways what open shortages are still going to cost, by id
 * @param unpriced open shortages that no sum holds, since no way out states its cost
 * @param repairs what making borrowed tools good is still going to cost
 * @param claims what claims may bring back; in no sum
 */
public record Account(
    LocalDate asOf,
    List<LineState> lines,
    Optional<LineState> elsewhere,
    LineState whole,
    Optional<Money> contingency,
    List<Valued> spends,
    List<Spend> unvalued,
    List<Refused> refused,
    List<OpenShortage> ways,
    List<UnpricedShortage> unpriced,
    List<OpenRepair> repairs,
    List<Back> claims) {
  private static final Facts.Fact<Account> FACT = Spent::on;

  /** The account of the day: later records do not count, and covered shortages cost no more. */
  public static Account on(Facts day) {
    return FACT.on(day);
  }

  public Account {
    lines = List.copyOf(lines);
    spends = List.copyOf(spends);
    unvalued = List.copyOf(unvalued);
    refused = List.copyOf(refused);
    ways = List.copyOf(ways);
    unpriced = List.copyOf(unpriced);
    repairs = List.copyOf(repairs);
    claims = List.copyOf(claims);
  }

  /** The lines, and what stands on none of them. */
  public List<LineState> all() {
    return Stream.concat(lines.stream(), elsewhere.stream()).toList();
  }

  public Optional<LineState> line(String id) {
    return all().stream().filter(line -> line.line().equals(id)).findFirst();
  }

  /** The spends that count on a line. */
  public List<Valued> spendsOn(String line) {
    return spends.stream().filter(spend -> spend.line().equals(line)).toList();
  }

  /**
   * What will be left of the contingency: it pays for whatever the forecast of the whole is beyond
   * the budget. Below zero where it does not suffice; empty where there is none.
   */
  public Optional<Money> contingencyLeft() {
    Money zero = Money.zero(whole.budget().currency());
    return contingency.map(kept -> kept.minus(whole.over().max(zero)));
  }

  /** Repairs that no sum holds, since nobody knows what they cost. */
  public List<OpenRepair> unpricedRepairs() {
    return repairs.stream().filter(each -> each.cost().isEmpty()).toList();
  }

  /** What claims would bring back if everything asked were granted, and what is granted already. */
  public Money ifGranted() {
    return claims.stream()
        .map(back -> back.ifGranted().plus(back.outstanding()))
        .reduce(Money.zero(whole.budget().currency()), Money::plus);
  }
}

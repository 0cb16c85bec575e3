package kitwright.check;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import kitwright.finding.Findings;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;
import kitwright.money.Account;
import kitwright.money.BudgetLineUnknown;
import kitwright.money.BuildOverBudget;
import kitwright.money.ForecastOverBudget;
import kitwright.money.LineOverBudget;
import kitwright.money.MoneyNegative;
import kitwright.money.PaidBeyondOrder;
import kitwright.money.PaidInFuture;
import kitwright.money.RateImpossible;
import kitwright.money.RateMissing;
import kitwright.money.RateTwice;
import kitwright.money.RefundBeyondPayment;
import kitwright.money.RefundOfUnpaid;
import kitwright.money.RefundUnlinked;
import kitwright.money.SettlementUnbooked;
import kitwright.money.SpendContradictory;
import kitwright.money.Spent;
import kitwright.money.TaxBeyondAmount;
import kitwright.money.ThreePointDisordered;
import kitwright.network.DaysOffOverlap;
import kitwright.network.DurationBeyondReason;
import kitwright.network.LinkToWithdrawn;
import kitwright.network.Plan;
import kitwright.network.ProgressImpossible;
import kitwright.network.TaskBeforeForerunner;
import kitwright.network.TaskCycle;
import kitwright.network.TaskWaitsForItself;
import kitwright.weather.ForecastGap;
import kitwright.weather.ForecastTwice;

/** Judges a ledger by every rule there is. */
public final class Check {
  private Check() {}

  /**
   * Every rule, in the order in which their pages are best read. Facts that several rules need are
   * worked out here once and handed to their constructors.
   */
  public static List<Rule> rules(Ledger ledger, LocalDate today) {
    Account account = Spent.asOf(ledger, today, Set.of());
    Plan plan = Plan.of(ledger, today);
    return List.of(
        // Form: ids, references, dates, evidence.
        new IdTwice(),
        new ReferenceDangling(),
        new DatesDisordered(),
        new DateImpossible(),
        new EvidenceAbsent(),
        new EvidenceAltered(),
        // Time: tasks, calendar, forecast.
        new TaskCycle(plan),
        new TaskWaitsForItself(),
        new LinkToWithdrawn(plan),
        new TaskBeforeForerunner(plan),
        new ProgressImpossible(),
        new DurationBeyondReason(),
        new DaysOffOverlap(),
        new ForecastTwice(),
        new ForecastGap(),
        // Money.
        new BudgetLineUnknown(),
        new MoneyNegative(),
        new ThreePointDisordered(),
        new RateImpossible(),
        new RateTwice(),
        new RateMissing(account),
        new TaxBeyondAmount(),
        new PaidInFuture(),
        new SpendContradictory(),
        new PaidBeyondOrder(),
        new RefundUnlinked(),
        new RefundOfUnpaid(),
        new RefundBeyondPayment(account),
        new SettlementUnbooked(account),
        new LineOverBudget(account),
        new BuildOverBudget(account),
        new ForecastOverBudget(account));
  }

  /** Adds what every rule finds on that day. */
  public static void examine(Ledger ledger, LocalDate today, Findings out) {
    rules(ledger, today).forEach(rule -> rule.examine(ledger, today, out));
  }
}

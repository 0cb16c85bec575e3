package kitwright.money;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kitwright.ledger.Ledger;
import kitwright.numbers.Ranks;
import kitwright.value.Money;
import kitwright.value.ThreePoint;

/** Where the build may end, from many simulated ends, and what makes it uncertain. */
public final class CostRange {
  private final double[] sorted;
  private final List<Contribution> contributions;

  private CostRange(double[] sorted, List<Contribution> contributions) {
    this.sorted = sorted;
    this.contributions = contributions;
  }

  /**
   * What a cost contributes to the uncertainty of the end.
   *
   * @param share its covariance with the end over the end's variance; all add up to 1; below zero
   *     for one that sampling error alone gives a share
   */
  public record Contribution(CostItem item, double share) {}

  /**
   * The amount that a share of the runs stayed within.
   *
   * @param from lower end of the 95 % interval that sampling leaves, by {@link Ranks}
   * @param to upper end of it
   */
  public record Quantile(double amount, double from, double to) {
    /** The amount as money. */
    public Money money(Currency currency) {
      return Money.rounded(BigDecimal.valueOf(amount), currency);
    }
  }

  static CostRange of(double[] ends, List<Contribution> contributions) {
    double[] sorted = ends.clone();
    Arrays.sort(sorted);
    List<Contribution> ranked = new ArrayList<>(contributions);
    ranked.sort(
        Comparator.comparingDouble(Contribution::share)
            .reversed()
            .thenComparing(each -> each.item().what()));
    return new CostRange(sorted, List.copyOf(ranked));
  }

  /** The range of the final cost on the day of an account, with the usual runs and seed. */
  public static CostRange of(Ledger ledger, Account account) {
    return of(ledger, account, CostSimulation.RUNS, CostSimulation.SEED);
  }

  /**
   * The range of the final cost. What is committed is certain; what remains of a line has its three
   * points where the line states them; of an undecided shortage every way out is as likely.
   */
  public static CostRange of(Ledger ledger, Account account, int runs, long seed) {
    Money fixed = account.whole().committed();
    List<CostItem> items = new ArrayList<>();
    for (LineState line : account.all()) {
      ThreePoint<Money> left = line.remaining().range();
      if (left.isFixed()) {
        fixed = fixed.plus(left.likely());
      } else {
        items.add(new CostItem("still to come: " + line.title(), line.line(), List.of(left)));
      }
    }
    for (OpenShortage open : account.ways()) {
      CostItem item = new CostItem("shortage " + open.shortage().id(), open.line(), open.costs());
      if (item.isFixed()) {
        fixed = fixed.plus(open.likely());
      } else {
        items.add(item);
      }
    }
    for (OpenRepair repair : account.repairs()) {
      if (repair.cost().isPresent()) {
        ThreePoint<Money> cost = repair.cost().get();
        if (cost.isFixed()) {
          fixed = fixed.plus(cost.likely());
        } else {
          items.add(new CostItem("repair of " + repair.loan().id(), repair.line(), List.of(cost)));
        }
      }
    }
    Map<String, Double> together = new HashMap<>();
    ledger
        .budget()
        .forEach(
            line ->
                line.together().ifPresent(share -> together.put(line.line(), share.doubleValue())));
    items.sort(Comparator.comparing(CostItem::line).thenComparing(CostItem::what));
    return CostSimulation.run(items, fixed.amount().doubleValue(), together, runs, seed);
  }

  public int runs() {
    return sorted.length;
  }

  /**
   * The amount that a share of the runs stayed within.
   *
   * @param share more than 0, at most 1
   */
  public Quantile within(double share) {
    Ranks ranks = Ranks.of(share, runs());
    return new Quantile(sorted[ranks.at()], sorted[ranks.from()], sorted[ranks.to()]);
  }

  /** The chance that the build ends at this amount or below, to the half of a minor unit. */
  public double chanceWithin(Money amount) {
    double limit = amount.amount().doubleValue() + halfUnit(amount.currency());
    int low = 0;
    int high = runs();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (sorted[middle] < limit) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return (double) low / runs();
  }

  private static double halfUnit(Currency currency) {
    return Math.pow(10, -Math.max(0, currency.getDefaultFractionDigits())) / 2;
  }

  /** What makes the end uncertain, the most first. */
  public List<Contribution> contributions() {
    return contributions;
  }
}

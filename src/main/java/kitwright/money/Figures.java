package kitwright.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.value.Money;

/** Tells earned value in plain sentences. */
public final class Figures {
  /** A truncated index misleads; three decimals show what a hundredth of the budget does. */
  private static final int DECIMALS = 3;

  private final EarnedValue ev;
  private final Money forecast;
  private final List<Figure> all = new ArrayList<>();

  private Figures(EarnedValue ev, Money forecast) {
    this.ev = ev;
    this.forecast = forecast;
  }

  /**
   * All figures, in the order in which they build on each other.
   *
   * @param forecast what is spent and the remaining costs as the records tell them: the bottom-up
   *     end
   */
  public static List<Figure> of(EarnedValue ev, Money forecast) {
    Figures figures = new Figures(ev, forecast);
    figures.values();
    figures.variances();
    figures.indices();
    figures.ends();
    figures.toCome();
    return List.copyOf(figures.all);
  }

  private void add(String name, String abbreviation, Money sum, String says) {
    add(name, abbreviation, sum.told(), Optional.of(sum), Optional.empty(), says);
  }

  private void add(
      String name, String abbreviation, Optional<BigDecimal> index, String orElse, String says) {
    String value = index.map(Figures::index).orElse(orElse);
    add(name, abbreviation, value, Optional.empty(), index.map(Figures::rounded), says);
  }

  private void add(
      String name,
      String abbreviation,
      String value,
      Optional<Money> sum,
      Optional<BigDecimal> index,
      String says) {
    all.add(new Figure(name, abbreviation, value, sum, index, says));
  }

  private static String index(BigDecimal index) {
    return rounded(index).toPlainString();
  }

  private static BigDecimal rounded(BigDecimal index) {
    return index.setScale(DECIMALS, RoundingMode.HALF_UP);
  }

  private void values() {
    add(
        "budget at completion",
        "BAC",
        ev.atCompletion(),
        "All the work was to cost " + ev.atCompletion().told() + ".");
    add(
        "planned value",
        "PV",
        ev.plannedValue(),
        "By this day work worth " + ev.plannedValue().told() + " of the budget was to be done.");
    add(
        "earned value",
        "EV",
        ev.earnedValue(),
        "The work that is done was to cost " + ev.earnedValue().told() + ".");
    add("actual cost", "AC", ev.actualCost(), "It has cost " + ev.actualCost().told() + " so far.");
  }

  private void variances() {
    Money cost = ev.costVariance();
    add(
        "cost variance, EV − AC",
        "CV",
        cost,
        cost.signum() == 0
            ? "The work done has cost what it was to cost."
            : "The work done has cost "
                + unsigned(cost).told()
                + (cost.signum() < 0 ? " more" : " less")
                + " than it was to cost; material bought ahead of the work counts as cost.");
    Money schedule = ev.scheduleVariance();
    add(
        "schedule variance, EV − PV",
        "SV",
        schedule,
        schedule.signum() == 0
            ? "As much is done as was planned."
            : "Work worth "
                + unsigned(schedule).told()
                + (schedule.signum() < 0 ? " less" : " more")
                + " than planned is done.");
  }

  private static Money unsigned(Money money) {
    return money.signum() < 0 ? money.negated() : money;
  }

  private void indices() {
    String unit = ev.currency().getCurrencyCode();
    add(
        "cost performance index, EV / AC",
        "CPI",
        ev.costIndex(),
        "not yet",
        ev.costIndex()
            .map(index -> "Each " + unit + " spent has bought work worth " + index(index) + ".")
            .orElse("Nothing is spent yet, so that it cannot be told."));
    add(
        "schedule performance index, EV / PV",
        "SPI",
        ev.scheduleIndex(),
        "not yet",
        ev.scheduleIndex()
            .map(index -> "For each 1.000 of work planned by now, " + index(index) + " is done.")
            .orElse("Nothing was planned to be done yet, so that it cannot be told."));
  }

  private void ends() {
    end(
        "estimate at completion, by cost index, BAC / CPI",
        ev.endAtCostIndex(),
        "If the rest goes on costing as it has, it ends at ");
    end(
        "estimate at completion, at budget rate, AC + BAC − EV",
        Optional.of(ev.endAtBudgetRate()),
        "If the rest costs what the budget says, it ends at ");
    end(
        "estimate at completion, by both indices, AC + (BAC − EV) / (CPI × SPI)",
        ev.endAtBothIndices(),
        "If the rest costs as it has and lost time has to be bought back, it ends at ");
    end(
        "estimate at completion, from the records",
        Optional.of(forecast),
        "By what the records say is still to be bought, it ends at ");
  }

  private void end(String name, Optional<Money> end, String says) {
    add(
        name,
        "EAC",
        end.map(Money::told).orElse("not yet"),
        end,
        Optional.empty(),
        end.map(money -> says + money.told() + ".")
            .orElse("Too little is done yet to tell it this way."));
  }

  private void toCome() {
    Money left = ev.toComplete(forecast);
    add(
        "estimate to complete, from the records, EAC − AC",
        "ETC",
        left,
        left.told() + " are still to be spent.");
    Money variance = ev.varianceAtCompletion(forecast);
    add(
        "variance at completion, from the records, BAC − EAC",
        "VAC",
        variance,
        variance.signum() == 0
            ? "It ends on its budget."
            : "It ends "
                + unsigned(variance).told()
                + (variance.signum() < 0 ? " over" : " under")
                + " its budget.");
    Optional<BigDecimal> index = ev.toCompleteIndex(ev.atCompletion());
    add(
        "to-complete performance index, (BAC − EV) / (BAC − AC)",
        "TCPI",
        index,
        "not reachable",
        index
            .map(
                each ->
                    "To end on budget, each "
                        + ev.currency().getCurrencyCode()
                        + " left must buy work worth "
                        + index(each)
                        + ".")
            .orElse("The budget is spent: no way of working ends on it."));
  }
}

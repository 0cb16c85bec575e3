package kitwright.shortage;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;
import kitwright.ledger.Substitution;
import kitwright.ledger.Task;
import kitwright.value.Quantity;

/**
 * Fires where finished tasks have used more of an item than was ever counted good or got in place
 * of it.
 */
public final class FinishedWithoutMaterial implements Rule {
  private final Standings shortages;
  private final kitwright.substitution.Standings substitutions;

  public FinishedWithoutMaterial(
      Standings shortages, kitwright.substitution.Standings substitutions) {
    this.shortages = shortages;
    this.substitutions = substitutions;
  }

  @Override
  public String name() {
    return "finished-without-material";
  }

  @Override
  public void examine(Ledger ledger, LocalDate today, Findings out) {
    Map<String, Quantity> had = new HashMap<>();
    for (Balance balance : shortages.balances()) {
      had.put(balance.position().item().id(), had(balance));
    }
    substitutions.all().forEach(each -> addSubstitute(each, had));
    Map<String, BigDecimal> used = new HashMap<>();
    for (Task task : ledger.tasks()) {
      if (task.finished().filter(day -> !day.isAfter(today)).isPresent()) {
        task.uses().forEach(use -> examine(task, use, ledger, had, used, out));
      }
    }
  }

  private void examine(
      Task task,
      Task.Use use,
      Ledger ledger,
      Map<String, Quantity> had,
      Map<String, BigDecimal> used,
      Findings out) {
    if (use.item().isEmpty() || use.qty().isEmpty()) {
      return;
    }
    KitItem item = ledger.kitItem(use.item().get()).orElse(null);
    Quantity there = item == null ? null : had.get(item.id());
    if (item != null && there != null && use.qty().get().convertsTo(there)) {
      BigDecimal sum =
          used.merge(item.id(), use.qty().get().in(there.unit()).amount(), BigDecimal::add);
      if (Thing.clean(sum.subtract(there.amount())).signum() > 0) {
        out.add(finding(task, use, item, new Quantity(sum, there.unit()), there));
      }
    }
  }

  /** Counted good, or bought. */
  private static Quantity had(Balance balance) {
    return balance.position().good().plus(balance.covered(Cover.How.BOUGHT));
  }

  /** Something else that was taken in an item's place, signed or not, was had as well. */
  private static void addSubstitute(
      kitwright.substitution.Standing standing, Map<String, Quantity> had) {
    if (!standing.isWithdrawn()) {
      Substitution.InsteadOf instead = standing.substitution().insteadOf();
      instead
          .item()
          .ifPresent(
              item ->
                  had.computeIfPresent(
                      item.id(),
                      (id, sum) -> instead.qty().convertsTo(sum) ? sum.plus(instead.qty()) : sum));
    }
  }

  private Finding finding(Task task, Task.Use use, KitItem item, Quantity used, Quantity there) {
    return new Finding(
        name(),
        Severity.WARN,
        use.at().of("item"),
        "“"
            + task.what()
            + "” is finished, which makes "
            + used
            + " of “"
            + item.what()
            + "” used; only "
            + there
            + " were ever counted good or got in their place.",
        "The count is wrong, or the task used less or something else; what is left is told falsely.",
        "Count the delivery, record the substitution, or correct what the task uses.",
        List.of(task.named(), item.named()));
  }
}

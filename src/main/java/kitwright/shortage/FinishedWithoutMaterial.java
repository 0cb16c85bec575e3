package kitwright.shortage;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.kit.Positions;
import kitwright.ledger.Facts;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;
import kitwright.ledger.Shortage;
import kitwright.ledger.Substitution;
import kitwright.ledger.Task;
import kitwright.network.Headways;
import kitwright.substitution.SubstitutionStanding;
import kitwright.substitution.SubstitutionStandings;
import kitwright.substitution.TakenWays;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * Fires where finished tasks have used more of an item than was ever counted good or got in place
 * of it.
 */
public final class FinishedWithoutMaterial implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    Map<String, List<Quantity>> instead = insteadOf(day);
    ShortageStandings shortages = ShortageStandings.on(day);
    Map<String, BigDecimal> used = new HashMap<>();
    Headways headways = Headways.on(day);
    for (Task task : day.ledger().tasks()) {
      if (headways.hasEnded(task)) {
        task.uses().forEach(use -> examine(task, use, shortages, instead, used, out));
      }
    }
  }

  private void examine(
      Task task,
      Task.Use use,
      ShortageStandings shortages,
      Map<String, List<Quantity>> instead,
      Map<String, BigDecimal> used,
      Findings out) {
    Optional<Balance> balance = use.item().flatMap(shortages::balance);
    if (balance.isEmpty() || use.gross().isEmpty()) {
      return;
    }
    KitItem item = balance.get().position().item();
    Quantity there = had(balance.get(), instead.getOrDefault(item.id(), List.of()));
    if (use.gross().get().convertsTo(there)) {
      BigDecimal sum =
          used.merge(item.id(), use.gross().get().in(there.unit()).amount(), BigDecimal::add);
      if (Thing.clean(sum.subtract(there.amount())).signum() > 0) {
        out.add(finding(task, use, item, new Quantity(sum, there.unit()), there));
      }
    }
  }

  /** Counted good, or bought, or something else taken in its place. */
  private static Quantity had(Balance balance, List<Quantity> instead) {
    Quantity had = balance.position().good().plus(balance.bought());
    for (Quantity other : instead) {
      had = other.convertsTo(had) ? had.plus(other) : had;
    }
    return had;
  }

  /** What was taken in each item’s place, signed or not, as far as it stands for it. */
  private static Map<String, List<Quantity>> insteadOf(Facts day) {
    Map<String, List<Quantity>> all = new HashMap<>();
    TakenWays taken = SubstitutionStandings.on(day).taken();
    for (SubstitutionStanding standing : SubstitutionStandings.on(day).all()) {
      Substitution substitution = standing.substitution();
      Optional<Ref> item = item(substitution, day.ledger());
      boolean isTaken = !standing.isWithdrawn() && !taken.isOnlyAnOption(substitution);
      if (item.isPresent() && isTaken) {
        all.computeIfAbsent(item.get().id(), id -> new ArrayList<>())
            .add(Serves.of(substitution, Positions.on(day), day.ledger()).qty());
      }
    }
    return all;
  }

  /** What it stands for: the item that it names, else that of the shortage that it answers. */
  private static Optional<Ref> item(Substitution substitution, Ledger ledger) {
    return substitution
        .insteadOf()
        .item()
        .or(() -> substitution.shortage().flatMap(ledger::shortage).map(Shortage::item));
  }

  private Finding finding(Task task, Task.Use use, KitItem item, Quantity used, Quantity there) {
    return warn(
        use.at().of("item"),
        "“"
            + task.what()
            + "” is finished, which "
            + (use.waste().isPresent() ? "with its waste " : "")
            + "makes "
            + used
            + " of “"
            + item.what()
            + "” used; only "
            + there
            + " were ever counted good or got in their place.",
        "The count is wrong, or the task used less or something else; what is left is told"
            + " falsely.",
        "Count the delivery, record the substitution, or correct what the task uses.",
        List.of(task.named(), item.named()));
  }
}

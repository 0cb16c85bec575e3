package kitwright.shortage;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.kit.Position;
import kitwright.kit.Positions;
import kitwright.kit.StockPosition;
import kitwright.kit.Use;
import kitwright.ledger.Ledger;
import kitwright.ledger.LogDay;
import kitwright.ledger.Task;
import kitwright.network.Plan;
import kitwright.value.Ref;

/**
 * What is used up: as the log and done cuts say, and at least what the finished tasks asked for,
 * since not every screw is written down.
 */
final class Consumption {
  private final Map<String, BigDecimal> loggedOfNobody = new HashMap<>();
  private final Map<Spot, BigDecimal> loggedByTask = new HashMap<>();
  private final Map<String, BigDecimal> unlogged = new HashMap<>();
  private final Map<String, List<ByMaterial>> byMaterial = new HashMap<>();

  /** So much of a thing, which the log calls by its material alone. */
  record ByMaterial(LocalDate on, BigDecimal amount) {}

  Consumption(
      Ledger ledger, Plan plan, Things things, Map<String, List<Want>> wants, Positions positions) {
    for (Position position : positions.all()) {
      position
          .uses()
          .forEach(use -> things.of(position.item(), use.qty()).ifPresent(of -> take(use, of)));
    }
    for (StockPosition position : positions.allStock()) {
      position
          .uses()
          .forEach(use -> things.of(position.stock(), use.qty()).ifPresent(of -> take(use, of)));
    }
    for (LogDay day : ledger.log()) {
      day.used().stream()
          .filter(used -> used.material().isPresent())
          .forEach(used -> things.of(used).ifPresent(amount -> take(day, used, amount)));
    }
    Map<Spot, BigDecimal> asked = new HashMap<>();
    for (Task task : plan.tasks()) {
      if (!plan.isOpen(task.id())) {
        wants
            .getOrDefault(task.id(), List.of())
            .forEach(
                want ->
                    things
                        .of(want)
                        .ifPresent(
                            each ->
                                asked.merge(
                                    new Spot(task.id(), each.thing().key()),
                                    each.amount(),
                                    BigDecimal::add)));
      }
    }
    asked.forEach(
        (spot, amount) -> {
          BigDecimal more = amount.subtract(loggedByTask.getOrDefault(spot, BigDecimal.ZERO));
          if (more.signum() > 0) {
            unlogged.merge(spot.key(), more, BigDecimal::add);
          }
        });
  }

  private void take(Use use, Things.Amount amount) {
    take(use.task(), amount);
  }

  private void take(LogDay day, LogDay.Used used, Things.Amount amount) {
    take(used.task(), amount);
    byMaterial
        .computeIfAbsent(amount.thing().key(), any -> new ArrayList<>())
        .add(new ByMaterial(day.day(), amount.amount()));
  }

  /**
   * What the log says was used of a thing by the name of its material, by day: unlike what it calls
   * by an item or a piece of stock, no position has lost it.
   */
  List<ByMaterial> byMaterial(String key) {
    return byMaterial.getOrDefault(key, List.of());
  }

  private void take(Optional<Ref> task, Things.Amount amount) {
    String key = amount.thing().key();
    task.ifPresentOrElse(
        ref -> loggedByTask.merge(new Spot(ref.id(), key), amount.amount(), BigDecimal::add),
        () -> loggedOfNobody.merge(key, amount.amount(), BigDecimal::add));
  }

  /** What the log says a task has used of a thing. */
  BigDecimal logged(String task, String key) {
    return loggedByTask.getOrDefault(new Spot(task, key), BigDecimal.ZERO);
  }

  /**
   * What finished tasks must have used beyond what the log says they did. What the log tells of no
   * task in particular may be the same, and is taken off first.
   */
  BigDecimal unlogged(String key) {
    BigDecimal ofNobody = loggedOfNobody.getOrDefault(key, BigDecimal.ZERO);
    return unlogged.getOrDefault(key, BigDecimal.ZERO).subtract(ofNobody).max(BigDecimal.ZERO);
  }
}

package kitwright.money;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import kitwright.ledger.Ledger;
import kitwright.ledger.Task;
import kitwright.shortage.Thing;
import kitwright.shortage.Things;
import kitwright.shortage.Want;
import kitwright.shortage.Wants;

/**
 * What the tasks ask for, by their own words and by sections taken off, and which thing each kit
 * item, piece of stock and purchase counts as.
 */
final class Demand {
  /**
   * What a task asks for.
   *
   * @param amount in the thing's unit, waste among it
   */
  record Ask(Task task, Want want, Thing thing, BigDecimal amount) {}

  private final Ledger ledger;
  private final Things things;
  private final List<Ask> asks = new ArrayList<>();

  private Demand(Ledger ledger) {
    this.ledger = ledger;
    List<Task> tasks = ledger.tasks().stream().filter(task -> task.withdrawn().isEmpty()).toList();
    List<List<Want>> wants = tasks.stream().map(task -> Wants.of(task, ledger)).toList();
    things = new Things(ledger, wants.stream().flatMap(List::stream).toList());
    for (int i = 0; i < tasks.size(); i++) {
      Task task = tasks.get(i);
      wants
          .get(i)
          .forEach(
              want ->
                  things
                      .of(want)
                      .ifPresent(of -> asks.add(new Ask(task, want, of.thing(), of.amount()))));
    }
  }

  static Demand of(Ledger ledger) {
    return new Demand(ledger);
  }

  Things things() {
    return things;
  }

  Stream<Ask> asks() {
    return asks.stream();
  }

  /**
   * How much of each thing was planned, by its key, in its unit: what the tasks ask for, or what
   * the kit promises where that is more.
   */
  Map<String, BigDecimal> planned() {
    Map<String, BigDecimal> asked = new HashMap<>();
    asks.forEach(ask -> asked.merge(ask.thing().key(), ask.amount(), BigDecimal::add));
    Map<String, BigDecimal> promised = new HashMap<>();
    ledger
        .kit()
        .forEach(
            item ->
                things
                    .of(item, item.qty())
                    .ifPresent(
                        of -> promised.merge(of.thing().key(), of.amount(), BigDecimal::add)));
    promised.forEach((key, amount) -> asked.merge(key, amount, BigDecimal::max));
    return asked;
  }
}

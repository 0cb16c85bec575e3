package kitwright.shortage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.ledger.Ledger;
import kitwright.ledger.Substitution;
import kitwright.ledger.Task;
import kitwright.takeoff.Line;
import kitwright.takeoff.TakeOff;

/** What each task asks for by its own record, and what approved substitutions ask of it. */
public final class Wants {
  private Wants() {}

  /** By the task's uses, with what is wasted; sections are taken off. */
  public static List<Want> of(Task task, Ledger ledger) {
    List<Want> wants = new ArrayList<>();
    for (Task.Use use : task.uses()) {
      use.gross()
          .ifPresent(
              qty -> {
                use.item().ifPresent(r -> wants.add(want(task.id(), Want.Sort.ITEM, r, qty)));
                use.stock().ifPresent(r -> wants.add(want(task.id(), Want.Sort.STOCK, r, qty)));
                use.material()
                    .ifPresent(r -> wants.add(want(task.id(), Want.Sort.MATERIAL, r, qty)));
              });
      for (Line line : TakeOff.of(use, ledger).lines()) {
        wants.add(
            new Want(
                task.id(),
                Want.Sort.MATERIAL,
                line.material(),
                line.gross(),
                line.thickness(),
                Optional.of(line.sum())));
      }
    }
    return wants;
  }

  /** By a substitution, for the task that it holds; nothing where it holds none. */
  static List<Want> of(Substitution substitution) {
    List<Want> wants = new ArrayList<>();
    substitution
        .hold()
        .ifPresent(
            task -> {
              for (Substitution.Take take : substitution.use()) {
                take.item()
                    .ifPresent(r -> wants.add(want(task.id(), Want.Sort.ITEM, r, take.qty())));
                take.stock()
                    .ifPresent(r -> wants.add(want(task.id(), Want.Sort.STOCK, r, take.qty())));
              }
            });
    return wants;
  }

  private static Want want(
      String task, Want.Sort sort, kitwright.value.Ref ref, kitwright.value.Quantity qty) {
    return new Want(task, sort, ref, qty, Optional.empty(), Optional.empty());
  }
}

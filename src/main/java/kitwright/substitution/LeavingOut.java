package kitwright.substitution;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.ledger.Grade;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.ledger.Task;
import kitwright.value.Ref;

/**
 * Whether what is missing may be done without. That departs from the drawing as a substitution
 * does: of a part whose grade is structural or of systems only somebody entitled to it may say so.
 */
public final class LeavingOut {
  private LeavingOut() {}

  /** The grade for which whoever decided may not say so; empty where it is done without. */
  public static Optional<Grade> beyond(Shortage shortage, Ledger ledger) {
    return asked(shortage, ledger)
        .filter(
            grade ->
                shortage
                    .decided()
                    .filter(each -> Rights.maySign(each.by(), grade, each.on(), ledger))
                    .isEmpty());
  }

  /**
   * The grade that asks for somebody entitled to say so; empty where nothing much depends on it.
   */
  public static Optional<Grade> asked(Shortage shortage, Ledger ledger) {
    return grade(shortage.item(), ledger).filter(grade -> grade != Grade.FINISH);
  }

  /** The gravest of the item and of the work that uses it. */
  private static Optional<Grade> grade(Ref item, Ledger ledger) {
    Stream<Grade> own = ledger.kitItem(item).flatMap(KitItem::grade).stream();
    Stream<Grade> work =
        ledger.tasks().stream()
            .filter(task -> task.withdrawn().isEmpty())
            .filter(task -> task.uses().stream().anyMatch(use -> isOf(use, item)))
            .flatMap(task -> task.grade().stream());
    return Stream.concat(own, work).min(Comparator.naturalOrder());
  }

  private static boolean isOf(Task.Use use, Ref item) {
    return use.item().filter(each -> each.id().equals(item.id())).isPresent();
  }

  /** The names of those who may say so on a day. */
  public static List<String> entitled(Grade grade, LocalDate day, Ledger ledger) {
    return ledger.parties().stream()
        .filter(party -> Rights.maySign(party, grade, day))
        .map(party -> party.name() + " (" + party.id() + ")")
        .toList();
  }
}

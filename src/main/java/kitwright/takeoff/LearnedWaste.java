package kitwright.takeoff;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.LogDay;
import kitwright.ledger.Stock;
import kitwright.ledger.Task;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * What the builder's own work has shown about waste: in the finished tasks that were taken off from
 * sections, what the log says was used, against what ended up in the boat by the sum.
 *
 * @param net by the sum, without waste
 * @param used by the log
 * @param tasks how many tasks taught it
 * @param share used beyond net, over net; below zero where less was used than the sum says
 */
public record LearnedWaste(
    Line.Role role, Quantity net, Quantity used, int tasks, BigDecimal share) {
  private record Lesson(Quantity net, Quantity used, int tasks) {
    Lesson and(Lesson other) {
      return new Lesson(net.plus(other.net), used.plus(other.used), tasks + other.tasks);
    }

    /** Another material of the same role in the same task. */
    Lesson sameTask(Lesson other) {
      return new Lesson(net.plus(other.net), used.plus(other.used), tasks);
    }
  }

  /** What tasks finished by the end of a day teach, by role; empty where none does. */
  public static List<LearnedWaste> of(Ledger ledger) {
    Map<Line.Role, Lesson> lessons = new EnumMap<>(Line.Role.class);
    for (Task task : ledger.tasks()) {
      if (task.finished().isPresent()) {
        Map<Line.Role, Lesson> ofTask = new EnumMap<>(Line.Role.class);
        for (Line line : byMaterial(TakeOff.of(task, ledger))) {
          lesson(task, line, ledger)
              .ifPresent(lesson -> ofTask.merge(line.role(), lesson, Lesson::sameTask));
        }
        ofTask.forEach((role, lesson) -> lessons.merge(role, lesson, Lesson::and));
      }
    }
    List<LearnedWaste> learned = new ArrayList<>();
    lessons.forEach((role, lesson) -> learned.add(learned(role, lesson)));
    return learned;
  }

  /** The log knows no layers: lines of one material are one. */
  private static Collection<Line> byMaterial(TakeOff takeOff) {
    Map<String, Line> lines = new LinkedHashMap<>();
    takeOff
        .lines()
        .forEach(
            line ->
                lines.merge(
                    line.material().id() + " " + line.role(),
                    line,
                    (a, b) ->
                        new Line(
                            a.material(),
                            a.role(),
                            a.net().plus(b.net()),
                            a.gross().plus(b.gross()),
                            a.thickness(),
                            a.sum() + "; " + b.sum())));
    return lines.values();
  }

  private static LearnedWaste learned(Line.Role role, Lesson lesson) {
    BigDecimal share =
        lesson
            .used()
            .amount()
            .divide(lesson.net().amount(), 3, RoundingMode.HALF_UP)
            .subtract(BigDecimal.ONE);
    return new LearnedWaste(role, lesson.net(), lesson.used(), lesson.tasks(), share);
  }

  private static Optional<Lesson> lesson(Task task, Line line, Ledger ledger) {
    Quantity used = Quantity.none(line.net().unit());
    for (LogDay day : ledger.log()) {
      for (LogDay.Used each : day.used()) {
        boolean counts =
            each.task().filter(ref -> ref.id().equals(task.id())).isPresent()
                && material(each, ledger)
                    .filter(ref -> ref.id().equals(line.material().id()))
                    .isPresent()
                && each.qty().convertsTo(used);
        used = counts ? used.plus(each.qty()) : used;
      }
    }
    return used.isNone() || line.net().isNone()
        ? Optional.empty()
        : Optional.of(new Lesson(line.net(), used, 1));
  }

  private static Optional<Ref> material(LogDay.Used used, Ledger ledger) {
    return used.material()
        .or(() -> used.item().flatMap(ledger::kitItem).flatMap(KitItem::material))
        .or(() -> used.stock().flatMap(ledger::stock).flatMap(Stock::material));
  }
}

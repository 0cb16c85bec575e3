package kitwright.daybook;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import kitwright.ledger.Delivery;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Loan;
import kitwright.ledger.LogDay;
import kitwright.ledger.Spend;
import kitwright.ledger.Task;
import kitwright.network.Headways;
import kitwright.network.Plan;
import kitwright.openmatter.Readiness;
import kitwright.substitution.Release;

/**
 * What lies ahead on the evening of a day.
 *
 * @param underWay tasks begun and not finished
 * @param ready tasks not begun, which may start within a week and lack nothing
 * @param held tasks that would be ready, but for a substitution that may not be built yet
 * @param breached tasks begun though a substitution holds them
 * @param deliveries on their way, those with a day first
 * @param orders paid for or not, not yet come, with a day on which they shall
 * @param tools borrowed and not given back, with a day on which they shall be
 */
public record Ahead(
    List<Task> underWay,
    List<Task> ready,
    List<Task> held,
    List<Task> breached,
    List<Delivery> deliveries,
    List<Spend> orders,
    List<Loan> tools) {

  /**
   * What lies ahead on the evening of a week's last day, or today where that is still to come.
   *
   * @param log by date: the days of it that may be told
   */
  public static Ahead after(Week week, Facts now, List<LogDay> log) {
    Facts evening = evening(week, now);
    return on(evening, Headways.of(now.ledger(), log, evening.day()));
  }

  /** The facts of that evening. */
  public static Facts evening(Week week, Facts now) {
    return now.on(week.last().isBefore(now.day()) ? week.last() : now.day());
  }

  private static Ahead on(Facts day, Headways told) {
    Ledger ledger = day.ledger();
    LocalDate evening = day.day();
    Predicate<Task> begun = task -> Stage.of(task, told).isBegun();
    List<Task> open =
        Plan.on(day).tasks().stream().filter(task -> Plan.on(day).isOpen(task.id())).toList();
    List<Readiness> next =
        open.stream().filter(begun.negate()).map(task -> Readiness.of(task, day)).toList();
    Release release = Release.on(day);
    return new Ahead(
        open.stream().filter(begun).toList(),
        next.stream()
            .filter(Readiness::isReady)
            .filter(each -> !each.from().isAfter(evening.plusWeeks(1)))
            .map(Readiness::task)
            .toList(),
        next.stream()
            .filter(each -> each.lacksOnly(Readiness.Kind.SIGNATURE))
            .map(Readiness::task)
            .toList(),
        open.stream().filter(begun).filter(Predicate.not(release::isGiven)).toList(),
        due(ledger.deliveries(), each -> each.received().isEmpty(), Delivery::expected),
        due(
            ledger.spending(),
            each ->
                each.state() == Spend.State.ORDERED
                    && each.expected().filter(evening::isBefore).isPresent(),
            Spend::expected),
        due(
            ledger.borrowed(),
            each -> each.due().isPresent() && each.returned().isEmpty(),
            Loan::due));
  }

  private static <T> List<T> due(
      List<T> all, Predicate<T> open, Function<T, Optional<LocalDate>> day) {
    return all.stream()
        .filter(open)
        .sorted(Comparator.comparing((T each) -> day.apply(each).orElse(LocalDate.MAX)))
        .toList();
  }
}

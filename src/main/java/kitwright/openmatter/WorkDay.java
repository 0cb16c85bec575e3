package kitwright.openmatter;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kitwright.ledger.Delivery;
import kitwright.ledger.Facts;
import kitwright.ledger.ForecastDay;
import kitwright.loan.LoanStanding;
import kitwright.network.Plan;
import kitwright.weather.Outlook;

/**
 * What can really go on on a working day, by what is known now.
 *
 * @param facts as of the morning of that day
 * @param ready what may start or go on, the least float first
 * @param waiting what the order of work would let go on, and what it lacks; the least float first
 * @param acts what one must act on by that evening, most pressing first
 * @param deliveries that are expected that day
 * @param due tools that are due by then and no open matter yet
 * @param forecast for the day
 */
public record WorkDay(
    Facts facts,
    List<Readiness> ready,
    List<Readiness> waiting,
    List<OpenMatter> acts,
    List<Delivery> deliveries,
    List<LoanStanding> due,
    Optional<ForecastDay> forecast) {

  /** The first working day after today. */
  public static LocalDate after(Facts now) {
    return Plan.on(now).calendar().plusWorkingDays(now.day().plusDays(1), 0);
  }

  /** A day ahead, seen from today: what is dated later than today has not happened. */
  public static WorkDay of(LocalDate day, Facts now) {
    Facts then = Facts.of(now.ledger(), day);
    Plan plan = Plan.on(then);
    List<Readiness> ready = new ArrayList<>();
    List<Readiness> waiting = new ArrayList<>();
    plan.ahead().stream()
        .sorted(Comparator.comparing(planned -> planned.total()))
        .flatMap(planned -> plan.task(planned.id()).stream())
        .map(task -> Readiness.of(task, then))
        .forEach(
            each -> {
              if (each.isReady()) {
                ready.add(each);
              } else if (each.lacks().stream().noneMatch(l -> l.kind() == Readiness.Kind.WORK)) {
                waiting.add(each);
              }
            });
    List<OpenMatter> acts = OpenMatters.on(then).actingBy(day);
    return new WorkDay(
        then,
        ready,
        waiting,
        acts,
        now.ledger().deliveries().stream()
            .filter(each -> each.received().isEmpty())
            .filter(each -> each.expected().equals(Optional.of(day)))
            .toList(),
        LoanStanding.on(then).stream()
            .filter(loan -> !loan.isBack())
            .filter(loan -> loan.loan().due().filter(due -> !due.isAfter(day)).isPresent())
            .filter(
                loan -> acts.stream().noneMatch(act -> act.record().equals(loan.loan().named())))
            .toList(),
        Outlook.row(day, now));
  }

  public LocalDate day() {
    return facts.day();
  }
}

package kitwright.openmatter;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.network.Plan;
import kitwright.network.Weathered;
import kitwright.substitution.HoldPoint;
import kitwright.substitution.Lack;
import kitwright.substitution.SubstitutionStanding;
import kitwright.substitution.SubstitutionStandings;
import kitwright.value.Days;
import kitwright.value.Ref;

/** Fires where a held task can start within the horizon, and its substitution is not signed. */
public final class HoldPointNear implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    Plan plan = Plan.on(day);
    SubstitutionStandings.on(day).all().stream()
        .filter(standing -> standing.state() == SubstitutionStanding.State.WAITING)
        .filter(standing -> standing.hold().state() == HoldPoint.State.HOLDS)
        .forEach(
            standing ->
                standing
                    .hold()
                    .task()
                    .filter(task -> plan.isOpen(task.id()))
                    .filter(task -> !from(task, day).isAfter(plan.horizon()))
                    .ifPresent(task -> out.add(finding(standing, task, from(task, day), plan))));
  }

  private static LocalDate from(Ref task, Facts day) {
    return Weathered.on(day).workableOn(task.id(), day);
  }

  private Finding finding(SubstitutionStanding standing, Ref task, LocalDate from, Plan plan) {
    LocalDate latest = plan.schedule().of(task.id()).latestStart().toLocalDate();
    return warn(
        task.at(),
        "“"
            + plan.name(task.id())
            + "” can start on "
            + Days.named(from)
            + ", and what it closes up is not released: "
            + standing.lacks().stream().map(Lack::words).collect(Collectors.joining("; "))
            + ".",
        "The work stops there; from "
            + Days.named(latest)
            + " on the end of the plan moves with it.",
        (standing.lacks().equals(List.of(Lack.UNSIGNED)) ? "" : "See to what is lacking. ")
            + "Have it signed before, or plan other work.",
        List.of(standing.substitution().named(), "task " + task.id()));
  }
}

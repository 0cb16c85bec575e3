package kitwright.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import kitwright.document.Block;
import kitwright.document.Column;
import kitwright.document.Inline;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.ledger.Facts;
import kitwright.ledger.Task;
import kitwright.network.Plan;
import kitwright.network.Planned;
import kitwright.openmatter.Ends;
import kitwright.openmatter.OpenMatter;
import kitwright.openmatter.OpenMatters;
import kitwright.openmatter.Readiness;
import kitwright.shortage.LookAhead;

/** What lies ahead and what will stop it: the words and figures of the picture of the work. */
final class AheadReport implements Report {
  @Override
  public String name() {
    return "ahead";
  }

  @Override
  public String does() {
    return "the work ahead with its float, and every open matter by the day it stops work";
  }

  @Override
  public List<Sheet> sheets(Facts now) {
    List<OpenMatter> matters = OpenMatters.on(now).all();
    List<OpenMatter> stopping = matters.stream().filter(OpenMatter::isDated).toList();
    List<OpenMatter> idle = matters.stream().filter(m -> !m.isDated()).toList();
    List<Planned> tasks =
        Plan.on(now).ahead().stream()
            .filter(p -> !Plan.on(now).workableOn(p.id()).isAfter(Plan.on(now).horizon()))
            .toList();
    Slots slots =
        Slots.none()
            .sentence("build", now.ledger().build().name())
            .sentence("today", Say.day(now.day()))
            .sentence("horizon", Say.day(Plan.on(now).horizon()))
            .sentence("summary", summary(now))
            .block("stopping", blocks(stopping.isEmpty(), stopping(stopping)))
            .block("idle", blocks(idle.isEmpty(), idle(idle)))
            .block("work", blocks(tasks.isEmpty(), work(tasks, now)));
    return List.of(new Sheet("ahead.md", name(), slots));
  }

  private static Block[] blocks(boolean none, Block table) {
    return none ? new Block[0] : new Block[] {table};
  }

  private static String summary(Facts now) {
    if (Plan.on(now).ahead().isEmpty()) {
      return "Every task is finished.";
    }
    LocalDate alone = Plan.on(now).schedule().lastDay();
    LocalDate paced = LookAhead.on(now).paced().lastDay();
    String material =
        paced.equals(alone)
            ? ", and no material that anybody sends or that can be ordered in time moves it"
            : "; with material as promised, or ordered today, on " + Say.day(paced);
    Ends ends = Ends.on(now);
    String weather =
        ends.weather()
            .map(
                each ->
                    " With the weather as well, by the forecast"
                        + (each.byClimate().isEmpty() ? "" : " and beyond it by the stated climate")
                        + ", on "
                        + Say.day(each.schedule().lastDay())
                        + ".")
            .orElse("");
    String leftOut =
        ends.leftOut().stream()
            .map(left -> " Not in these dates: " + left + ".")
            .collect(Collectors.joining());
    return "By work alone the plan ends on "
        + Say.day(alone)
        + material
        + "."
        + weather
        + leftOut
        + now.ledger()
            .build()
            .launch()
            .map(launch -> " The launch is wanted on " + Say.day(launch) + ".")
            .orElse("");
  }

  private static Block stopping(List<OpenMatter> matters) {
    return Block.table(
        Column.columns(
            Column.left("Act by"),
            Column.left("What"),
            Column.left("Stops"),
            Column.left("From"),
            Column.left("Whole plan from"),
            Column.right("Float"),
            Column.left("Waits for"),
            Column.left("Next")),
        matters.stream().map(AheadReport::stopping).toList());
  }

  private static Row stopping(OpenMatter matter) {
    Optional<OpenMatter.Stop> stop = matter.stop();
    return Row.row(
        Inline.text(matter.lastDay().toString()),
        named(matter),
        told(stop.map(OpenMatter.Stop::what)),
        told(stop.map(OpenMatter.Stop::from)),
        told(stop.map(OpenMatter.Stop::neededBy)),
        told(stop.map(at -> Say.days(at.floatDays()))),
        Inline.text(matter.waitsFor()),
        Inline.text(matter.next()));
  }

  private static Inline told(Optional<?> value) {
    return Inline.text(value.map(Object::toString).orElse(Cells.NONE));
  }

  private static Inline named(OpenMatter matter) {
    String id = matter.record().substring(matter.record().lastIndexOf(' ') + 1);
    return Cells.named(Say.capital(matter.sort().word()) + ": " + matter.what(), id);
  }

  private static Block idle(List<OpenMatter> matters) {
    return Block.table(
        Column.columns(Column.left("What"), Column.left("Waits for"), Column.left("Next")),
        matters.stream()
            .map(
                matter ->
                    Row.row(
                        named(matter), Inline.text(matter.waitsFor()), Inline.text(matter.next())))
            .toList());
  }

  private static Block work(List<Planned> tasks, Facts now) {
    return Block.table(
        Column.columns(
            Column.left("From"),
            Column.left("To"),
            Column.left("Work"),
            Column.right("Float"),
            Column.left("Lacks")),
        tasks.stream().map(planned -> work(planned, now)).toList());
  }

  private static Row work(Planned planned, Facts now) {
    Task task = Plan.on(now).task(planned.id()).orElseThrow();
    Readiness readiness = Readiness.of(task, now);
    Optional<String> lacks = Optional.of(readiness.because()).filter(text -> !text.isEmpty());
    return Row.row(
        readiness.from().toString(),
        readiness.to().toString(),
        task.what(),
        Say.days(planned.total().wholeDays()),
        lacks.orElse(Cells.NONE));
  }
}

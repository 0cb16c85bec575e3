package kitwright.report.ahead;

import static kitwright.document.Column.columns;
import static kitwright.document.Column.data;
import static kitwright.document.Column.head;
import static kitwright.document.Column.left;
import static kitwright.document.Column.right;

import java.time.LocalTime;
import java.util.List;
import java.util.stream.Collectors;
import kitwright.document.Cell;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.document.Table;
import kitwright.document.Value;
import kitwright.ledger.Facts;
import kitwright.ledger.Task;
import kitwright.network.Plan;
import kitwright.network.Planned;
import kitwright.openmatter.Readiness;
import kitwright.report.words.Cautions;
import kitwright.report.words.Cells;
import kitwright.report.words.Say;
import kitwright.report.words.Sheet;

/** What lies ahead: work with its float, material, weather, and when the plan ends. */
public final class AheadReport {
  private AheadReport() {}

  public static List<Sheet> sheets(Facts now) {
    return List.of(sheet(Outlook.of(now)));
  }

  /** The document, as far as somebody looks. */
  public static Sheet sheet(Outlook outlook) {
    Facts now = outlook.now();
    AheadMaterial material = new AheadMaterial(outlook, now);
    Slots slots =
        Slots.none()
            .sentence("build", now.ledger().build().name())
            .value("today", Cells.spoken(now.day()))
            .value("last-day", Cells.spoken(outlook.last()));
    slots = new AheadEnds(outlook).in(slots).table("tasks", work(outlook.tasks(), now));
    slots = new AheadWeather(outlook, now).in(material.in(slots));
    slots = slots.table("ready-indoors", ready(Readiness.indoors(now), now));
    slots = Cautions.in(slots, cautions(outlook));
    return new Sheet("ahead.md", "ahead", material.takenOff(slots));
  }

  private static List<String> cautions(Outlook outlook) {
    List<Task> tasks =
        outlook.tasks().stream()
            .flatMap(planned -> Plan.on(outlook.now()).task(planned.id()).stream())
            .toList();
    return Cautions.of(tasks, outlook.now().ledger());
  }

  private static Table work(List<Planned> tasks, Facts now) {
    return new Table(
        "Work in its turn, and what it lacks",
        columns(
            data("task"),
            left("From"),
            left("To").named("finish"),
            head("Work").named("what"),
            right("Float").named("float-days"),
            left("Lacks"),
            data("latest-start"),
            data("critical")),
        tasks.stream().map(planned -> work(planned, now)).toList());
  }

  private static Row work(Planned planned, Facts now) {
    Task task = Plan.on(now).task(planned.id()).orElseThrow();
    Readiness readiness = Readiness.of(task, now);
    List<String> lacks = readiness.lacks().stream().map(Readiness.Lack::words).toList();
    return Row.row(
        Cell.id(task.id()),
        Cell.day(readiness.from()),
        Cell.day(readiness.to()),
        Cell.of(
            task.what() + remark(planned, now) + due(readiness, now), new Value.Text(task.what())),
        Cells.days(planned.total().wholeDays()),
        Cell.several(lacks.isEmpty() ? Cells.NONE : String.join("; ", lacks), lacks),
        Cell.day(planned.latestStart().toLocalDate()),
        Cell.yes("", planned.critical()));
  }

  /** What of its tools shall be back before it can be finished. */
  private static String due(Readiness readiness, Facts now) {
    return readiness.dueWhileAtWork(now).stream()
        .map(back -> ", " + back.words())
        .collect(Collectors.joining());
  }

  /** Of the day that ends at midnight. */
  private static final LocalTime LAST_MINUTE = LocalTime.of(23, 59);

  /** What has no work of its own happens at the end of what it waits for, not the next morning. */
  private static String remark(Planned planned, Facts now) {
    if (planned.activity().left().expected() == 0) {
      LocalTime at = planned.goesOn().toLocalTime();
      return ", no work, reached at " + (at.equals(LAST_MINUTE) ? "24:00" : at);
    }
    return Plan.on(now).isBegun(planned.id()) ? ", begun" : "";
  }

  private static Table ready(List<Readiness> ready, Facts now) {
    return new Table(
        "Indoor work that is ready",
        columns(
            data("task"),
            head("Work").named("what"),
            right("Float").named("float-days"),
            left("Ask")),
        ready.stream()
            .map(
                each ->
                    Row.row(
                        Cell.id(each.task().id()),
                        Cell.text(each.task().what()),
                        Plan.on(now)
                            .planned(each.task().id())
                            .map(planned -> Cells.days(planned.total().wholeDays()))
                            .orElseGet(Cell::none),
                        Cell.several(Say.list(each.people()), each.people())))
            .toList());
  }
}

package kitwright.report.ahead;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.drawing.Course;
import kitwright.drawing.CourseDrawing;
import kitwright.drawing.Svg;
import kitwright.ledger.Facts;
import kitwright.ledger.ForecastDay;
import kitwright.ledger.Task;
import kitwright.network.Plan;
import kitwright.network.Planned;
import kitwright.network.WeatherBound;
import kitwright.openmatter.OpenMatter;
import kitwright.openmatter.OpenMatters;
import kitwright.report.words.Say;
import kitwright.value.Word;

/** The open work over time as a picture, with the open matters pinned on what they will stop. */
public final class WorkPicture {
  private static final String ELSEWHERE = "other work";

  /** Beyond so many weeks names no longer have room. */
  private static final int WEEKS = 11;

  private final Facts now;
  private final LocalDate last;
  private final List<Planned> tasks;

  private WorkPicture(Facts now, LocalDate last) {
    this.now = now;
    this.last = last;
    this.tasks =
        Plan.on(now).ahead().stream()
            .filter(each -> !Plan.on(now).workableOn(each.id()).isAfter(last))
            .toList();
  }

  /** As many weeks as can be read on a page, or all that is ahead where that is less. */
  public static Svg of(Facts now) {
    LocalDate end = Plan.on(now).schedule().lastDay();
    LocalDate launch = now.ledger().build().launch().orElse(end);
    LocalDate last = (launch.isAfter(end) ? launch : end).plusDays(3);
    LocalDate farthest = now.day().plusWeeks(WEEKS);
    return upTo(last.isAfter(farthest) ? farthest : last, now);
  }

  /** The work up to a day. */
  public static Svg upTo(LocalDate last, Facts now) {
    return CourseDrawing.of(new WorkPicture(now, last).course());
  }

  private Course course() {
    List<Course.Pin> pins = pins();
    return new Course(
        now.ledger().build().name() + ": the work ahead, seen on " + Say.day(now.day()),
        description(pins),
        now.day(),
        last,
        now.ledger().build().launch(),
        bands(),
        links(),
        pins,
        kitwright.weather.Outlook.rows(now).stream().map(WorkPicture::sky).toList(),
        windows());
  }

  private String description(List<Course.Pin> pins) {
    StringBuilder text = new StringBuilder();
    text.append(Say.count(tasks.size(), "task is", "tasks are")).append(" still ahead up to ");
    text.append(Say.day(last)).append(". By work alone the plan ends on ");
    text.append(Say.day(Plan.on(now).schedule().lastDay())).append(". ");
    List<String> deciding =
        tasks.stream().filter(Planned::critical).map(each -> each.activity().what()).toList();
    if (!deciding.isEmpty()) {
      text.append("These decide the end: ").append(String.join("; ", deciding)).append(". ");
    }
    pins.forEach(pin -> text.append(pin.number()).append(": ").append(pin.says()).append(". "));
    return text.toString().strip();
  }

  private List<Course.Band> bands() {
    Map<String, List<Course.Piece>> bands = new LinkedHashMap<>();
    Plan.on(now).tasks().forEach(task -> bands.put(phase(task), new ArrayList<>()));
    for (Planned planned : tasks) {
      Task task = Plan.on(now).task(planned.id()).orElseThrow();
      bands.computeIfAbsent(phase(task), any -> new ArrayList<>()).add(piece(planned, task));
    }
    return bands.entrySet().stream()
        .filter(band -> !band.getValue().isEmpty())
        .map(band -> new Course.Band(band.getKey(), band.getValue()))
        .toList();
  }

  private static String phase(Task task) {
    return task.phase().orElse(ELSEWHERE);
  }

  private Course.Piece piece(Planned planned, Task task) {
    LocalDate from = Plan.on(now).workableOn(planned.id());
    LocalDate finish = planned.lastDay();
    LocalDate end = finish.isBefore(from) ? from : finish;
    LocalDate ready = planned.ready().toLocalDate();
    LocalDate late = planned.lastDayAtLatest();
    return new Course.Piece(
        planned.id(),
        task.what(),
        from,
        end,
        ready.isBefore(end) ? end : ready,
        planned.total().wholeDays(),
        late.isBefore(end) ? end : late,
        kind(task),
        planned.critical());
  }

  private static Course.Kind kind(Task task) {
    return task.place().filter(where -> where == Task.Where.OUTDOORS).isPresent()
        ? Course.Kind.OUTDOORS
        : Course.Kind.INDOORS;
  }

  private List<Course.Link> links() {
    return tasks.stream()
        .flatMap(
            each ->
                Plan.on(now).network().waitsFor(each.id()).stream()
                    .map(before -> new Course.Link(before, each.id())))
        .toList();
  }

  private List<Course.Pin> pins() {
    List<Course.Pin> pins = new ArrayList<>();
    for (OpenMatter matter : OpenMatters.on(now).all()) {
      Optional<OpenMatter.Stop> stop = matter.stop().filter(at -> !at.from().isAfter(last));
      stop.ifPresent(
          at ->
              pins.add(
                  new Course.Pin(
                      pins.size() + 1,
                      at.task(),
                      Word.capital(matter.sort().word())
                          + ": "
                          + matter.what()
                          + "; stops “"
                          + at.what()
                          + "” from "
                          + Say.dayAndMonth(at.from())
                          + ", the whole plan from "
                          + Say.dayAndMonth(at.neededBy()))));
    }
    return pins;
  }

  private static Course.Sky sky(ForecastDay row) {
    boolean wet = row.rain().amount().signum() > 0;
    return new Course.Sky(
        row.day(),
        wet,
        row.day()
            + ": "
            + (wet ? row.rain() + " rain, " : "dry, ")
            + row.low()
            + " to "
            + row.high()
            + " °C");
  }

  private List<Course.Window> windows() {
    return WeatherBound.by(last, now).stream()
        .filter(bound -> bound.window().fits())
        .map(
            bound ->
                new Course.Window(
                    bound.window().first(),
                    bound.window().last(),
                    "Suitable weather for “" + bound.task().what() + "”"))
        .toList();
  }
}

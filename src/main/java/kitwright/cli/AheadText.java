package kitwright.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import kitwright.ledger.Facts;
import kitwright.ledger.Task;
import kitwright.network.Plan;
import kitwright.network.Planned;
import kitwright.network.WeatherBound;
import kitwright.openmatter.Readiness;
import kitwright.shortage.LookAhead;
import kitwright.shortage.Thing;
import kitwright.shortage.Wanted;
import kitwright.takeoff.LearnedWaste;
import kitwright.weather.Obstacle;
import kitwright.weather.Window;

/** The look-ahead as text. */
final class AheadText {
  private static final int DATE = 12;

  private final Outlook outlook;
  private final Facts now;
  private final LocalDate today;
  private final Pages page;

  AheadText(Outlook outlook, int width) {
    this.outlook = outlook;
    this.now = outlook.now();
    this.today = now.day();
    this.page = new Pages(width);
  }

  String text() {
    page.line(
        now.ledger().build().name()
            + ", "
            + Pages.inText(today, today.minusYears(1))
            + ", looking ahead to "
            + Pages.inText(outlook.last(), today));
    new AheadEnds(outlook, page).write();
    outlook
        .suppose()
        .ifPresent(each -> page.line("All below is as the records say, without that supposition."));
    work();
    shortages();
    counts();
    orders();
    weather();
    ready();
    takeOffs();
    return page.text();
  }

  private void work() {
    List<Planned> tasks = outlook.tasks();
    if (tasks.isEmpty()) {
      return;
    }
    page.heading("Work that can go on, with its float in working days");
    for (Planned planned : tasks) {
      Task task = Plan.on(now).task(planned.id()).orElseThrow();
      Readiness readiness = Readiness.of(task, now);
      page.hanging(
          Pages.day(readiness.from(), today),
          DATE,
          task.what()
              + ", to "
              + Pages.inText(readiness.to(), today)
              + ", float "
              + AheadEnds.whole(planned.total())
              + (Plan.on(now).isBegun(planned.id()) ? ", begun" : ""));
      List<String> lacks =
          readiness.lacks().stream()
              .filter(lack -> lack.kind() != Readiness.Kind.WORK)
              .map(Readiness.Lack::words)
              .toList();
      if (!lacks.isEmpty()) {
        page.hanging(" ".repeat(DATE), DATE + 2, "lacks " + String.join("; ", lacks));
      }
    }
  }

  private void shortages() {
    List<Wanted> all =
        LookAhead.on(now).shortages().stream().filter(w -> outlook.shows(w.task())).toList();
    if (all.isEmpty()) {
      return;
    }
    page.heading("Material that is not there on the day");
    for (Wanted wanted : all) {
      String ready =
          wanted
              .readyOn()
              .map(
                  on ->
                      wanted.missing().isNone()
                          ? "comes by " + Pages.inText(on, today)
                          : "if ordered today, comes by " + Pages.inText(on, today))
              .orElse("nobody sends it");
      page.hanging(
          Pages.day(wanted.on(), today),
          DATE,
          wanted.thing().so(wanted.shortOnTheDay())
              + (wanted.qty().equals(wanted.shortOnTheDay())
                  ? ""
                  : ", of " + Thing.told(wanted.qty()) + " in all,")
              + " for “"
              + Plan.on(now).name(wanted.task())
              + "”: "
              + ready);
    }
  }

  private void counts() {
    List<Wanted> all = LookAhead.on(now).countBefore(outlook.last());
    if (all.isEmpty()) {
      return;
    }
    page.heading("Count before");
    for (Wanted wanted : all) {
      page.hanging(
          Pages.day(wanted.on(), today),
          DATE,
          wanted.thing().so(wanted.uncounted())
              + " for “"
              + Plan.on(now).name(wanted.task())
              + "”");
    }
  }

  private void orders() {
    List<LookAhead.ToOrder> all =
        LookAhead.on(now).orders().stream()
            .filter(each -> !each.order().orderBy().isAfter(outlook.last()))
            .toList();
    if (all.isEmpty()) {
      return;
    }
    page.heading("Last days to order, so that the work does not have to wait");
    for (LookAhead.ToOrder each : all) {
      boolean late = each.order().orderBy().isBefore(today);
      page.hanging(
          Pages.day(each.order().orderBy(), today),
          DATE,
          each.thing().so(each.thing().qty(each.order().amount()))
              + ", needed on "
              + Pages.inText(each.order().needed(), today)
              + (late
                  ? "; too late: ordered today it comes on "
                      + Pages.inText(each.order().arrives(), today)
                  : ""));
    }
  }

  private void weather() {
    List<WeatherBound> all = WeatherBound.by(outlook.last(), now);
    if (!all.isEmpty()) {
      page.heading("Outdoor work that asks something of the weather");
      all.forEach(this::weather);
    }
    WarmWork.all(outlook).forEach(warm -> page.hanging("  ", 2, warm));
  }

  private void weather(WeatherBound bound) {
    Window window = bound.window();
    String what =
        bound.isBeyondForecast()
            ? "the forecast does not reach so far"
            : window.fits()
                ? "first window that fits: "
                    + Pages.inText(window.first(), today)
                    + " to "
                    + Pages.inText(window.last(), today)
                    + later(bound)
                : "no window in the forecast; the best, from "
                    + Pages.inText(window.first(), today)
                    + ", lacks "
                    + Pages.days(window.lacking())
                    + ": "
                    + first(window);
    page.hanging(Pages.day(bound.from(), today), DATE, bound.task().what() + ": " + what);
  }

  private String later(WeatherBound bound) {
    return bound.later().isEmpty()
        ? ""
        : "; also from "
            + bound.later().stream()
                .map(day -> Pages.inText(day, today))
                .collect(Collectors.joining(", "));
  }

  private String first(Window window) {
    Obstacle obstacle = window.obstacles().get(0);
    return Pages.inText(obstacle.day(), today)
        + " "
        + obstacle.words()
        + (window.obstacles().size() > 1 ? ", and more" : "");
  }

  private void ready() {
    List<Readiness> all = Readiness.indoors(now);
    page.heading("Indoor work that is ready: material, signatures and tools are there");
    if (all.isEmpty()) {
      page.line("  none");
    }
    for (Readiness each : all) {
      Optional<Planned> planned = Plan.on(now).planned(each.task().id());
      page.hanging(
          "  ",
          2,
          each.task().what()
              + planned.map(p -> ", float " + AheadEnds.whole(p.total())).orElse("")
              + (each.people().isEmpty() ? "" : "; ask " + String.join(" and ", each.people())));
    }
  }

  private void takeOffs() {
    List<Wanted> all =
        LookAhead.on(now).all().stream()
            .filter(wanted -> !wanted.sums().isEmpty() && outlook.shows(wanted.task()))
            .toList();
    if (!all.isEmpty()) {
      page.heading("Taken off from sections");
    }
    String task = "";
    for (Wanted wanted : all) {
      if (!wanted.task().equals(task)) {
        page.line("  " + Plan.on(now).name(wanted.task()));
        task = wanted.task();
      }
      wanted.sums().forEach(sum -> page.hanging("    ", 6, wanted.thing().what() + ": " + sum));
    }
    List<LearnedWaste> learned = LearnedWaste.of(now.ledger(), today);
    if (!learned.isEmpty()) {
      page.heading("Your own waste so far, to be written as “waste” where you take off");
    }
    for (LearnedWaste each : learned) {
      page.line(
          String.format(
              Locale.ROOT,
              "  %s %.1f %%: %s used, %s by the sum, in %s",
              each.role().word(),
              each.share().doubleValue() * 100,
              each.used(),
              each.net(),
              Pages.count(each.tasks(), "task", "tasks")));
    }
  }
}

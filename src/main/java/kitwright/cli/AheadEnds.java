package kitwright.cli;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import kitwright.ledger.Facts;
import kitwright.network.Plan;
import kitwright.network.Planned;
import kitwright.network.Range;
import kitwright.network.Schedule;
import kitwright.network.Slack;
import kitwright.network.WorkCalendar;
import kitwright.openmatter.Ends;
import kitwright.shortage.LookAhead;

/** When the plan ends: by work alone, with material, if something is late, and in what range. */
final class AheadEnds {
  private static final int MOST_SHIFTS = 15;
  private static final int MOST_CRITICAL = 12;

  private final Outlook outlook;
  private final Facts now;
  private final LocalDate today;
  private final Pages page;

  AheadEnds(Outlook outlook, Pages page) {
    this.outlook = outlook;
    this.now = outlook.now();
    this.today = now.day();
    this.page = page;
  }

  void write() {
    end();
    outlook.suppose().ifPresent(this::suppose);
    outlook.range().ifPresent(this::range);
  }

  private void end() {
    page.line("");
    Schedule work = Plan.on(now).schedule();
    if (Plan.on(outlook.now()).ahead().isEmpty()) {
      page.line("Every task is finished.");
      return;
    }
    page.hanging("", 0, "By work alone the plan ends on " + day(work.end()) + margin(work) + ".");
    page.hanging(
        "",
        0,
        "With material as promised, or ordered today where nobody sends it, on "
            + day(LookAhead.on(now).paced().end())
            + margin(LookAhead.on(now).paced())
            + ".");
    Ends ends = Ends.on(now);
    ends.weather()
        .ifPresent(
            weather ->
                page.hanging(
                    "",
                    0,
                    "With the weather as well, by the forecast"
                        + (weather.byClimate().isEmpty() ? "" : " and beyond it by your climate")
                        + ", on "
                        + day(weather.schedule().end())
                        + margin(weather.schedule())
                        + "."));
    ends.leftOut().forEach(left -> page.hanging("", 0, "Not in these dates: " + left + "."));
  }

  private String margin(Schedule schedule) {
    return now.ledger()
        .build()
        .launch()
        .map(
            launch -> {
              long spare = schedule.marginTo(launch).wholeDays();
              return spare < 0
                  ? ", " + Pages.count(-spare, "working day", "working days") + " after the launch"
                  : ", with " + Pages.count(spare, "working day", "working days") + " to spare";
            })
        .orElse("");
  }

  private String day(LocalDateTime moment) {
    return Pages.inText(WorkCalendar.lastDay(moment), today);
  }

  private void suppose(Suppose suppose) {
    page.heading("If it comes so: " + String.join(", ", suppose.said()));
    LocalDate without = suppose.without().lastDay();
    LocalDate with = suppose.with().lastDay();
    page.line(
        "  the plan ends on "
            + Pages.inText(with, today)
            + (with.equals(without)
                ? ", as without"
                : " instead of " + Pages.inText(without, today))
            + margin(suppose.with()));
    List<Suppose.Shift> shifts = suppose.shifts();
    if (!shifts.isEmpty()) {
      Listing list = Listing.of("  task", "starts", "without", ">float", ">without");
      shifts.stream().limit(MOST_SHIFTS).forEach(shift -> shift(shift, list));
      page.block(list.text());
      more(shifts.size() - MOST_SHIFTS);
    }
  }

  private void more(int left) {
    if (left > 0) {
      page.line("  and " + Pages.count(left, "more task", "more tasks"));
    }
  }

  private void shift(Suppose.Shift shift, Listing list) {
    list.row(
        "  " + cut(shift.with().activity().what()),
        Pages.day(shift.with().earliestStart().toLocalDate(), today),
        Pages.day(shift.without().earliestStart().toLocalDate(), today),
        whole(shift.with().total()),
        whole(shift.without().total()));
  }

  /** Whole working days, as {@code 7 d}. */
  static String whole(Slack slack) {
    return slack.wholeDays() + " d";
  }

  private static String cut(String text) {
    int most = 36;
    return text.codePointCount(0, text.length()) <= most
        ? text
        : text.substring(0, text.offsetByCodePoints(0, most - 1)).stripTrailing() + "…";
  }

  private void range(Range range) {
    page.heading(
        "In what range the end lies, with durations between the good and the bad day ("
            + range.runs()
            + " runs, seed "
            + range.seed()
            + ")");
    for (double share : new double[] {0.1, 0.5, 0.9}) {
      Range.Quantile by = range.by(share);
      String at =
          String.format(Locale.ROOT, "  %2.0f %% of runs end by %s", share * 100, day(by.at()));
      page.line(
          by.from().toLocalDate().equals(by.to().toLocalDate())
              ? at
              : at + " (95 % sure: " + day(by.from()) + " to " + day(by.to()) + ")");
    }
    now.ledger().build().launch().ifPresent(launch -> chance(range, launch));
    Listing list = Listing.of("  may decide the end", ">chance");
    LookAhead.on(now).paced().all().stream()
        .filter(planned -> range.criticality(planned.id()).share() >= 0.005)
        .sorted(
            Comparator.comparing((Planned planned) -> -range.criticality(planned.id()).share())
                .thenComparing(Planned::earliestStart))
        .limit(MOST_CRITICAL)
        .forEach(
            planned ->
                list.row(
                    "  " + planned.activity().what(), chance(range.criticality(planned.id()))));
    page.block(list.text());
  }

  private void chance(Range range, LocalDate launch) {
    double classical = LookAhead.on(now).paced().pert().chanceBy(launch);
    page.hanging(
        "  ",
        2,
        "ready by the launch on "
            + Pages.inText(launch, today)
            + ": "
            + chance(range.chanceBy(launch))
            + String.format(
                Locale.ROOT,
                "; the classical estimate, which overlooks chains that are nearly as long, says"
                    + " %.0f %%",
                classical * 100));
  }

  private static String chance(Range.Chance chance) {
    return String.format(Locale.ROOT, "%.1f %% ± %.1f", chance.share() * 100, chance.error() * 100);
  }
}

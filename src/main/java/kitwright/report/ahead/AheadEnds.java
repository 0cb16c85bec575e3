package kitwright.report.ahead;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Inline;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.document.Table;
import kitwright.document.Value;
import kitwright.ledger.Facts;
import kitwright.network.Plan;
import kitwright.network.Planned;
import kitwright.network.Range;
import kitwright.network.Schedule;
import kitwright.network.Weathered;
import kitwright.openmatter.Ends;
import kitwright.report.words.Cells;
import kitwright.report.words.Say;

/** When the plan ends: by work alone, with material, if something is late, and in what range. */
public final class AheadEnds {
  private static final int MOST_SHIFTS = 15;
  private static final int MOST_CRITICAL = 12;
  private static final int[] PERCENT = {10, 50, 90};

  private final Outlook outlook;
  private final Facts now;
  private final Optional<LocalDate> launch;

  AheadEnds(Outlook outlook) {
    this.outlook = outlook;
    this.now = outlook.now();
    this.launch = now.ledger().build().launch();
  }

  /** The slots, behind others. */
  public Slots in(Slots before) {
    Slots slots = before.value("launch", launch.map(Cells::spoken).orElseGet(AheadEnds::nothing));
    if (Plan.on(now).ahead().isEmpty()) {
      List<Inline> unread = Inline.texts(Ends.unread(now));
      return supposed(
          slots
              .sentence("by-work-alone", "")
              .sentence("with-material", "")
              .sentence("with-weather", "")
              .sentence("weather-by", "")
              .sentence("all-finished", unread.isEmpty() ? "Every task is finished." : "")
              .list("left-out", unread));
    }
    Ends ends = Ends.on(now);
    return supposed(
        slots
            .value("by-work-alone", end(ends.alone()))
            .value("with-material", end(ends.paced()))
            .value(
                "with-weather",
                ends.weather().map(each -> end(each.schedule())).orElseGet(AheadEnds::nothing))
            .sentence("weather-by", ends.weather().map(AheadEnds::by).orElse(""))
            .sentence("all-finished", "")
            .list("left-out", Inline.texts(ends.leftOut())));
  }

  private static String by(Weathered weather) {
    if (weather.byForecast().isEmpty()) {
      return "by your climate";
    }
    return weather.byClimate().isEmpty()
        ? "by the forecast"
        : "by the forecast and beyond it by your climate";
  }

  private Slots supposed(Slots slots) {
    Optional<Suppose> suppose = outlook.suppose();
    Slots more =
        slots
            .sentence("late", suppose.map(each -> String.join(", ", each.said())).orElse(""))
            .value(
                "supposed",
                suppose
                    .map(each -> end(Ends.weathered(each.with(), now)))
                    .orElseGet(AheadEnds::nothing))
            .table(
                "shifts",
                shifts(suppose.map(Suppose::shifts).orElse(List.of())),
                suppose.map(this::shiftsShown).orElse(List.of()));
    return outlook
        .range()
        .map(range -> more.block("range", meant(range), shown(range)))
        .orElseGet(() -> more.block("range", new Value.Nothing(), List.of()));
  }

  private static Cell nothing() {
    return new Cell(Inline.text(""), new Value.Nothing());
  }

  private Cell end(Schedule schedule) {
    LocalDate day = schedule.lastDay();
    Map<String, Value> parts = new LinkedHashMap<>();
    parts.put("ends", new Value.Day(day));
    Optional<Long> spare = launch.map(wanted -> schedule.marginTo(wanted).wholeDays());
    spare.ifPresent(
        days -> parts.put("working-days-to-spare", new Value.Figure(BigDecimal.valueOf(days))));
    String margin = spare.map(days -> margin(days, day)).orElse("");
    return Cell.of(Say.day(day) + margin, new Value.Parts(parts));
  }

  private String margin(long spare, LocalDate end) {
    String days =
        Say.count(Math.abs(spare), "working day", "working days")
            + launch.map(wanted -> byTheCalendar(spare, end, wanted)).orElse("");
    return spare < 0 ? ", " + days + " after the launch" : ", with " + days + " to spare";
  }

  /** Where days off lie between, so that it is more than twice as long as in usual weeks. */
  private String byTheCalendar(long spare, LocalDate end, LocalDate wanted) {
    long days = Math.abs(ChronoUnit.DAYS.between(end, wanted));
    long usual = (Math.abs(spare) + 1) * 7 / now.ledger().build().week().days().size();
    return days > 2 * usual ? " (" + Say.days(days) + " by the calendar)" : "";
  }

  private List<Block> shiftsShown(Suppose suppose) {
    List<Suppose.Shift> shifts = suppose.shifts();
    List<Block> blocks = new ArrayList<>();
    if (!shifts.isEmpty()) {
      blocks.add(shifts(shifts.subList(0, Math.min(MOST_SHIFTS, shifts.size()))));
    }
    if (shifts.size() > MOST_SHIFTS) {
      blocks.add(
          Block.paragraph(
              "And " + Say.count(shifts.size() - MOST_SHIFTS, "more task", "more tasks") + "."));
    }
    return blocks;
  }

  private static Table shifts(List<Suppose.Shift> shifts) {
    return new Table(
        "What moves",
        Column.columns(
            Column.data("task"),
            Column.head("Work"),
            Column.left("Starts"),
            Column.left("Without").named("starts-without"),
            Column.right("Float").named("float-days"),
            Column.right("Float without").named("float-days-without")),
        shifts.stream()
            .map(
                shift ->
                    Row.row(
                        Cell.id(shift.with().id()),
                        Cell.text(shift.with().activity().what()),
                        Cell.day(shift.with().earliestStart().toLocalDate()),
                        Cell.day(shift.without().earliestStart().toLocalDate()),
                        Cells.days(shift.with().total().wholeDays()),
                        Cells.days(shift.without().total().wholeDays())))
            .toList());
  }

  private List<Block> shown(Range range) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Block.paragraph(
            Say.grouped(range.runs())
                + " runs with durations between the good and the bad day, from seed "
                + range.seed()
                + "."));
    List<Row> rows = new ArrayList<>();
    for (int percent : PERCENT) {
      Range.Quantile by = range.by(percent / 100.0);
      LocalDate from = by.from().toLocalDate();
      LocalDate to = by.to().toLocalDate();
      rows.add(
          Row.row(
              percent + "\u00a0% of runs",
              by.at().toLocalDate().toString(),
              from.equals(to) ? Cells.NONE : from + " to " + to));
    }
    blocks.add(
        Block.table(
            Column.columns(Column.head("So many"), Column.left("End by"), Column.left("95 % sure")),
            rows));
    takenAsSure().ifPresent(words -> blocks.add(Block.paragraph(words)));
    launch.ifPresent(day -> blocks.add(Block.paragraph(byLaunch(range, day))));
    blocks.add(critical(range));
    return blocks;
  }

  /** Open tasks of which nobody has said how their time may vary, and what the dates lack. */
  private Optional<String> takenAsSure() {
    List<Planned> open = Plan.on(now).ahead();
    long single = open.stream().filter(task -> task.activity().takes().isFixed()).count();
    List<String> sure = new ArrayList<>();
    if (single > 0) {
      sure.add(
          single
              + " of "
              + Say.count(open.size(), "task", "tasks")
              + (single == 1 ? " states" : " state")
              + " no “takes: [low, likely, high]”, and what is stated counts as sure");
    }
    if (!Ends.on(now).leftOut().isEmpty()) {
      sure.add("what is not in the dates above is not in these either");
    }
    return sure.isEmpty()
        ? Optional.empty()
        : Optional.of("The true range is wider: " + String.join("; ", sure) + ".");
  }

  private String byLaunch(Range range, LocalDate day) {
    double classical = Ends.on(now).last().pert().chanceBy(day);
    return "Ready by the launch on "
        + Say.day(day)
        + ": "
        + chance(range.chanceBy(day))
        + "; the classical estimate, which overlooks chains that are nearly as long, says "
        + Say.beyondRuns(classical)
            .orElse(String.format(Locale.ROOT, "%.0f\u00a0%%", classical * 100))
        + ".";
  }

  private Block critical(Range range) {
    return Block.table(
        Column.columns(Column.head("May decide the end"), Column.right("Chance")),
        Ends.on(now).last().all().stream()
            .filter(planned -> range.criticality(planned.id()).share() >= 0.005)
            .sorted(
                Comparator.comparing((Planned planned) -> -range.criticality(planned.id()).share())
                    .thenComparing(Planned::earliestStart))
            .limit(MOST_CRITICAL)
            .map(
                planned ->
                    Row.row(planned.activity().what(), chance(range.criticality(planned.id()))))
            .toList());
  }

  private static String chance(Range.Chance chance) {
    return Say.beyondRuns(chance.share())
        .orElseGet(
            () ->
                String.format(
                    Locale.ROOT,
                    "%.1f\u00a0%% ±\u00a0%.1f",
                    chance.share() * 100,
                    chance.error() * 100));
  }

  private Value meant(Range range) {
    Map<String, Value> parts = new LinkedHashMap<>();
    parts.put("runs", new Value.Figure(BigDecimal.valueOf(range.runs())));
    parts.put("seed", new Value.Figure(BigDecimal.valueOf(range.seed())));
    for (int percent : PERCENT) {
      parts.put(
          "by-" + percent + "-percent",
          new Value.Day(range.by(percent / 100.0).at().toLocalDate()));
    }
    launch.ifPresent(
        day -> {
          parts.put("chance-by-launch", share(range.chanceBy(day).share()));
          parts.put("standard-error", share(range.chanceBy(day).error()));
          parts.put("classical-chance", share(Ends.on(now).last().pert().chanceBy(day)));
        });
    Map<String, Value> criticality = new LinkedHashMap<>();
    Plan.on(now)
        .ahead()
        .forEach(
            planned ->
                criticality.put(planned.id(), share(range.criticality(planned.id()).share())));
    parts.put("criticality", new Value.Parts(criticality));
    return new Value.Parts(parts);
  }

  private static Value share(double share) {
    return new Value.Figure(BigDecimal.valueOf(share).setScale(4, RoundingMode.HALF_UP));
  }
}

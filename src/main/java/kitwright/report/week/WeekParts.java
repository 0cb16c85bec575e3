package kitwright.report.week;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitwright.daybook.Ahead;
import kitwright.daybook.Consumed;
import kitwright.daybook.Progress;
import kitwright.daybook.Stage;
import kitwright.daybook.Week;
import kitwright.daybook.WeekLog;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Inline;
import kitwright.document.Row;
import kitwright.document.Table;
import kitwright.document.Value;
import kitwright.ledger.Facts;
import kitwright.ledger.Task;
import kitwright.loan.Clash;
import kitwright.report.words.Say;

/** Parts of a week for those who build. */
public record WeekParts(Week week, WeekLog log, Ahead ahead) {
  /** {@code hull 21.5, spars 6 and other work 2}. */
  Cell hoursByPhase() {
    return hours(log.hours().byPhase(), UnaryOperator.identity());
  }

  /** The same, and beside it the hours of each. */
  static Cell hours(Map<String, BigDecimal> hours, UnaryOperator<String> name) {
    Map<String, Value> each = new LinkedHashMap<>();
    hours.forEach((id, many) -> each.merge(name.apply(id), new Value.Figure(many), WeekParts::sum));
    Cell words = Cell.text(shares(hours, name));
    return each.isEmpty() ? words : words.with("hours", new Value.Parts(each));
  }

  private static Value sum(Value one, Value other) {
    return new Value.Figure(((Value.Figure) one).number().add(((Value.Figure) other).number()));
  }

  public static String shares(Map<String, BigDecimal> hours, UnaryOperator<String> name) {
    return Say.list(
        hours.entrySet().stream()
            .map(each -> name.apply(each.getKey()) + " " + Say.hours(each.getValue()))
            .toList());
  }

  /** Tasks on which something was done. */
  Table progress() {
    return new Table(
        "What was done",
        Column.columns(
            Column.data("task"),
            Column.head("Work"),
            Column.right("Before"),
            Column.right("Now"),
            Column.left("").named("status")),
        log.progress().stream().map(WeekParts::progress).toList());
  }

  private static Row progress(Progress each) {
    return Row.row(
        Cell.id(each.task().id()),
        Cell.text(each.task().what()),
        share(each.before()),
        share(each.after()),
        Cell.text(each.finished() ? "finished" : each.begun() ? "started" : ""));
  }

  public static Cell share(Stage stage) {
    return stage.isBegun()
        ? Cell.number(Say.percent(stage.done()), stage.done().stripTrailingZeros())
        : Cell.none();
  }

  /** {@code 1.5 kg of epoxy and 2 sheets of plywood}; empty where nothing was used. */
  public Cell used() {
    return used(log.used());
  }

  /** The same of what is named for others. */
  static Cell used(List<Consumed> used) {
    List<Value> qty = used.stream().map(each -> Value.of(each.qty())).toList();
    return Cell.text(Say.list(used.stream().map(each -> Say.so(each.qty(), each.what())).toList()))
        .with(new Value.Several(qty).beside());
  }

  /** {@code Mon 23 to Sun 29 March 2026}, beside it both days. */
  static Cell span(Week week) {
    return Cell.text(Say.span(week.first(), week.last()))
        .with("first", new Value.Day(week.first()))
        .with("last", new Value.Day(week.last()));
  }

  /** Words on a week, beside them its hours and on how many days they were worked. */
  static Cell worked(String words, WeekLog log) {
    return Cell.text(words)
        .with("hours", new Value.Figure(log.hours().total()))
        .with("days", log.days().size());
  }

  /** Names of finished tasks. */
  public String finished() {
    return names(log.finished().stream().map(Progress::task).toList());
  }

  private static String names(List<Task> tasks) {
    return Say.list(tasks.stream().map(task -> "“" + task.what() + "”").toList());
  }

  /** What is under way and what may start, in a sentence each. */
  List<Inline> nextWork() {
    return Stream.concat(
            works("In progress", ahead.underWay()).stream(),
            works("May start", ahead.ready()).stream())
        .toList();
  }

  /** Those among them that cannot go on together, since they need the same borrowed tool. */
  Stream<String> clashes(Facts now) {
    Set<String> listed =
        Stream.concat(ahead.underWay().stream(), ahead.ready().stream())
            .map(Task::id)
            .collect(Collectors.toSet());
    Facts evening = Ahead.evening(week, now);
    return Clash.on(evening).stream()
        .filter(clash -> clash.tasks().stream().filter(listed::contains).count() > 1)
        .map(clash -> clash.words(evening) + ".");
  }

  /** Tasks by name behind a title; nothing where there are none. */
  Optional<Inline> works(String title, List<Task> tasks) {
    return Optional.of(names(tasks))
        .filter(names -> !names.isEmpty())
        .map(names -> Inline.text(title + ": " + names + "."));
  }

  /** Whether a day lies before the end of the week that follows. */
  boolean isSoon(LocalDate day) {
    return !day.isAfter(week.next().last());
  }
}

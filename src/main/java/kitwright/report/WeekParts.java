package kitwright.report;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import kitwright.daybook.Ahead;
import kitwright.daybook.Consumed;
import kitwright.daybook.Progress;
import kitwright.daybook.Stage;
import kitwright.daybook.Week;
import kitwright.daybook.WeekLog;
import kitwright.document.Block;
import kitwright.document.Column;
import kitwright.document.Inline;
import kitwright.document.Row;
import kitwright.ledger.Task;

/**
 * Parts of a week that both audiences read, without names of parties and without money.
 *
 * @param say what of a text of the ledger is shown; empty where it is left out
 */
record WeekParts(Week week, WeekLog log, Ahead ahead, Function<String, Optional<String>> say) {
  /** What stands in a table where a text is left out. */
  private static final String LEFT_OUT = "(left out)";

  /** {@code hull 21.5, spars 6 and other work 2}. */
  String hoursByPhase() {
    return shares(log.hours().byPhase(), say);
  }

  static String shares(Map<String, BigDecimal> hours, Function<String, Optional<String>> say) {
    return Say.list(
        hours.entrySet().stream()
            .map(each -> say.apply(each.getKey()).orElse("more") + " " + Say.hours(each.getValue()))
            .toList());
  }

  /** Tasks on which something was done. */
  List<Block> progress() {
    List<Row> rows = log.progress().stream().map(this::progress).toList();
    return rows.isEmpty()
        ? List.of()
        : List.of(
            Block.table(
                Column.columns(
                    Column.left("Work"),
                    Column.right("Before"),
                    Column.right("Now"),
                    Column.left("")),
                rows));
  }

  private Row progress(Progress each) {
    return Row.row(
        say.apply(each.task().what()).orElse(LEFT_OUT),
        share(each.before()),
        share(each.after()),
        each.finished() ? "finished" : each.begun() ? "begun" : "");
  }

  private static String share(Stage stage) {
    return stage.isBegun() ? Say.percent(stage.done()) : Cells.NONE;
  }

  /** {@code 1.5 kg of epoxy and 2 sheets of plywood}; empty where nothing was used. */
  String used() {
    return Say.list(log.used().stream().flatMap(this::used).toList());
  }

  private Stream<String> used(Consumed each) {
    return say.apply(each.what()).map(what -> Say.so(each.qty(), what)).stream();
  }

  /** Names of finished tasks. */
  String finished() {
    return names(log.finished().stream().map(Progress::task).toList());
  }

  private String names(List<Task> tasks) {
    return Say.list(tasks.stream().flatMap(task -> say.apply(task.what()).stream()).toList());
  }

  /** What is under way and what may start, in a sentence each. */
  List<Inline> nextWork() {
    return Stream.concat(
            works("Under way", ahead.underWay()).stream(),
            works("May start", ahead.ready()).stream())
        .toList();
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

package kitwright.report.week;

import java.util.ArrayList;
import java.util.List;
import kitwright.daybook.Consumed;
import kitwright.daybook.Progress;
import kitwright.daybook.WeekLog;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Row;
import kitwright.document.Table;
import kitwright.report.words.Say;

/** What was worked in a week, in figures: hours by phase, progress, what of the kit was used. */
final class PublicWork {
  private final WeekLog log;
  private final PublicNames names;

  PublicWork(WeekLog log, PublicNames names) {
    this.log = log;
    this.names = names;
  }

  Cell hours() {
    return WeekParts.hours(log.hours().byPhase(), names::phase);
  }

  Table progress() {
    List<Row> rows = new ArrayList<>();
    for (Progress each : log.progress()) {
      names
          .title(each.task())
          .ifPresent(
              title ->
                  rows.add(
                      Row.row(
                          Cell.text(title),
                          WeekParts.share(each.before()),
                          WeekParts.share(each.after()),
                          Cell.text(
                              each.finished() ? "finished" : each.begun() ? "started" : ""))));
    }
    return new Table(
        "What was done",
        Column.columns(
            Column.head("Work"),
            Column.right("Before"),
            Column.right("Now"),
            Column.left("").named("status")),
        rows);
  }

  /** How much of the work that moved has no title for the public. */
  String untold() {
    long untold = log.progress().stream().filter(each -> each.task().publicly().isEmpty()).count();
    return untold == 0
        ? ""
        : Say.count(
            untold,
            untold == log.progress().size() ? "piece of work" : "more piece of work",
            untold == log.progress().size() ? "pieces of work" : "more pieces of work");
  }

  /** What of the kit was used: by the kit’s names, not by the builder’s own for what lay about. */
  Cell used() {
    return WeekParts.used(Consumed.in(log.days(), used -> used.item().map(names::kit)));
  }
}

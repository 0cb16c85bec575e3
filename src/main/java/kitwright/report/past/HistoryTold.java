package kitwright.report.past;

import static kitwright.document.Column.columns;
import static kitwright.document.Column.head;
import static kitwright.document.Column.left;
import static kitwright.document.Column.right;
import static kitwright.document.Row.row;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.document.Cell;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.document.Table;
import kitwright.drawing.OverDays;
import kitwright.drawing.Svg;
import kitwright.history.Held;
import kitwright.history.Series;
import kitwright.ledger.Ledger;
import kitwright.report.words.Say;
import kitwright.report.words.Sheet;

/** How a figure went from commit to commit, as a table and as a picture. */
public final class HistoryTold {
  private HistoryTold() {}

  /** The table: a line a change, since a figure that stayed is no news. */
  public static Sheet sheet(Ledger ledger, Series series) {
    List<Row> rows = new ArrayList<>();
    Optional<Held> before = Optional.empty();
    for (Series.Reading reading : series.readings()) {
      if (!before.equals(Optional.of(reading.held()))) {
        rows.add(
            row(
                Cell.day(reading.commit().day()),
                reading.held().match(new HeldCell()),
                Cell.id(reading.commit().shortId()),
                Cell.text(reading.commit().by()),
                Cell.text(reading.commit().subject())));
      }
      before = Optional.of(reading.held());
    }
    return new Sheet(
        "history.md",
        "history",
        Slots.none()
            .sentence("build", ledger.build().name())
            .sentence("figure", series.figure().says())
            .value("looked-at", days(series.readings().size()))
            .sentence("thinned", series.thinned() ? "evenly chosen from more" : "")
            .value("left-out", series.leftOut() == 0 ? Cell.text("") : days(series.leftOut()))
            .table(
                "readings",
                new Table(
                    "",
                    columns(
                        head("Day"), right("Figure"), left("Commit"), left("By"), left("Message")),
                    rows)));
  }

  private static Cell days(long many) {
    return Cell.text(Say.days(many)).with("number", many);
  }

  /** The picture; there is at least one reading. */
  public static Svg drawing(Ledger ledger, Series series) {
    List<OverDays.Reading> points = new ArrayList<>();
    series.readings().forEach(reading -> point(reading).ifPresent(points::add));
    return OverDays.of(ledger.build().name() + ": " + series.figure().says(), points);
  }

  /** Where it lies on the scale of its sort. */
  private static Optional<OverDays.Reading> point(Series.Reading reading) {
    if (reading.held() instanceof Held.Sum sum) {
      double much = sum.money().amount().doubleValue();
      return Optional.of(at(reading, much, Say.money(sum.money())));
    }
    if (reading.held() instanceof Held.On on) {
      return Optional.of(at(reading, (double) on.day().toEpochDay(), on.day().toString()));
    }
    return reading.held() instanceof Held.Count count
        ? Optional.of(at(reading, (double) count.many(), String.valueOf(count.many())))
        : Optional.empty();
  }

  private static OverDays.Reading at(Series.Reading reading, double much, String says) {
    return new OverDays.Reading(reading.commit().day(), much, says);
  }
}

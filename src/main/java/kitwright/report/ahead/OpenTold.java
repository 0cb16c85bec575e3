package kitwright.report.ahead;

import static kitwright.document.Column.data;
import static kitwright.document.Column.head;
import static kitwright.document.Column.left;
import static kitwright.document.Column.right;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.document.Table;
import kitwright.document.Value;
import kitwright.ledger.Ledger;
import kitwright.openmatter.OpenMatter;
import kitwright.report.words.Cells;
import kitwright.report.words.Say;
import kitwright.report.words.Sheet;
import kitwright.value.Days;
import kitwright.value.Word;

/** The open matters, most pressing first: what stops work, then what no work waits for. */
public final class OpenTold {
  private OpenTold() {}

  /** All of it, for {@code open}. */
  public static Sheet sheet(Ledger ledger, LocalDate today, List<OpenMatter> matters) {
    long pressing = matters.stream().filter(m -> m.isToActBy(today.plusWeeks(1))).count();
    Slots slots =
        Slots.none()
            .sentence("build", ledger.build().name())
            .value("today", Cells.spoken(today))
            .sentence(
                "summary",
                Say.count(matters.size(), "open matter", "open matters")
                    + (pressing == 0 ? "" : ", " + pressing + " to settle within a week"))
            .table("open", table(matters), shown(matters));
    return new Sheet("open.md", "open", slots);
  }

  private static List<Block> shown(List<OpenMatter> matters) {
    List<Block> shown = new ArrayList<>();
    List<OpenMatter> stopping = stopping(matters);
    if (!stopping.isEmpty()) {
      shown.add(Block.heading(2, "What one must act on, most pressing first"));
      shown.add(table(stopping));
    }
    List<OpenMatter> idle = idle(matters);
    if (!idle.isEmpty()) {
      shown.add(Block.heading(2, "No work waits for these, as far as the tasks say"));
      shown.add(idleTable(idle));
    }
    return shown;
  }

  static List<OpenMatter> stopping(List<OpenMatter> matters) {
    return matters.stream().filter(matter -> matter.isDated()).toList();
  }

  static List<OpenMatter> idle(List<OpenMatter> matters) {
    return matters.stream().filter(matter -> !matter.isDated()).toList();
  }

  /** Every matter with the work that it stops. */
  public static Table table(List<OpenMatter> matters) {
    List<Column> columns =
        Column.columns(
            data("sort"),
            data("record"),
            left("Act by").named("last-day"),
            head("What"),
            left("Stops"),
            right("Float").named("float-days"),
            data("needed-by"),
            data("stops-task"),
            data("stops-from"),
            data("act-by"),
            data("expected"),
            left("Waits for"),
            left("Next"));
    return new Table("What stops work", columns, matters.stream().map(OpenTold::row).toList());
  }

  private static Row row(OpenMatter matter) {
    Optional<OpenMatter.Stop> stop = matter.stop();
    return Row.row(
        Cell.text(sort(matter)),
        Cell.text(matter.record()),
        matter.isDated() ? Cell.day(matter.lastDay()) : Cell.none(),
        named(matter),
        stop.map(OpenTold::stops).orElseGet(Cell::none),
        stop.map(at -> Cells.days(at.floatDays())).orElseGet(Cell::none),
        Cell.day(matter.neededBy()),
        Cell.text(stop.map(OpenMatter.Stop::task)),
        Cell.day(stop.map(OpenMatter.Stop::from)),
        Cell.day(matter.actBy()),
        Cell.day(matter.expected()),
        waitsFor(matter),
        Cell.text(matter.next()));
  }

  private static String sort(OpenMatter matter) {
    return Word.key(matter.sort());
  }

  private static Cell named(OpenMatter matter) {
    String id = matter.record().substring(matter.record().lastIndexOf(' ') + 1);
    return new Cell(
        Cells.named(Word.capital(matter.sort().word()) + ": " + matter.what(), id),
        Value.of(matter.what()));
  }

  private static Cell stops(OpenMatter.Stop stop) {
    String from = " from " + Days.named(stop.from());
    String plan =
        stop.from().equals(stop.neededBy())
            ? ""
            : ", the whole plan from " + Days.named(stop.neededBy());
    return Cell.of(stop.what() + from + plan, Value.of(stop.what()));
  }

  private static Cell waitsFor(OpenMatter matter) {
    String expected = matter.expected().map(day -> ", expected " + Days.named(day)).orElse("");
    return Cell.of(
        matter.waitsFor() + expected + (matter.comesTooLate() ? ", too late for the work" : ""),
        Value.of(matter.waitsFor()));
  }

  /** Matters that stop no work: without days and float. */
  static Table idleTable(List<OpenMatter> matters) {
    return new Table(
        "What no work waits for",
        Column.columns(data("record"), head("What"), left("Waits for"), left("Next")),
        matters.stream()
            .map(
                matter ->
                    Row.row(
                        Cell.text(matter.record()),
                        named(matter),
                        waitsFor(matter),
                        Cell.text(matter.next())))
            .toList());
  }
}

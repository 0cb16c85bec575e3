package kitwright.report.stores;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Inline;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.document.Table;
import kitwright.document.Value;
import kitwright.kit.Position;
import kitwright.ledger.Facts;
import kitwright.report.words.Cells;
import kitwright.report.words.Sheet;
import kitwright.shortage.Balance;
import kitwright.shortage.LookAhead;
import kitwright.value.Quantity;

/** How the kit's items stand, and an item's story day by day. */
public final class KitTold {
  private KitTold() {}

  /** The items, and of each the story where it was asked for by name. */
  public static Sheet sheet(Facts now, List<Balance> items, boolean stories) {
    List<Balance> told = stories ? items : List.of();
    Slots slots =
        Slots.none()
            .sentence("build", now.ledger().build().name())
            .value("today", Cells.spoken(now.day()))
            .table("items", items(items, now))
            .sentence("unsure", unsure(items, now))
            .table("stories", happened(told, now), stories(told, now));
    return new Sheet("kit.md", "kit", slots);
  }

  private static String unsure(List<Balance> items, Facts now) {
    return items.stream().allMatch(each -> each.ofNoDay(now.day()).isNone())
        ? ""
        : "No day: it was sent or ordered, and the day that was said has passed, or none was said;"
            + " nothing counts on it.";
  }

  private static Table items(List<Balance> items, Facts now) {
    LocalDate today = now.day();
    boolean noDay = items.stream().anyMatch(each -> !each.ofNoDay(today).isNone());
    boolean undersize = items.stream().anyMatch(each -> !each.position().undersize().isNone());
    return new Table(
        "The kit",
        Column.columns(
            Column.head("Item"),
            Column.right("Promised"),
            Column.right("Good"),
            Column.right("Damaged"),
            Column.right("Wrong"),
            undersize ? Column.right("Undersize") : Column.data("undersize"),
            Column.right("Open"),
            Column.right("Coming"),
            noDay ? Column.right("No day") : Column.data("no-day"),
            Column.right("Here")),
        items.stream().map(each -> row(each, now)).toList());
  }

  private static Row row(Balance each, Facts now) {
    Position position = each.position();
    return Row.row(
        Cell.id(position.item().id()),
        Cells.qty(position.promised()),
        position.isCounted() ? amount(position.good()) : Cell.of("uncounted", new Value.Nothing()),
        amount(position.damaged()),
        amount(position.wrong()),
        amount(position.undersize()),
        amount(each.open()),
        amount(each.coming(now.day())),
        amount(each.ofNoDay(now.day())),
        here(position, LookAhead.on(now)));
  }

  /** What nobody has counted may be here or not. */
  private static Cell here(Position position, LookAhead ahead) {
    Quantity here = ahead.atHand(position.item());
    boolean isKnown = position.doubts().isEmpty() && (position.isCounted() || here.isNone());
    return isKnown ? amount(here) : Cell.of("not known", new Value.Nothing());
  }

  private static Cell amount(Quantity quantity) {
    return quantity.isNone()
        ? new Cell(Cell.none().shown(), Value.of(quantity))
        : Cells.qty(quantity);
  }

  private static List<Block> stories(List<Balance> items, Facts now) {
    List<Block> blocks = new ArrayList<>();
    for (Balance each : items) {
      Position position = each.position();
      blocks.add(Block.heading(2, Inline.named(position.item().what(), position.item().id())));
      Table table = happened(List.of(each), now);
      blocks.add(
          table.rows().isEmpty()
              ? Block.paragraph("Nothing has come and nothing was used.")
              : table);
    }
    return blocks;
  }

  /** What came, was used, is wanted and comes; by day. */
  private static Table happened(List<Balance> items, Facts now) {
    List<Row> rows = new ArrayList<>();
    for (Balance each : items) {
      String id = each.position().item().id();
      KitStory.of(each, now)
          .forEach(
              told ->
                  rows.add(
                      Row.row(
                          Cell.text(id),
                          told.on().map(Cell::day).orElse(Cell.none()),
                          Cells.qty(told.qty()),
                          Cell.text(told.what()))));
    }
    return new Table(
        "What happened",
        Column.columns(
            Column.data("item"), Column.left("On"), Column.right("Quantity"), Column.head("What")),
        rows);
  }
}

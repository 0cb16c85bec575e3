package kitwright.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Inline;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.document.Table;
import kitwright.document.Value;
import kitwright.kit.Count;
import kitwright.kit.Position;
import kitwright.ledger.Facts;
import kitwright.shortage.Balance;
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
            .table("items", items(items))
            .table("stories", happened(told), stories(told));
    return new Sheet("kit.md", "kit", slots);
  }

  private static Table items(List<Balance> items) {
    return new Table(
        "The kit",
        Column.columns(
            Column.head("Item"),
            Column.right("Promised"),
            Column.right("Good"),
            Column.right("Damaged"),
            Column.right("Wrong"),
            Column.right("Covered"),
            Column.right("Open"),
            Column.right("Used")),
        items.stream().map(KitTold::row).toList());
  }

  private static Row row(Balance each) {
    Position position = each.position();
    return Row.row(
        Cell.id(position.item().id()),
        Cells.qty(position.promised()),
        position.isCounted() ? amount(position.good()) : Cell.of("uncounted", new Value.Nothing()),
        amount(position.damaged()),
        amount(position.wrong()),
        amount(each.covered()),
        amount(each.open()),
        amount(position.used()));
  }

  private static Cell amount(Quantity quantity) {
    return quantity.isNone()
        ? new Cell(Cell.none().shown(), new Value.Text(quantity.toString()))
        : Cells.qty(quantity);
  }

  private static List<Block> stories(List<Balance> items) {
    List<Block> blocks = new ArrayList<>();
    for (Balance each : items) {
      Position position = each.position();
      blocks.add(Block.heading(2, Inline.named(position.item().what(), position.item().id())));
      Table table = happened(List.of(each));
      blocks.add(
          table.rows().isEmpty()
              ? Block.paragraph("Nothing has come and nothing was used.")
              : table);
    }
    return blocks;
  }

  /** What came, what was used, what is on its way; by day. */
  private static Table happened(List<Balance> items) {
    List<Row> rows = new ArrayList<>();
    for (Balance each : items) {
      Position position = each.position();
      String id = position.item().id();
      List<Row> own = new ArrayList<>();
      for (Count count : position.counts()) {
        own.add(
            happened(id, Cell.day(count.on()), count.good(), "good in " + count.delivery().id()));
        if (!count.damaged().isNone()) {
          own.add(happened(id, Cell.day(count.on()), count.damaged(), "damaged"));
        }
        if (!count.wrong().isNone()) {
          own.add(happened(id, Cell.day(count.on()), count.wrong(), "wrong"));
        }
      }
      position.uses().forEach(use -> own.add(happened(id, Cell.day(use.on()), use.qty(), "used")));
      own.sort(Comparator.comparing(KitTold::day));
      rows.addAll(own);
      position
          .awaited()
          .forEach(
              awaited ->
                  rows.add(
                      happened(
                          id,
                          Cell.none(),
                          awaited.qty(),
                          "on its way in " + awaited.delivery().id())));
    }
    return new Table(
        "What happened",
        Column.columns(
            Column.data("item"), Column.left("On"), Column.right("Quantity"), Column.head("What")),
        rows);
  }

  private static String day(Row row) {
    return row.cells().get(1).value().toString();
  }

  private static Row happened(String item, Cell on, Quantity qty, String what) {
    return Row.row(Cell.text(item), on, Cells.qty(qty), Cell.text(what));
  }
}

package kitwright.report.claim;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import kitwright.claim.Line;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Row;
import kitwright.document.Value;
import kitwright.kit.Position;
import kitwright.ledger.Claim;
import kitwright.ledger.KitItem;
import kitwright.report.words.Amounts;
import kitwright.report.words.Cells;
import kitwright.report.words.Say;
import kitwright.shortage.Balance;
import kitwright.value.Money;
import kitwright.value.Quantity;
import kitwright.value.Word;

/** The table of what is missing in a claim: a line an item. */
public final class ClaimItems {
  private ClaimItems() {}

  public static Block table(List<Line> lines) {
    Amounts values = Amounts.of(lines.stream().flatMap(l -> worth(l).stream()).toList());
    List<Column> columns =
        Column.columns(
            Column.left("Item"),
            Column.right("Promised"),
            Column.left("Received"),
            Column.data("of-these-no-good"),
            Column.left("Short"),
            Column.data("why"),
            Column.left("We ask"),
            values.column("Value"));
    List<Row> rows = new ArrayList<>(lines.stream().map(line -> row(line, values)).toList());
    if (!values.sums().isEmpty()) {
      Cell[] total = new Cell[columns.size()];
      Arrays.fill(total, Cell.text(""));
      total[0] = Cell.text("All");
      total[total.length - 1] = values.total();
      rows.add(Cells.total(total));
    }
    return Block.table(columns, rows);
  }

  /** What is asked: the replacement’s cost where that is, else what the goods are worth. */
  private static List<Money> worth(Line line) {
    return line.remedy() == Claim.Remedy.COST ? line.asked() : line.openValue().stream().toList();
  }

  private static Quantity delivered(Line line) {
    return line.sent();
  }

  private static Row row(Line line, Amounts values) {
    Optional<Position> then = position(line).map(all -> all.on(line.shortage().shortage().found()));
    String why = Word.spoken(line.shortage().shortage().cause());
    List<String> ends = ClaimSums.ends(line);
    String qty = Say.qty(line.qty());
    return Row.row(
        Cell.text(item(line)),
        position(line).map(p -> Cells.told(p.promised())).orElseGet(Cell::none),
        then.map(some -> received(some, line)).orElseGet(Cell::none),
        then.map(Position::noGood)
            .filter(bad -> !bad.isNone())
            .map(Cells::told)
            .orElseGet(Cell::none),
        Cell.of(qty + ", " + why + (ends.isEmpty() ? "" : "; " + Say.list(ends)), Value.of(qty))
            .with(Value.parts(line.qty())),
        Cell.text(why),
        Cell.text(ClaimSums.asks(line.remedy())),
        values.cell(worth(line)));
  }

  private static Optional<Position> position(Line line) {
    return line.balance().map(Balance::position);
  }

  private static String item(Line line) {
    Optional<KitItem> item = line.shortage().item();
    return ShortagesReport.what(line.shortage())
        + item.flatMap(KitItem::drawing).map(number -> ", drawing " + number).orElse("")
        + item.flatMap(KitItem::crate).map(crate -> ", crate " + crate).orElse("");
  }

  /** Counted until the shortage was found, and what came later. */
  private static Cell received(Position then, Line line) {
    String counted = Say.qty(then.counted());
    return Cell.of(
            counted
                + (then.noGood().isNone() ? "" : ", " + Say.qty(then.noGood()) + " unusable")
                + (delivered(line).isNone() ? "" : ", " + Say.qty(delivered(line)) + " sent since"),
            Value.of(counted))
        .with(Value.parts(then.counted()));
  }
}

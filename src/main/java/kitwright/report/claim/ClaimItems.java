package kitwright.report.claim;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import kitwright.claim.Line;
import kitwright.document.Block;
import kitwright.document.Column;
import kitwright.document.Inline;
import kitwright.document.Row;
import kitwright.kit.Position;
import kitwright.ledger.Claim;
import kitwright.ledger.KitItem;
import kitwright.report.words.Amounts;
import kitwright.report.words.Cells;
import kitwright.report.words.Say;
import kitwright.shortage.Balance;
import kitwright.value.Money;
import kitwright.value.Quantity;

/** The table of what is missing in a claim: a line an item. */
public final class ClaimItems {
  private ClaimItems() {}

  public static Block table(List<Line> lines) {
    boolean some = lines.stream().anyMatch(line -> !delivered(line).isNone());
    Amounts values = Amounts.of(lines.stream().flatMap(l -> worth(l).stream()).toList());
    List<Column> columns =
        new ArrayList<>(
            List.of(
                Column.left("Item"),
                Column.right("Promised"),
                Column.right("Received"),
                Column.right("Unusable").named("of-these-no-good"),
                Column.right("Short"),
                Column.left("Why")));
    if (some) {
      columns.add(Column.right("Sent since"));
    }
    columns.add(Column.left("We ask"));
    columns.add(values.column("Value"));
    List<Row> rows = new ArrayList<>(lines.stream().map(line -> row(line, values, some)).toList());
    if (!values.sums().isEmpty()) {
      String[] total = new String[columns.size()];
      Arrays.fill(total, "");
      total[0] = "All";
      total[total.length - 1] = values.total();
      rows.add(Cells.total(total));
    }
    return Block.table(columns, rows);
  }

  /** What is asked: the replacement’s cost where that is, else what the goods are worth. */
  private static Optional<Money> worth(Line line) {
    return line.remedy() == Claim.Remedy.COST ? line.asked().stream().findFirst() : line.value();
  }

  private static Quantity delivered(Line line) {
    return line.sent();
  }

  private static Row row(Line line, Amounts values, boolean some) {
    List<Inline> cells = new ArrayList<>();
    cells.add(Inline.text(item(line)));
    cells.add(Inline.text(position(line).map(p -> Say.qty(p.promised())).orElse(Cells.NONE)));
    cells.add(Inline.text(position(line).map(p -> received(p, line)).orElse(Cells.NONE)));
    cells.add(Inline.text(position(line).map(p -> noGood(p, line)).orElse(Cells.NONE)));
    cells.add(Inline.text(Say.qty(line.qty())));
    cells.add(Inline.text(Say.word(line.shortage().shortage().cause())));
    if (some) {
      cells.add(Inline.text(delivered(line).isNone() ? Cells.NONE : Say.qty(delivered(line))));
    }
    cells.add(Inline.text(ClaimSums.asks(line.remedy())));
    cells.add(Inline.text(values.cell(worth(line))));
    return Row.row(cells.toArray(Inline[]::new));
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

  /** Counted until the shortage was found; what came later is in a column of its own. */
  private static String received(Position position, Line line) {
    return Say.qty(position.on(line.shortage().shortage().found()).counted());
  }

  private static String noGood(Position position, Line line) {
    Position then = position.on(line.shortage().shortage().found());
    Quantity none = then.noGood();
    return none.isNone() ? Cells.NONE : Say.qty(none);
  }
}

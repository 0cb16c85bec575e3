package kitwright.report;

import java.util.ArrayList;
import java.util.List;
import kitwright.choice.Choice;
import kitwright.document.Block;
import kitwright.document.Column;
import kitwright.document.Document;
import kitwright.document.Inline;
import kitwright.document.Row;
import kitwright.ledger.Shortage;

/** The ways out of a shortage as a page of Markdown, for a letter or a forge. */
public final class WaysOutPage {
  private WaysOutPage() {}

  /** The page. */
  public static Document of(Choice choice) {
    WaysTold told = WaysTold.of(choice);
    Shortage shortage = choice.standing().shortage();
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading(1, "Ways out: " + shortage.id()));
    blocks.add(
        Block.paragraph(
            Say.so(choice.standing().open(), ShortagesReport.what(choice.standing()))
                + " still missing. If it were here today, the build would end on "
                + Say.day(choice.launchIfHere())
                + "."));
    if (choice.ways().isEmpty()) {
      blocks.add(Block.paragraph("No way out is written down yet."));
      return Document.of(blocks.toArray(Block[]::new));
    }
    blocks.add(table(choice, told));
    bullets("Of each", told.notes(), blocks);
    bullets("What would turn the choice", told.turning(), blocks);
    blocks.add(Block.heading(2, "The decision"));
    blocks.add(Block.paragraph(told.decision()));
    return Document.of(blocks.toArray(Block[]::new));
  }

  private static Block table(Choice choice, WaysTold told) {
    List<Column> columns = new ArrayList<>(List.of(Column.left("")));
    choice.ways().forEach(way -> columns.add(Column.right(way.name())));
    List<Row> rows = new ArrayList<>();
    for (WaysTold.Line line : told.lines()) {
      List<String> cells = new ArrayList<>(List.of(line.name()));
      cells.addAll(line.cells());
      rows.add(Row.row(cells.toArray(String[]::new)));
    }
    return Block.table(columns, rows);
  }

  private static void bullets(String heading, List<String> sentences, List<Block> blocks) {
    if (!sentences.isEmpty()) {
      blocks.add(Block.heading(2, heading));
      blocks.add(Block.bullets(sentences.stream().map(Inline::text).toList()));
    }
  }
}

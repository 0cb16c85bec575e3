package kitwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import kitwright.choice.Choice;
import kitwright.choice.Dominated;
import kitwright.choice.WayOut;
import kitwright.document.Block;
import kitwright.document.Column;
import kitwright.document.Document;
import kitwright.document.Row;
import kitwright.ledger.Shortage;
import kitwright.value.Decimal;
import kitwright.value.Money;

/** The ways out of a shortage as a page of Markdown, for a letter or a forge. */
public final class WaysOutPage {
  private WaysOutPage() {}

  /** The page. */
  public static Document of(Choice choice) {
    Shortage shortage = choice.standing().shortage();
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading(1, "Ways out: " + shortage.id()));
    blocks.add(
        Block.paragraph(
            choice.standing().open()
                + " of "
                + shortage.item().id()
                + " still open. If it were here today, the build would end on "
                + Say.day(choice.launchIfHere())
                + "."));
    blocks.add(table(choice));
    List<String> remarks = new ArrayList<>();
    choice.ways().forEach(way -> remarks.addAll(remarks(way)));
    for (Dominated each : choice.dominated()) {
      remarks.add(each.way() + " is beaten by " + each.by() + ": " + each.reason() + ".");
    }
    if (!remarks.isEmpty()) {
      blocks.add(Block.bullets(remarks.stream().map(kitwright.document.Inline::text).toList()));
    }
    blocks.add(
        Block.paragraph(
            shortage
                .decided()
                .map(
                    d ->
                        "Decided on "
                            + Say.day(d.on())
                            + ": "
                            + d.option()
                            + d.why().map(why -> ", since " + why).orElse("")
                            + ".")
                .orElse("Not decided. The builder decides.")));
    return Document.of(blocks.toArray(Block[]::new));
  }

  private static Block table(Choice choice) {
    List<Column> columns = new ArrayList<>(List.of(Column.left("")));
    choice.ways().forEach(way -> columns.add(Column.right(way.name())));
    List<Row> rows = new ArrayList<>();
    row(
        rows,
        choice,
        "Cash now",
        way -> way.outlay().now().map(Money::toString).orElse("not said"));
    row(
        rows,
        choice,
        "Build ends at",
        way -> way.outlay().forecast().map(Money::toString).orElse("not known"));
    row(
        rows,
        choice,
        "May be claimed",
        way -> way.outlay().claimable().signum() == 0 ? "–" : way.outlay().claimable().toString());
    row(rows, choice, "Own hours", way -> Decimal.print(way.outlay().hours()));
    row(
        rows,
        choice,
        "Here on",
        way -> way.timing().arrives().map(Object::toString).orElse("not known"));
    row(
        rows,
        choice,
        "Launch",
        way -> way.timing().launch().map(day -> day.on().toString()).orElse("not known"));
    row(
        rows,
        choice,
        "Strength",
        way ->
            way.strength()
                .map(s -> s.verdict().map(v -> Say.word(v.outcome())).orElse("not assessed"))
                .orElse("as drawn"));
    return Block.table(columns, rows);
  }

  private static void row(
      List<Row> rows, Choice choice, String name, Function<WayOut, String> cell) {
    List<String> cells = new ArrayList<>(List.of(name));
    choice.ways().forEach(way -> cells.add(cell.apply(way)));
    rows.add(Row.row(cells.toArray(String[]::new)));
  }

  private static List<String> remarks(WayOut way) {
    List<String> remarks = new ArrayList<>();
    way.timing()
        .held()
        .filter(held -> held.days() > 0)
        .ifPresent(
            held ->
                remarks.add(
                    way.name() + " holds “" + held.what() + "” by " + held.days() + " days."));
    way.signing()
        .filter(signing -> !signing.signers().isEmpty())
        .ifPresent(
            signing ->
                remarks.add(
                    way.name()
                        + " must be signed by "
                        + String.join(" or ", signing.signers())
                        + "."));
    way.taken()
        .forEach(
            taken ->
                remarks.add(way.name() + " takes " + taken.qty() + " of " + taken.what() + "."));
    return remarks;
  }
}

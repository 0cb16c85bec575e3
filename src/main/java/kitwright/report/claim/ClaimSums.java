package kitwright.report.claim;

import java.util.ArrayList;
import java.util.List;
import kitwright.claim.ClaimStanding;
import kitwright.claim.Line;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Row;
import kitwright.document.Value;
import kitwright.ledger.Claim;
import kitwright.report.words.Cells;
import kitwright.report.words.Say;
import kitwright.value.Money;
import kitwright.value.Word;

/** What a claim asked, was granted and got, line by line, each currency by itself. */
public final class ClaimSums {
  private ClaimSums() {}

  public static Block table(ClaimStanding claim) {
    List<Row> rows = new ArrayList<>();
    claim.lines().forEach(line -> rows.add(row(line)));
    if (!claim.costs().isEmpty()) {
      rows.add(
          Row.row(
              Cell.text("costs besides"),
              Cell.none(),
              Cell.text("their amount"),
              cell(claim.extraCosts()),
              Cell.none(),
              Cell.none()));
    }
    rows.add(
        Cells.total(
            Cell.text("All"),
            Cell.text(""),
            Cell.text(""),
            cell(claim.asked()),
            cell(claim.granted()),
            Cell.text("")));
    return Block.table(
        Column.columns(
            Column.left("Line"),
            Column.right("Short"),
            Column.left("We ask"),
            Column.right("Asked in money"),
            Column.right("Granted"),
            Column.left("Status").named("stands")),
        rows);
  }

  private static Row row(Line line) {
    return Row.row(
        Cell.text(ShortagesReport.what(line.shortage())),
        Cells.told(line.qty()),
        Cell.text(asks(line.remedy())),
        cell(line.asked()),
        cell(line.granted()),
        Cell.text(stands(line)).with("open", Value.of(line.open())));
  }

  private static Cell cell(List<Money> all) {
    return Cell.text(monies(all)).with(Value.of(all).beside());
  }

  private static String stands(Line line) {
    List<String> parts = new ArrayList<>(ends(line));
    if (!line.sent().isNone() && !line.asking().isSettled()) {
      parts.add(Say.qty(line.sent()) + " came since");
    }
    if (!line.isOver()) {
      parts.add(parts.isEmpty() ? "open" : Say.qty(line.open()) + " open");
    }
    return Say.list(parts);
  }

  /** How parts of a line ended. */
  static List<String> ends(Line line) {
    return line.asking().settled().stream()
        .map(
            end ->
                end.qty().map(qty -> Say.qty(qty) + " ").orElse("")
                    + Word.spoken(end.how())
                    + " "
                    + end.on())
        .toList();
  }

  /** What came back and what is still open; each as values beside the words. */
  static Cell told(ClaimStanding claim) {
    return Cell.text(words(claim))
        .with("asked", Value.of(claim.asked()))
        .with("granted", Value.of(claim.granted()))
        .with("come-back", Value.of(claim.paid()))
        .with("open", Value.of(claim.open()));
  }

  /** What came back and what is still open. */
  public static String words(ClaimStanding claim) {
    return "Asked in money: "
        + monies(claim.asked())
        + "; granted: "
        + monies(claim.granted())
        + "; come back: "
        + monies(claim.paid())
        + "; still open: "
        + monies(claim.open())
        + "."
        + unreckoned(claim);
  }

  private static String unreckoned(ClaimStanding claim) {
    List<Money> all = claim.cameBack().unreckoned();
    return all.isEmpty()
        ? ""
        : " Of what came, "
            + Say.monies(all)
            + " are not taken off: there is no rate into what is asked.";
  }

  public static String monies(List<Money> all) {
    return all.isEmpty() ? Cells.NONE : Say.monies(all);
  }

  /** What is asked, in a word. */
  static String asks(Claim.Remedy remedy) {
    return switch (remedy) {
      case REPLACEMENT -> "goods";
      case CREDIT -> "credit";
      case REFUND -> "refund";
      case PRICE_REDUCTION -> "lower price";
      case COST -> "cost of replacement";
    };
  }
}

package kitwright.report.strength;

import static kitwright.document.Column.columns;
import static kitwright.document.Column.head;
import static kitwright.document.Column.left;
import static kitwright.document.Row.row;

import java.util.List;
import java.util.stream.Collectors;
import kitwright.document.Cell;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.document.Table;
import kitwright.document.Value;
import kitwright.history.Arrival;
import kitwright.history.Commit;
import kitwright.ledger.Facts;
import kitwright.report.words.Cells;
import kitwright.report.words.Sheet;

/** By which commit each sign-off came, and what of that does not fit. */
public final class SignedTold {
  private SignedTold() {}

  /** Tells it. */
  public static Sheet sheet(Facts now, List<Arrival> arrivals) {
    List<Row> rows =
        arrivals.stream()
            .map(
                each ->
                    row(
                        Cell.id(each.substitution().id()),
                        Cell.text(now.ledger().nameOf(each.signOff().by().id())),
                        Cell.day(each.signOff().on()),
                        each.first().map(SignedTold::commit).orElse(Cell.none()),
                        Cell.text(signature(each)),
                        doubts(each.doubts())))
            .toList();
    return new Sheet(
        "signed.md",
        "signed",
        Slots.none()
            .sentence("build", now.ledger().build().name())
            .value("today", Cells.spoken(now.day()))
            .table(
                "arrivals",
                new Table(
                    "",
                    columns(
                        head("Substitution"),
                        left("Signed by"),
                        left("Dated"),
                        left("Came into Git"),
                        left("That commit"),
                        left("Does not fit")),
                    rows)));
  }

  private static Cell commit(Commit commit) {
    return Cell.text(commit.day() + ", " + commit.shortId() + " by " + commit.by())
        .with("date", new Value.Day(commit.day()))
        .with("commit", new Value.Id(commit.shortId()));
  }

  private static String signature(Arrival arrival) {
    if (arrival.first().isEmpty()) {
      return Cell.NONE;
    }
    return switch (arrival.signature()) {
      case NONE -> "not signed";
      case GOOD ->
          "signed, good" + arrival.signer().map(whose -> ", by the key of " + whose).orElse("");
      case UNVOUCHED -> "signed, by a key that nothing here vouches for";
      case BAD -> "its signature is bad";
      case NOT_CHECKED -> "signed, cannot be checked here";
    };
  }

  private static Cell doubts(List<Arrival.Doubt> doubts) {
    return doubts.isEmpty()
        ? Cell.none()
        : Cell.several(
            doubts.stream().map(SignedTold::says).collect(Collectors.joining("; ")),
            doubts.stream().map(SignedTold::says).toList());
  }

  private static String says(Arrival.Doubt doubt) {
    return switch (doubt) {
      case LATE -> "dated more than " + Arrival.LATE_DAYS + " days before it came";
      case AFTER_START -> "it came after the work had begun";
      case NOT_COMMITTED -> "not committed yet";
      case COVERS_NOTHING -> "covers nothing";
    };
  }
}

package kitwright.report.past;

import static kitwright.document.Column.columns;
import static kitwright.document.Column.data;
import static kitwright.document.Column.head;
import static kitwright.document.Column.left;
import static kitwright.document.Row.row;

import java.util.ArrayList;
import java.util.List;
import kitwright.document.Cell;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.document.Table;
import kitwright.document.Value;
import kitwright.history.Change;
import kitwright.history.Changes;
import kitwright.history.Commit;
import kitwright.history.Matter;
import kitwright.ledger.Facts;
import kitwright.report.words.Cells;
import kitwright.report.words.Say;
import kitwright.report.words.Sheet;
import kitwright.value.Word;

/** What has changed since a commit, in a builder's words. */
public final class SinceTold {
  /** Where no hand was in it. */
  private static final String FOLLOWS = "follows";

  private SinceTold() {}

  /** Tells it. */
  public static Sheet sheet(Facts now, Commit from, Changes changes) {
    return sheet(now, from, 0, changes);
  }

  /**
   * Tells it.
   *
   * @param faults of reading the ledger at that commit, which may hide what was there
   */
  public static Sheet sheet(Facts now, Commit from, int faults, Changes changes) {
    Slots slots =
        Slots.none()
            .sentence("build", now.ledger().build().name())
            .value("from", Cells.spoken(from.day()))
            .value("today", Cells.spoken(now.day()))
            .sentence("commit", from.shortId())
            .sentence("subject", from.subject())
            .sentence("by", from.by())
            .sentence(
                "summary",
                changes.all().isEmpty() ? "nothing changed" : summary(changes.all().size()))
            .sentence("hands", hands(changes))
            .sentence("before-lacks", lacks(faults));
    for (Matter matter : Matter.values()) {
      slots = slots.table(Word.key(matter), table(changes.of(matter)));
    }
    return new Sheet("since.md", "since", slots);
  }

  private static String summary(int many) {
    return Say.count(many, "thing has changed", "things have changed");
  }

  private static String lacks(int faults) {
    return faults == 0
        ? ""
        : Word.capital(Say.count(faults, "fault", "faults"))
            + " stood in the ledger’s files then: what could not be read is told as new.";
  }

  private static String hands(Changes changes) {
    return changes.all().stream().allMatch(change -> !change.by().isEmpty())
        ? ""
        : "“By” tells whose hand changed the record itself. Where it says “"
            + FOLLOWS
            + "”, nobody did: the change follows from other records, or from the days that went"
            + " by.";
  }

  private static Table table(List<Change> changes) {
    List<Row> rows = new ArrayList<>();
    for (Change change : changes) {
      rows.add(
          row(
              what(change),
              Cell.text(change.what()),
              change.before().match(new HeldCell()),
              change.now().match(new HeldCell()),
              change.by().isEmpty()
                  ? Cell.of(FOLLOWS, new Value.Nothing())
                  : Cell.several(String.join(", ", change.by()), List.copyOf(change.by()))));
    }
    return new Table(
        "",
        columns(head("What").named("id"), data("what"), left("Before"), left("Now"), left("By")),
        rows);
  }

  private static Cell what(Change change) {
    if (change.matter() == Matter.MONEY) {
      return Cell.of(change.what(), new Value.Id(change.id()));
    }
    return change.id().isEmpty()
        ? Cell.text(change.what())
        : Cell.named(change.what(), change.id());
  }
}

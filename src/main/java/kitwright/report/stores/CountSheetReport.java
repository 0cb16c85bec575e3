package kitwright.report.stores;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Inline;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.document.Value;
import kitwright.kit.Position;
import kitwright.kit.Positions;
import kitwright.ledger.Delivery;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.KitItem;
import kitwright.ledger.Party;
import kitwright.report.words.Cautions;
import kitwright.report.words.Cells;
import kitwright.report.words.FileName;
import kitwright.report.words.Say;
import kitwright.report.words.Sheet;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/** A sheet for each delivery, to print and to tick at the crate. */
public final class CountSheetReport {
  private static final String BOX = "☐";
  private static final int BLANK_LINES = 4;

  /**
   * A line to be ticked.
   *
   * @param packed what the note says, or else what was promised
   * @param onNote whether the note says it
   */
  private record Line(
      Ref item, Optional<Quantity> packed, Optional<Delivery.Counted> counted, boolean onNote) {}

  private CountSheetReport() {}

  public static List<Sheet> sheets(Facts now) {
    List<Delivery> deliveries = now.ledger().deliveries();
    if (deliveries.isEmpty()) {
      return List.of(new Sheet("count-sheet.md", "count-sheet", first(now)));
    }
    return deliveries.stream()
        .map(
            delivery ->
                new Sheet(
                    "count-sheet-"
                        + FileName.of(delivery.id(), now.ledger().ids(Kind.DELIVERIES))
                        + ".md",
                    "count-sheet",
                    of(delivery, now)))
        .toList();
  }

  private static Slots first(Facts now) {
    return slots(
        now,
        lines(now),
        "The first delivery",
        "",
        "The whole kit, since no delivery is recorded yet.");
  }

  private static Slots of(Delivery delivery, Facts now) {
    String came =
        delivery
            .received()
            .map(day -> "received on " + Say.day(day))
            .or(() -> delivery.expected().map(day -> "expected on " + Say.day(day)))
            .orElse("on its way");
    String from = now.ledger().party(delivery.from()).map(Party::name).orElse(delivery.from().id());
    return slots(
        now,
        lines(delivery, now),
        "Delivery " + delivery.id(),
        delivery.note().orElse(""),
        "From " + from + ", " + came + ". " + basis(delivery));
  }

  private static String basis(Delivery delivery) {
    if (!delivery.packed().isEmpty()) {
      return "The lines are those of the delivery note.";
    }
    return !delivery.isCounted()
        ? "The note’s lines are not in the ledger, so that here is all of the kit that is still to"
            + " come."
        : "The lines are those counted so far.";
  }

  private static List<Line> lines(Delivery delivery, Facts now) {
    if (!delivery.packed().isEmpty()) {
      return delivery.packed().stream()
          .map(
              line ->
                  new Line(
                      line.item(), Optional.of(line.qty()), counted(delivery, line.item()), true))
          .toList();
    }
    if (!delivery.isCounted()) {
      return lines(now);
    }
    return delivery.counted().stream()
        .map(line -> new Line(line.item(), promised(line.item(), now), Optional.of(line), false))
        .toList();
  }

  private static Optional<Delivery.Counted> counted(Delivery delivery, Ref item) {
    return delivery.counted().stream()
        .filter(line -> delivery.isCounted() && line.item().id().equals(item.id()))
        .findFirst();
  }

  private static Optional<Quantity> promised(Ref item, Facts now) {
    return now.ledger().kitItem(item).map(KitItem::qty);
  }

  /** Everything of the kit that has not been counted good. */
  private static List<Line> lines(Facts now) {
    return Positions.on(now).all().stream()
        .filter(position -> !position.missing().isNone())
        .map(CountSheetReport::line)
        .toList();
  }

  private static Line line(Position position) {
    return new Line(
        new Ref(position.item().id(), position.item().at().record()),
        Optional.of(position.missing()),
        Optional.empty(),
        false);
  }

  private static Slots slots(Facts now, List<Line> lines, String title, String note, String what) {
    return Cautions.in(Slots.none(), Cautions.atTheCrate())
        .sentence("build", now.ledger().build().name())
        .sentence("title", title)
        .sentence("note", note)
        .sentence("what", what)
        .sentence("contract", now.ledger().build().contract().orElse(""))
        .block("crates", crates(lines, now).toArray(Block[]::new));
  }

  private static List<Block> crates(List<Line> lines, Facts now) {
    Map<String, List<Line>> byCrate = new LinkedHashMap<>();
    lines.forEach(
        line -> byCrate.computeIfAbsent(crate(line, now), crate -> new ArrayList<>()).add(line));
    List<Block> blocks = new ArrayList<>();
    byCrate.forEach(
        (crate, some) -> {
          blocks.add(Block.heading(2, crate.isEmpty() ? "Without a crate" : "Crate " + crate));
          blocks.add(table(some, now));
        });
    blocks.add(Block.heading(2, "Found, but on no list"));
    blocks.add(table(List.of(), now));
    return blocks;
  }

  private static String crate(Line line, Facts now) {
    return now.ledger().kitItem(line.item()).flatMap(KitItem::crate).orElse("");
  }

  private static Block table(List<Line> lines, Facts now) {
    List<Row> rows = new ArrayList<>(lines.stream().map(line -> row(line, now)).toList());
    for (int i = 0; lines.isEmpty() && i < BLANK_LINES; i++) {
      rows.add(Row.row(BOX, "", "", "", "", ""));
    }
    return Block.table(
        Column.columns(
            Column.left("Item"),
            Column.right(lines.stream().anyMatch(Line::onNote) ? "Packed" : "Promised"),
            Column.right("Counted"),
            Column.right("Damaged"),
            Column.right("Wrong"),
            Column.right("Undersize")),
        rows);
  }

  private static Row row(Line line, Facts now) {
    return Row.row(
        Cell.of(
                Inline.together(
                    Inline.text(line.counted().isPresent() ? "☑ " : BOX + " "),
                    Inline.named(
                        now.ledger().kitItem(line.item()).map(KitItem::what).orElse(""),
                        line.item().id())))
            .with("id", new Value.Id(line.item().id())),
        Cells.told(line.packed()),
        Cells.told(line.counted().map(Delivery.Counted::qty)),
        Cells.told(line.counted().flatMap(Delivery.Counted::damaged)),
        Cells.told(line.counted().flatMap(Delivery.Counted::wrong)),
        Cells.told(line.counted().flatMap(Delivery.Counted::undersize)));
  }
}

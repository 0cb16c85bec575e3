package kitwright.report.stores;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.cutting.Buying;
import kitwright.cutting.CutFaults;
import kitwright.cutting.CutPlan;
import kitwright.cutting.DoneCut;
import kitwright.cutting.PieceCut;
import kitwright.cutting.Remnants;
import kitwright.cutting.Steps;
import kitwright.cutting.Tenths;
import kitwright.cutting.Yield;
import kitwright.cutting.saw.Board;
import kitwright.cutting.saw.Rect;
import kitwright.cutting.saw.Use;
import kitwright.cutting.saw.Way;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Inline;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.document.Table;
import kitwright.document.Value;
import kitwright.ledger.Cut;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.openmatter.Needed;
import kitwright.report.words.Cautions;
import kitwright.report.words.Cells;
import kitwright.report.words.Say;
import kitwright.report.words.Sheet;
import kitwright.value.Days;
import kitwright.value.Word;

/** A cut plan for the bench, what came of a cut that is done, and the list of cuts. */
public final class CutTold {
  private CutTold() {}

  /** Every cut and how it stands. */
  public static Sheet list(Ledger ledger) {
    Slots slots =
        Slots.none()
            .sentence("build", ledger.build().name())
            .table(
                "cuts",
                new Table(
                    "The cuts",
                    Column.columns(
                        Column.head("Cut"),
                        Column.left("For"),
                        Column.right("Parts"),
                        Column.left("Status"),
                        Column.data("done")),
                    ledger.cuts().stream().map(cut -> row(cut, ledger)).toList()));
    return new Sheet("cuts.md", "cuts", slots);
  }

  private static Row row(Cut cut, Ledger ledger) {
    boolean sound = CutFaults.spoiling(cut, ledger).isEmpty();
    return Row.row(
        Cell.id(cut.id()),
        Cell.text(cut.task().map(task -> task.id())),
        Cell.number(cut.parts().stream().mapToInt(Cut.Part::qty).sum()),
        Cell.text(
            cut.done()
                .map(day -> "cut on " + Days.named(day))
                .orElse(sound ? "to be cut" : "cannot be planned; see check")),
        Cell.day(cut.done()));
  }

  private static Slots head(Cut cut) {
    return Slots.none()
        .sentence("cut", cut.id())
        .sentence("task", cut.task().map(task -> task.id()).orElse(""));
  }

  /** What came of a cut that is done. */
  public static Sheet of(DoneCut done) {
    List<Inline> told = new ArrayList<>();
    done.planned().ifPresent(planned -> told.add(Inline.text("Planned: " + planned.told())));
    done.came()
        .ifPresent(
            came ->
                told.add(
                    Inline.text(
                        "Came of it, if every part was made: parts "
                            + came.parts()
                            + "\u00a0%, left-overs on the rack "
                            + came.left()
                            + "\u00a0%, waste "
                            + came.waste()
                            + "\u00a0%.")));
    Slots slots =
        head(done.cut())
            .value("done", Cells.spoken(done.cut().done().orElseThrow()))
            .sentence(
                "took",
                done.took()
                    .map(
                        took ->
                            took.isEmpty()
                                ? "nothing that still stands in the stock"
                                : counts(took))
                    .orElse(""))
            .table("used", counts("stock", done.took().orElse(Map.of())), List.of())
            .list("yield", told)
            .value("left-overs", Cell.several(Say.list(done.left()), done.left()));
    return new Sheet("cut-" + done.cut().id() + ".md", "cut-done", slots);
  }

  /** The plan of one cut, with what it would take where parts are missing. */
  public static Sheet of(CutPlan plan, Optional<Buying> buying, Facts day) {
    boolean none = plan.pieces().isEmpty();
    Slots slots =
        head(plan.cut())
            .sentence("quality", plan.quality())
            .value("proved-best", Cell.yes("", plan.isProvedBest()))
            .sentence("among", "plans " + plan.manner().words())
            .value("stock-value", Cell.number(plan.outcome().value()))
            .value("bound", Cell.number(plan.outcome().bound()))
            .sentence("uses", none ? "" : uses(plan))
            .value("yield", none ? Cell.text("") : shares(Yield.of(plan.pieces())))
            .table("used", counts("stock", plan.used()), List.of())
            .value("stock-worth", plan.worth().map(Cells::money).orElseGet(Cell::none))
            .table("missing", counts("mark", plan.missing()))
            .list(
                "buy",
                Inline.texts(buying.map(buy -> bought(buy, plan.cut(), day)).orElse(List.of())))
            .list("refused", Inline.texts(List.copyOf(plan.refused().values())))
            .list("withheld", Inline.texts(plan.rack().withheld()))
            .list("notes", Inline.texts(notes(plan)))
            .sentence("bench", none ? "" : bench(plan))
            .list("fence", none ? List.of() : Inline.texts(Steps.fence(plan)))
            .list("joints", none ? List.of() : Inline.texts(Steps.joints(plan)))
            .table("pieces", pieces(plan), steps(plan))
            .table("tally", tally(plan));
    return new Sheet(
        "cut-" + plan.cut().id() + ".md", "cut", Cautions.in(slots, Cautions.of(plan)));
  }

  private static Cell shares(Yield yield) {
    Cell told = Cell.text(yield.told());
    for (Map.Entry<String, BigDecimal> each : yield.shares().entrySet()) {
      told = told.with(each.getKey(), new Value.Figure(each.getValue()));
    }
    return told;
  }

  private static List<String> notes(CutPlan plan) {
    return Stream.concat(
            plan.notes().stream(),
            plan.cut().parts().stream()
                .flatMap(
                    part ->
                        part.face().stream()
                            .map(face -> part.mark() + ": let this face show: " + face + ".")))
        .toList();
  }

  private static List<String> bought(Buying buy, Cut cut, Facts day) {
    List<String> told = new ArrayList<>(buy.leftOut());
    if (buy.pieces().isEmpty()) {
      told.add(
          buy.leftOut().isEmpty()
              ? "Nothing that is offered under “buy” makes more of the parts."
              : "Nothing else that is offered under “buy” makes more of the parts.");
      return told;
    }
    String pieces =
        Say.list(
            buy.pieces().entrySet().stream()
                .map(
                    each ->
                        each.getValue()
                            + " of "
                            + each.getKey().what()
                            + each.getKey().size().map(size -> " (" + size + ")").orElse("")
                            + each.getKey().supplier().map(who -> ", of " + who).orElse(""))
                .toList());
    told.add(
        "To make "
            + (buy.missing().isEmpty() ? "every part" : "as many as can be")
            + ", buy "
            + pieces
            + " for "
            + Say.money(buy.cost())
            + ". "
            + buy.outcome());
    if (!buy.missing().isEmpty()) {
      told.add("Still wanted then: " + counts(buy.missing()) + ".");
    }
    told.add(lead(buy, cut, day));
    return told;
  }

  private static String lead(Buying buy, Cut cut, Facts day) {
    if (buy.lead().isEmpty()) {
      return "When it would be here cannot be told: add its “lead” to what is bought.";
    }
    LocalDate here = day.day().plusDays(buy.lead().get());
    String needed =
        cut.task()
            .flatMap(task -> Needed.on(day).of(List.of(task.id())))
            .map(
                stop ->
                    "; its task could use it from "
                        + Days.named(stop.from())
                        + " and needs it by "
                        + Days.named(stop.neededBy())
                        + (here.isAfter(stop.neededBy()) ? ": too late" : ""))
            .orElse("");
    return "Ordered today, it is here on " + Days.named(here) + needed + ".";
  }

  private static String counts(Map<String, Integer> counts) {
    return Say.list(
        counts.entrySet().stream().map(each -> each.getValue() + " of " + each.getKey()).toList());
  }

  private static String uses(CutPlan plan) {
    return counts(plan.used())
        + plan.worth().map(worth -> ", worth " + Say.money(worth)).orElse("");
  }

  private static String bench(CutPlan plan) {
    return "Mark one end of each piece A and one long edge B. Distances are measured on the whole"
        + " piece, before its first cut, to the line; the blade runs beyond the line. Kerf "
        + plan.cut().kerf()
        + plan.cut().ripKerf().map(rip -> ", ripping " + rip).orElse("")
        + ". Left-overs from "
        + Tenths.mm(plan.keep().longer())
        + " x "
        + Tenths.mm(plan.keep().shorter())
        + " mm go back on the rack"
        + (plan.keep().isStated() ? "" : ", as small as the parts of the build’s cuts")
        + "; the rest is waste.";
  }

  private static Table counts(String name, Map<String, Integer> counts) {
    return new Table(
        "",
        Column.columns(Column.head("Which").named(name), Column.right("How many").named("qty")),
        counts.entrySet().stream()
            .map(each -> Row.row(Cell.text(each.getKey()), Cell.number(each.getValue())))
            .toList());
  }

  private static List<Block> steps(CutPlan plan) {
    List<Block> blocks = new ArrayList<>();
    for (Steps steps : Steps.of(plan)) {
      blocks.add(Block.heading(3, steps.heading()));
      if (!steps.flaws().isEmpty()) {
        blocks.add(Block.bullets(Inline.texts(steps.flaws())));
      }
      List<Inline> lines = new ArrayList<>();
      steps.lines().forEach(line -> lines.add(Inline.text("[ ] " + line.strip())));
      blocks.add(Block.numbered(lines));
    }
    return blocks;
  }

  private static Table tally(CutPlan plan) {
    Map<String, Integer> made = plan.made();
    return new Table(
        "Parts",
        Column.columns(
            Column.head("Part").named("mark"), Column.right("Wanted"), Column.right("Made")),
        plan.cut().parts().stream()
            .map(
                part ->
                    Row.row(
                        Cell.text(part.mark()),
                        Cell.number(part.qty()),
                        Cell.number(made.getOrDefault(part.mark(), 0))))
            .toList());
  }

  private static Table pieces(CutPlan plan) {
    return new Table(
        "Pieces",
        Column.columns(
            Column.head("Stock"),
            Column.right("Number"),
            Column.left("Parts"),
            Column.left("Remnants"),
            Column.left("Cuts")),
        pieceRows(plan));
  }

  private static List<Row> pieceRows(CutPlan plan) {
    Iterator<String> names = Remnants.ids(plan).iterator();
    return plan.pieces().stream().map(piece -> piece(piece, names)).toList();
  }

  /** Left-overs are called in the order of the plan, as at the bench. */
  private static Row piece(PieceCut piece, Iterator<String> names) {
    List<Row> parts = new ArrayList<>();
    for (Board.Piece each : piece.board().becoming(Use.Part.class).toList()) {
      Use.Part part = (Use.Part) each.use();
      List<Cell> cells =
          new ArrayList<>(
              List.of(
                  Cell.text(part.mark()),
                  Cell.number(part.copy()),
                  Cell.number(part.piece()),
                  Cell.number(part.of()),
                  Cell.yes("", part.turned())));
      cells.addAll(rect(each.rect()));
      parts.add(new Row(cells));
    }
    List<Row> rests = new ArrayList<>();
    for (Board.Piece left : piece.board().becoming(Use.Left.class).toList()) {
      List<Cell> cells = new ArrayList<>(List.of(Cell.id(names.next())));
      cells.addAll(rect(left.rect()));
      rests.add(new Row(cells));
    }
    List<Row> cuts = new ArrayList<>();
    cuts(piece.board(), cuts);
    return Row.row(
        Cell.text(piece.stock().id()),
        Cell.number(piece.number()),
        rows(
            List.of("mark", "copy", "piece", "of", "turned", "along", "across", "length", "width"),
            parts),
        rows(List.of("id", "along", "across", "length", "width"), rests),
        rows(List.of("way", "at", "kerf", "from", "length"), cuts));
  }

  /** In an order in which they can be made. */
  private static void cuts(Board start, List<Row> rows) {
    Board board = start;
    while (board instanceof Board.Sawn sawn) {
      boolean cross = sawn.way() == Way.CROSS;
      rows.add(
          Row.row(
              Cell.text(Word.key(sawn.way())),
              mm(sawn.at()),
              mm(sawn.kerf()),
              mm(cross ? sawn.rect().across() : sawn.rect().along()),
              mm(cross ? sawn.rect().width() : sawn.rect().length())));
      cuts(sawn.near(), rows);
      board = sawn.far();
    }
  }

  private static List<Cell> rect(Rect rect) {
    return List.of(mm(rect.along()), mm(rect.across()), mm(rect.length()), mm(rect.width()));
  }

  private static Cell rows(List<String> names, List<Row> rows) {
    List<Column> columns = names.stream().map(name -> Column.left(name)).toList();
    return Cell.of("", new Value.Rows(new Table("", columns, rows)));
  }

  private static Cell mm(long tenths) {
    String mm = Tenths.mm(tenths);
    return Cell.number(mm, new BigDecimal(mm));
  }
}

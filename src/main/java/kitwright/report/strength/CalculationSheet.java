package kitwright.report.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import kitwright.assessment.Result;
import kitwright.assessment.Sensitivity;
import kitwright.assessment.sheet.Figure;
import kitwright.assessment.sheet.Input;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Row;
import kitwright.assessment.sheet.Step;
import kitwright.assessment.sheet.Verdict;
import kitwright.assessment.sheet.Working;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Destination;
import kitwright.document.Inline;
import kitwright.document.Slots;
import kitwright.document.Value;
import kitwright.ledger.Assessment;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.Load;
import kitwright.mechanics.load.Break;
import kitwright.report.words.Cautions;
import kitwright.report.words.FileName;
import kitwright.report.words.Sheet;
import kitwright.value.Word;

/** A calculation that a naval architect can follow line by line, and sign. */
public final class CalculationSheet {
  private static final int SHOWN = 12;
  private static final Block[] NOTHING = {};

  private CalculationSheet() {}

  /** The sheet of one assessment, with the drawing of its sections beside it. */
  public static Sheet of(Result result, Ledger ledger) {
    Assessment assessment = result.assessment();
    String name = "assessment-" + FileName.of(assessment.id(), ledger.ids(Kind.ASSESSMENTS));
    Map<String, String> drawings =
        result.sketches().isEmpty()
            ? Map.of()
            : Map.of(name + ".svg", SectionDrawing.of(assessment, result.sketches()));
    Slots slots =
        Slots.none()
            .sentence("build", ledger.build().name())
            .sentence("assessment", assessment.id())
            .sentence(
                "summary",
                Word.capital(method(assessment)) + ": " + word(result.verdict().outcome()) + ".")
            .block("reasons", bullets(result.verdict().reasons()))
            .block("results", results(result, ledger))
            .block("drawing", drawings.isEmpty() ? NOTHING : drawing(name))
            .block("load", load(result))
            .block("inputs", inputs(result))
            .block("working", working(result))
            .block("order", breaks(result))
            .block("cautions", bullets(cautions(result)))
            .block("moves", bullets(Sensitivity.of(result, ledger)))
            .block("limits", assumptions(result));
    return new Sheet(name + ".md", "calculation-sheet", slots, drawings);
  }

  private static Block[] drawing(String name) {
    return new Block[] {
      Block.paragraph(
          Inline.picture(Destination.file(name + ".svg"), "the sections, all to one scale"))
    };
  }

  /** What the numbers ask to be careful of, and the work that would follow them. */
  private static List<String> cautions(Result result) {
    List<String> all = new ArrayList<>(result.cautions());
    all.addAll(Cautions.of(result));
    return all;
  }

  static Block[] bullets(List<String> lines) {
    return lines.isEmpty() ? NOTHING : new Block[] {Block.bullets(Inline.texts(lines))};
  }

  private static String method(Assessment assessment) {
    return switch (assessment.method()) {
      case SECTION -> "beam section by the transformed section";
      case TIMBER -> "timber section by the transformed section, strengths times named factors";
      case PANEL -> "plate under even pressure";
      case LAMINATE -> "laminate in its plane";
      case BOLT -> "bolts by their class";
      case EXTERNAL -> "worked out elsewhere";
    };
  }

  private static String word(Verdict.Outcome outcome) {
    return switch (outcome) {
      case PASS -> "passes";
      case FAIL -> "fails";
      case CANNOT_TELL -> "cannot be told";
    };
  }

  private static Block[] results(Result result, Ledger ledger) {
    List<Block> blocks = new ArrayList<>();
    if (Elsewhere.isSo(result.assessment())) {
      return Elsewhere.blocks(result.assessment(), ledger).toArray(Block[]::new);
    }
    if (result.rows().isEmpty()) {
      blocks.add(Block.paragraph("Nothing was worked out here."));
    } else {
      blocks.add(results(result));
    }
    blocks.addAll(List.of(bullets(Elsewhere.reasons(result.assessment(), ledger))));
    return blocks.toArray(Block[]::new);
  }

  private static Block results(Result result) {
    List<kitwright.document.Row> rows = new ArrayList<>();
    for (Row row : result.rows()) {
      rows.add(
          kitwright.document.Row.row(
              Cell.text(
                  row.measure().words()
                      + (row.measure().unit().isEmpty() ? "" : ", " + row.measure().unit())
                      + row.built()
                          .flatMap(Figure::governing)
                          .map(how -> "; as built set by " + how)
                          .orElse("")),
              AssessTold.figure(row.designed()),
              AssessTold.figure(row.built()),
              ratio(row),
              AssessTold.asked(row).orElseGet(() -> Cell.text("")),
              verdict(row)));
    }
    return Block.table(
        Column.columns(
            Column.left("measure"),
            Column.right("designed"),
            Column.right("built"),
            Column.right("ratio"),
            Column.left("asked"),
            Column.left("verdict, margin")),
        rows);
  }

  private static Cell ratio(Row row) {
    String shown = row.printedRatio().orElse(Cell.NONE);
    return row.ratio().isPresent()
        ? AssessTold.number(shown, row.ratio().getAsDouble())
        : Cell.text(shown);
  }

  private static Cell verdict(Row row) {
    Cell words =
        Cell.text(
            row.outcome().map(CalculationSheet::word).orElse("")
                + (row.margin().isPresent()
                    ? ", " + Print.margin(row.margin().getAsDouble())
                    : ""));
    return row.margin().isPresent() ? words.with("margin", margin(row)) : words;
  }

  static Value margin(Row row) {
    return AssessTold.number("", row.margin().orElse(0)).value();
  }

  private static Block[] load(Result result) {
    if (result.assessment().load().isEmpty()) {
      return NOTHING;
    }
    Load load = result.assessment().load().get();
    List<Inline> lines = new ArrayList<>(Inline.texts(result.load()));
    if (result.load().isEmpty()) {
      load.pressure().ifPresent(p -> lines.add(Inline.text("pressure " + p)));
      load.span()
          .ifPresent(
              a ->
                  lines.add(
                      Inline.text(
                          "span " + a + load.breadth().map(b -> ", breadth " + b).orElse(""))));
      if (load.selfWeight()) {
        lines.add(Inline.text("the self-weight of each part is added; see its working"));
      }
    }
    lines.add(
        Inline.text(
            load.factor().isEmpty()
                ? "no safety factor on the load is stated"
                : "safety factor on the load " + Print.number(load.safety().doubleValue())));
    lines.add(Inline.text("source: " + load.source().orElse("none")));
    return new Block[] {Block.bullets(lines)};
  }

  private static Block[] inputs(Result result) {
    if (result.inputs().isEmpty()) {
      return NOTHING;
    }
    List<Block> all = new ArrayList<>();
    List<kitwright.document.Row> rows = new ArrayList<>();
    for (Input input : result.inputs()) {
      rows.add(
          kitwright.document.Row.row(
              Cell.text(input.material()),
              Cell.text(input.property().key()),
              AssessTold.value(input),
              Cell.text(input.basis().map(basis -> Word.key(basis)).orElse("not said")),
              Cell.text(input.trust().words()),
              Cell.text(input.source())));
    }
    all.add(
        Block.table(
            Column.columns(
                Column.left("material"),
                Column.left("property"),
                Column.right("value"),
                Column.left("basis"),
                Column.left("trust"),
                Column.left("source")),
            rows));
    List<Inline> factors = new ArrayList<>(Inline.texts(result.factors()));
    result.assessment().sources().forEach(source -> factors.add(Inline.text("source: " + source)));
    if (!factors.isEmpty()) {
      all.add(Block.bullets(factors));
    }
    return all.toArray(Block[]::new);
  }

  private static Block[] working(Result result) {
    List<Block> all = new ArrayList<>();
    result.working().forEach(working -> working(working, all));
    return all.toArray(Block[]::new);
  }

  private static void working(Working working, List<Block> all) {
    all.add(Block.heading(2, "Working: " + working.part()));
    if (!working.pieces().isEmpty()) {
      List<Column> columns = new ArrayList<>();
      for (int i = 0; i < working.columns().size(); i++) {
        String title = working.columns().get(i);
        columns.add(i < 1 ? Column.left(title) : Column.right(title));
      }
      all.add(
          Block.table(
              columns,
              working.pieces().stream()
                  .map(cells -> kitwright.document.Row.row(cells.toArray(String[]::new)))
                  .toList()));
    }
    List<kitwright.document.Row> steps = new ArrayList<>();
    for (Step step : working.steps()) {
      steps.add(
          kitwright.document.Row.row(step.what(), step.formula(), step.numbers(), step.result()));
    }
    all.add(
        Block.table(
            Column.columns(
                Column.left("what"),
                Column.left("formula"),
                Column.left("with numbers"),
                Column.right("result")),
            steps));
  }

  private static Block[] breaks(Result result) {
    if (result.breaks().isEmpty()) {
      return NOTHING;
    }
    List<kitwright.document.Row> rows = new ArrayList<>();
    for (Break one : result.breaks().subList(0, Math.min(SHOWN, result.breaks().size()))) {
      rows.add(
          kitwright.document.Row.row(
              AssessTold.number(Print.number(one.at() * 1000), one.at() * 1000),
              Cell.text(one.part()),
              Cell.text(one.mode()),
              AssessTold.number(String.format(Locale.ROOT, "%.3f", one.factor()), one.factor())));
    }
    return new Block[] {
      Block.table(
          Column.columns(
              Column.right("from the support, mm"),
              Column.left("part"),
              Column.left("how"),
              Column.right("capacity over demand")),
          rows)
    };
  }

  private static Block[] assumptions(Result result) {
    List<Inline> lines = new ArrayList<>(Inline.texts(result.notes()));
    lines.addAll(Inline.texts(Validity.of(result)));
    return new Block[] {Block.bullets(lines)};
  }
}

package kitwright.report.strength;

import static kitwright.document.Column.data;
import static kitwright.document.Column.left;
import static kitwright.document.Column.right;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import kitwright.assessment.Chances;
import kitwright.assessment.Remedies;
import kitwright.assessment.Result;
import kitwright.assessment.sheet.Figure;
import kitwright.assessment.sheet.Input;
import kitwright.assessment.sheet.Print;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Inline;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.document.Table;
import kitwright.document.Value;
import kitwright.ledger.Ledger;
import kitwright.report.words.Cautions;
import kitwright.report.words.Sheet;
import kitwright.value.Word;

/** Assessments as they stand: as designed beside as built, why, and what would mend them. */
public final class AssessTold {
  private AssessTold() {}

  /**
   * One assessment with what was asked of it.
   *
   * @param remedy what would mend it, where that was searched for
   * @param chances how likely the built part is the weaker, where that was sampled
   */
  public record Asked(
      Result result, Optional<Remedies.Answer> remedy, Optional<Chances.Told> chances) {}

  /**
   * The document.
   *
   * @param whole every measure, not only those that something is asked of
   * @param least what a remedy is least in
   */
  public static Sheet sheet(Ledger ledger, List<Asked> all, boolean whole, Remedies.Least least) {
    List<Block> blocks = new ArrayList<>();
    all.forEach(asked -> blocks(asked, ledger, whole, least, blocks));
    Slots slots =
        Slots.none()
            .sentence("build", ledger.build().name())
            .table(
                "assessments",
                new Table(
                    "Assessments",
                    Column.columns(
                        left("id"),
                        left("method"),
                        left("verdict"),
                        left("reasons"),
                        left("results"),
                        left("inputs"),
                        left("load"),
                        left("assumptions"),
                        left("cautions"),
                        left("remedy"),
                        left("chances")),
                    all.stream().map(AssessTold::row).toList()),
                blocks);
    return new Sheet("assessments.md", "assessments", slots);
  }

  private static void blocks(
      Asked asked, Ledger ledger, boolean whole, Remedies.Least least, List<Block> blocks) {
    Result result = asked.result();
    blocks.add(
        Block.heading(
            2,
            Inline.strong(Word.spoken(result.verdict().outcome()).toUpperCase(Locale.ROOT)),
            Inline.text(": " + result.assessment().id())));
    List<kitwright.assessment.sheet.Row> rows = whole ? result.rows() : result.asked();
    if (Elsewhere.isSo(result.assessment())) {
      blocks.addAll(Elsewhere.blocks(result.assessment(), ledger));
    } else {
      if (!rows.isEmpty()) {
        blocks.add(results(rows));
      }
      bullets(Elsewhere.reasons(result.assessment(), ledger), "", blocks);
    }
    bullets(result.verdict().reasons(), "", blocks);
    bullets(result.cautions(), "caution: ", blocks);
    asked.remedy().ifPresent(answer -> remedy(answer, least, blocks));
    asked.chances().ifPresent(told -> chances(told, blocks));
  }

  private static void bullets(List<String> sentences, String start, List<Block> blocks) {
    if (!sentences.isEmpty()) {
      blocks.add(Block.bullets(sentences.stream().map(each -> Inline.text(start + each)).toList()));
    }
  }

  private static void remedy(Remedies.Answer answer, Remedies.Least least, List<Block> blocks) {
    String added =
        answer.additions().isEmpty()
            ? "none is needed"
            : String.join(", ", answer.additions())
                + " (least "
                + Word.spoken(least)
                + "; "
                + answer.tried()
                + " combinations worked out)";
    blocks.add(Block.paragraph("Remedy: " + answer.none().orElse(added)));
    bullets(answer.prices(), "", blocks);
    answer.nearest().ifPresent(near -> blocks.add(Block.paragraph("Nearest: " + near + ".")));
    if (answer.none().isEmpty() && !answer.additions().isEmpty()) {
      answer.result().ifPresent(mended -> blocks.add(results(mended.asked())));
    }
    blocks.addAll(Cautions.apart(Cautions.of(answer)));
  }

  private static void chances(Chances.Told told, List<Block> blocks) {
    List<Inline> lines = new ArrayList<>();
    for (Chances.Line line : told.lines()) {
      lines.add(
          Inline.text(
              "chance: "
                  + line.what()
                  + ": "
                  + line.chance().words()
                  + " ("
                  + line.chance().samples()
                  + " samples; what follows ± is one standard error)"));
    }
    told.notes().forEach(note -> lines.add(Inline.text(note)));
    blocks.add(Block.bullets(lines));
  }

  private static Cell kebab(Enum<?> value) {
    return Cell.text(Word.key(value));
  }

  /** A row a measure: as designed, as built, what is asked. */
  static Table results(List<kitwright.assessment.sheet.Row> rows) {
    return new Table(
        "Results",
        Column.columns(
            Column.head("Measure"),
            data("key"),
            data("unit"),
            right("Designed"),
            right("Built"),
            right("Ratio"),
            left("Asked"),
            data("side"),
            data("limit"),
            right("Margin"),
            data("outcome"),
            data("designed-set-by"),
            left("Set by, as built").named("built-set-by"),
            data("lacking")),
        rows.stream().map(AssessTold::result).toList());
  }

  private static Row result(kitwright.assessment.sheet.Row row) {
    String unit = row.measure().unit();
    return Row.row(
        Cell.of(
            row.measure().words() + (unit.isEmpty() ? "" : ", " + unit),
            kebab(row.measure()).value()),
        Cell.text(row.measure().key()),
        Cell.text(unit),
        figure(row.designed()),
        figure(row.built()),
        row.ratio().isPresent()
            ? number(row.printedRatio().orElse(Cell.NONE), row.ratio().getAsDouble())
            : Cell.of(row.printedRatio().orElse(Cell.NONE), new Value.Nothing()),
        asked(row).orElseGet(Cell::none),
        Cell.text(row.limit().map(limit -> limit.side().words())),
        row.limit().map(limit -> number("", limit.value())).orElseGet(Cell::none),
        row.margin().isPresent()
            ? number(Print.margin(row.margin().getAsDouble()), row.margin().getAsDouble())
            : Cell.none(),
        row.outcome().map(AssessTold::kebab).orElseGet(Cell::none),
        Cell.text(row.designed().flatMap(Figure::governing)),
        Cell.text(row.built().flatMap(Figure::governing)),
        Cell.several("", row.lacking()));
  }

  /** What is asked of a measure, and its number. */
  static Optional<Cell> asked(kitwright.assessment.sheet.Row row) {
    return row.limit()
        .map(
            limit ->
                Cell.text(limit.side().words() + " " + Print.number(limit.value()))
                    .with("number", new Value.Figure(BigDecimal.valueOf(limit.value()))));
  }

  /** A value that an assessment leans on, and its number. */
  static Cell value(Input input) {
    return Cell.text(input.value())
        .with("number", new Value.Figure(input.number().stripTrailingZeros()))
        .with("unit", Value.of(input.unit()));
  }

  static Cell figure(Optional<Figure> figure) {
    return figure.map(one -> number(Print.number(one.value()), one.value())).orElseGet(Cell::none);
  }

  static Cell number(String shown, double value) {
    return Double.isFinite(value)
        ? Cell.number(shown, BigDecimal.valueOf(value))
        : Cell.text(shown);
  }

  private static Row row(Asked asked) {
    Result result = asked.result();
    return Row.row(
        Cell.id(result.assessment().id()),
        kebab(result.assessment().method()),
        kebab(result.verdict().outcome()),
        Cell.several("", result.verdict().reasons()),
        Cell.of(
            "",
            new Value.Rows(
                Elsewhere.isSo(result.assessment())
                    ? Elsewhere.numbers(result.assessment())
                    : results(result.rows()))),
        Cell.of("", new Value.Rows(inputs(result.inputs()))),
        Cell.several("", result.load()),
        Cell.several("", result.notes()),
        Cell.several("", result.cautions()),
        asked.remedy().map(AssessTold::remedy).orElseGet(Cell::none),
        asked.chances().map(AssessTold::chances).orElseGet(Cell::none));
  }

  private static Table inputs(List<Input> inputs) {
    return new Table(
        "Inputs",
        Column.columns(
            left("material"),
            left("property"),
            left("value"),
            left("basis"),
            left("trust"),
            left("source")),
        inputs.stream()
            .map(
                input ->
                    Row.row(
                        Cell.text(input.material()),
                        Cell.text(input.property().key()),
                        value(input),
                        input.basis().map(AssessTold::kebab).orElseGet(Cell::none),
                        kebab(input.trust()),
                        Cell.text(input.source())))
            .toList());
  }

  private static Cell remedy(Remedies.Answer answer) {
    Map<String, Value> parts = new LinkedHashMap<>();
    answer.none().ifPresent(none -> parts.put("none", new Value.Text(none)));
    parts.put("additions", Cell.several("", answer.additions()).value());
    parts.put("prices", Cell.several("", answer.prices()).value());
    answer.nearest().ifPresent(near -> parts.put("nearest", new Value.Text(near)));
    parts.put("cautions", Cautions.value(Cautions.of(answer)));
    parts.put("tried", new Value.Figure(BigDecimal.valueOf(answer.tried())));
    return Cell.of("", new Value.Parts(parts));
  }

  private static Cell chances(Chances.Told told) {
    Table table =
        new Table(
            "Chances",
            Column.columns(
                left("what"), right("probability"), right("standard-error"), right("samples")),
            told.lines().stream()
                .map(
                    line ->
                        Row.row(
                            Cell.text(line.what()),
                            number("", line.chance().probability()),
                            number("", line.chance().standardError()),
                            Cell.number(line.chance().samples())))
                .toList());
    return Cell.of("", new Value.Rows(table));
  }
}

package kitwright.report.strength;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kitwright.assessment.Result;
import kitwright.assessment.Sensitivity;
import kitwright.assessment.sheet.Figure;
import kitwright.assessment.sheet.Input;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Row;
import kitwright.assessment.sheet.Trust;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Slots;
import kitwright.ledger.Ledger;
import kitwright.ledger.Load;
import kitwright.report.words.Sheet;

/**
 * One page of an assessment: the verdict, what governs, and what a designer is asked to confirm.
 */
public final class DesignerSheet {
  private static final int GOVERNING = 3;

  private DesignerSheet() {}

  public static Sheet of(Result result, Ledger ledger) {
    String id = result.assessment().id();
    Slots slots =
        Slots.none()
            .sentence("build", ledger.build().name())
            .sentence("assessment", id)
            .sentence("summary", summary(result))
            .block("governing", governing(result))
            .block("confirm", CalculationSheet.bullets(confirm(result)))
            .block("moves", CalculationSheet.bullets(Sensitivity.of(result, ledger)));
    return new Sheet("assessment-" + id + "-page.md", "designer-sheet", slots, Map.of());
  }

  private static String summary(Result result) {
    String verdict =
        switch (result.verdict().outcome()) {
          case PASS -> "It passes what is asked of it.";
          case FAIL -> "It fails: " + result.verdict().because() + ".";
          case CANNOT_TELL -> "It cannot be told: " + result.verdict().because() + ".";
        };
    return verdict;
  }

  private static Block[] governing(Result result) {
    List<Row> tightest =
        result.asked().stream()
            .filter(row -> row.margin().isPresent())
            .sorted(Comparator.comparingDouble(row -> row.margin().getAsDouble()))
            .limit(GOVERNING)
            .toList();
    if (tightest.isEmpty()) {
      return new Block[] {Block.paragraph("Nothing that is asked has a number.")};
    }
    return new Block[] {
      Block.table(
          Column.columns(
              Column.left("governs"),
              Column.right("designed"),
              Column.right("built"),
              Column.left("asked"),
              Column.right("margin"),
              Column.left("set by")),
          tightest.stream().map(DesignerSheet::row).toList())
    };
  }

  private static kitwright.document.Row row(Row row) {
    String unit = row.measure().unit().isEmpty() ? "" : ", " + row.measure().unit();
    return kitwright.document.Row.row(
        Cell.text(row.measure().words() + unit),
        AssessTold.figure(row.designed()),
        AssessTold.figure(row.built()),
        AssessTold.asked(row).orElseGet(() -> Cell.text("")),
        AssessTold.number(Print.margin(row.margin().orElse(0)), row.margin().orElse(0)),
        Cell.text(row.built().flatMap(Figure::governing)));
  }

  private static List<String> confirm(Result result) {
    Set<String> all = new LinkedHashSet<>();
    result
        .assessment()
        .load()
        .flatMap(Load::source)
        .ifPresent(
            source ->
                all.add(
                    "the load, by "
                        + source
                        + (result.load().isEmpty()
                            ? ""
                            : ": " + String.join("; ", result.load()))));
    result.factors().forEach(factor -> all.add("the knock-down: " + factor));
    for (Input input : result.inputs()) {
      if (!input.trust().holds() || input.trust() == Trust.DERIVED) {
        all.add(
            input.named()
                + ", "
                + input.value()
                + ": "
                + input.trust().words()
                + " ("
                + input.source()
                + ")");
      }
    }
    all.addAll(result.cautions());
    return new ArrayList<>(all);
  }
}

package kitwright.assessment;

import java.util.List;
import java.util.Optional;
import kitwright.assessment.part.Sketch;
import kitwright.assessment.sheet.Input;
import kitwright.assessment.sheet.Row;
import kitwright.assessment.sheet.Verdict;
import kitwright.assessment.sheet.Working;
import kitwright.ledger.Assessment;
import kitwright.mechanics.load.Break;

/**
 * An assessment worked out.
 *
 * @param rows every measure, asked or not, as designed and as built
 * @param inputs the values leaned on, with their sources
 * @param factors on strengths and moduli, a line each
 * @param load how the load came about, a line each
 * @param working how the figures came about, a part each
 * @param breaks where a cantilever with a weak link breaks, the first first
 * @param notes assumptions
 * @param cautions about what is no matter of strength, such as metals that mix badly
 * @param sketches of the sections, to scale
 */
public record Result(
    Assessment assessment,
    Verdict verdict,
    List<Row> rows,
    List<Input> inputs,
    List<String> factors,
    List<String> load,
    List<Working> working,
    List<Break> breaks,
    List<String> notes,
    List<String> cautions,
    List<Sketch> sketches) {
  public Result {
    rows = List.copyOf(rows);
    inputs = List.copyOf(inputs);
    factors = List.copyOf(factors);
    load = List.copyOf(load);
    working = List.copyOf(working);
    breaks = List.copyOf(breaks);
    notes = List.copyOf(notes);
    cautions = List.copyOf(cautions);
    sketches = List.copyOf(sketches);
  }

  /** A verdict without figures. */
  static Result without(Assessment assessment, Verdict verdict) {
    return new Result(
        assessment,
        verdict,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  /** The rows of which something is asked. */
  public List<Row> asked() {
    return rows.stream().filter(row -> row.limit().isPresent()).toList();
  }

  /** The row asked for that is nearest to its limit, or furthest beyond it. */
  public Optional<Row> tightest() {
    return asked().stream()
        .filter(row -> row.margin().isPresent())
        .min(java.util.Comparator.comparingDouble(row -> row.margin().getAsDouble()));
  }
}

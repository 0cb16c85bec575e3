package kitwright.assessment.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import kitwright.ledger.Assessment;
import kitwright.ledger.Assessment.Method;

/**
 * Panels that give so much that they stretch as well as bend: with a deflection above half the
 * thickness they are stiffer than is told, and pulled besides.
 *
 * @see "S. Timoshenko, S. Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., 1959, section 13
 *     (from memory)"
 */
public final class Slender {
  private static final double SMALL = 0.5;

  private Slender() {}

  public static List<String> cautions(Assessment assessment, List<Row> rows) {
    List<String> all = new ArrayList<>();
    if (assessment.method() == Method.PANEL) {
      caution("designed", Row::designed, rows).ifPresent(all::add);
      caution("built", Row::built, rows).ifPresent(all::add);
    }
    return all;
  }

  private static Optional<String> caution(
      String side, Function<Row, Optional<Figure>> of, List<Row> rows) {
    Optional<Double> deflection = value(Measure.DEFLECTION, of, rows);
    return value(Measure.THICKNESS, of, rows)
        .filter(thick -> deflection.filter(some -> some > SMALL * thick).isPresent())
        .map(
            thick ->
                "as "
                    + side
                    + " the panel gives "
                    + Print.with(deflection.orElseThrow(), "mm")
                    + ", more than half its "
                    + Print.with(thick, "mm")
                    + ": it stretches as well as bends, and these figures are of bending alone");
  }

  private static Optional<Double> value(
      Measure measure, Function<Row, Optional<Figure>> of, List<Row> rows) {
    return rows.stream()
        .filter(row -> row.measure() == measure)
        .findFirst()
        .flatMap(of)
        .map(Figure::value);
  }
}

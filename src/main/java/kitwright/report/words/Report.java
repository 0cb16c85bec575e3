package kitwright.report.words;

import java.util.List;
import java.util.function.Function;
import kitwright.ledger.Facts;

/**
 * A kind of document that a builder can ask for by name.
 *
 * @param name on the command line, which is its template's too
 * @param does what it tells, in a line
 * @param work makes its documents
 */
public record Report(String name, String does, Function<Facts, List<Sheet>> work) {
  /** Its documents: one, or one for each thing that it is about. */
  public List<Sheet> sheets(Facts now) {
    return work.apply(now);
  }
}

package kitwright.report.words;

import java.util.List;
import kitwright.ledger.Facts;

/** A kind of document that a builder can ask for by name. */
public interface Report {
  /** Its name on the command line, which is its template's too. */
  String name();

  /** What it tells, in a line. */
  String does();

  /** Its documents: one, or one for each thing that it is about. */
  List<Sheet> sheets(Facts now);
}

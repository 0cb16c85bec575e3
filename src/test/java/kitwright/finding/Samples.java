package kitwright.finding;

import java.util.List;
import kitwright.value.Place;

/** Invented findings for the renderers' tests. */
final class Samples {
  static final List<String> CRATE =
      List.of(
          "kit:",
          "  - id: larch-plank",
          "    what: Larch strip 18 x 45 mm",
          "    qty: 26 m",
          "deliveries:",
          "  - id: crate-3",
          "    counted:",
          "      - {item: larch-plank, qty: 20 m}");

  static final Finding SHORT =
      new Finding(
          "counted-short-unrecorded",
          Severity.STOP,
          new Place("crates/three.yaml", 8, 34, 8, 38),
          "20 m of larch-plank were counted, 26 m were promised, and no shortage is recorded.",
          "The starboard planking needs the missing 6 m on 14 May and will stand still.",
          "Record a shortage of 6 m, or correct the count.",
          List.of("kit larch-plank", "delivery crate-3"));

  static final Finding WHOLE =
      new Finding(
          "log-without-day",
          Severity.NOTE,
          Place.wholeFile("log/friday.md"),
          "The log says no day.",
          "Its hours count nowhere.",
          "Write the day at its top.",
          List.of());

  private Samples() {}

  static Finding at(String file, int line, int column, int endLine, int endColumn) {
    return new Finding(
        "sample-rule",
        Severity.WARN,
        new Place(file, line, column, endLine, endColumn),
        "Something is wrong.",
        "Something follows.",
        "Mend it.",
        List.of());
  }
}

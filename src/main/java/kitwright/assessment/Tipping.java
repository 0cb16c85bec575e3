package kitwright.assessment;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import kitwright.assessment.method.BeamLoad;
import kitwright.assessment.method.Sideways;
import kitwright.assessment.part.Part;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Row;
import kitwright.mechanics.beam.Bending;

/**
 * Beams that tip over sideways before they break: of them a moment beside a moment, or which of two
 * breaks first, says too little.
 *
 * @param load without the weight of any part, where one is stated
 */
record Tipping(Function<Part, Bending> bending, Optional<BeamLoad> load) {
  /** A moment that is asked, where the part as built may tip over sooner than as drawn. */
  void judge(Part drawn, Part made, List<Row> rows) {
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      boolean across = row.measure() == Measure.MOMENT_ACROSS;
      boolean along =
          row.measure() == Measure.MOMENT_SAGGING || row.measure() == Measure.MOMENT_HOGGING;
      if ((along || across) && row.limit().isPresent()) {
        int at = i;
        sooner(drawn, made, across).ifPresent(why -> rows.set(at, row.lacking(why)));
      }
    }
  }

  private Optional<String> sooner(Part drawn, Part made, boolean across) {
    Part one = across ? drawn.turned() : drawn;
    Part other = across ? made.turned() : made;
    return Sideways.sooner(
        one, bending.apply(one), other, bending.apply(other), across ? Optional.empty() : load);
  }

  /**
   * Why it is not told that a part outlasts another.
   *
   * @param margin how much more it bears where its side is held
   * @param asked the least of that
   */
  Optional<String> outlasts(Part kept, double margin, double asked) {
    return load.filter(any -> margin >= asked)
        .flatMap(some -> Sideways.outlasts(kept, bending.apply(kept), some, margin, asked));
  }
}

package kitwright.assessment;

import java.util.List;

/**
 * What a method makes of one part.
 *
 * @param figures by measure
 * @param working how they came about
 */
record Outcome(Figures figures, List<Working> working) {
  Outcome {
    working = List.copyOf(working);
  }

  static Outcome nothing() {
    return new Outcome(new Figures(), List.of());
  }
}

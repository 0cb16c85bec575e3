package kitwright.assessment;

import java.util.List;
import java.util.function.Supplier;

/**
 * What a method makes of one part.
 *
 * @param figures by measure
 * @param working how they came about, written down only when it is asked for
 */
record Outcome(Figures figures, Supplier<List<Working>> working) {
  static Outcome nothing() {
    return new Outcome(new Figures(), List::of);
  }
}

package kitwright.assessment.sheet;

import java.util.List;
import java.util.function.Supplier;

/**
 * What a method makes of one part.
 *
 * @param figures by measure
 * @param working how they came about, written down only when it is asked for
 */
public record Outcome(Figures figures, Supplier<List<Working>> working) {
  public static Outcome nothing() {
    return new Outcome(new Figures(), List::of);
  }
}

package kitwright.assessment.sheet;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * What a method makes of one part.
 *
 * @param figures by measure
 * @param working how they came about, written down only when it is asked for
 */
public record Outcome(Figures figures, Supplier<List<Working>> working) {
  /** The same with more to write down. */
  public Outcome with(Working more) {
    return new Outcome(
        figures, () -> Stream.concat(working.get().stream(), Stream.of(more)).toList());
  }

  public static Outcome nothing() {
    return new Outcome(new Figures(), List::of);
  }
}

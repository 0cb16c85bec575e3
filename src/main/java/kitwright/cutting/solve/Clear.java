package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The sound stretches between the trimmed ends and the defects of a piece. */
final class Clear {
  private Clear() {}

  /**
   * From end to end, leaving out what is trimmed and what is spoilt. A defect counts as at least
   * one kerf wide: the cut that parts its two sides has to go somewhere.
   */
  static List<Span> stretches(long length, long trim, List<Span> defects, long kerf) {
    List<Span> clear = new ArrayList<>();
    long from = trim;
    long end = length - trim;
    for (Span bad : defects.stream().sorted(Comparator.comparingLong(Span::from)).toList()) {
      if (Math.min(bad.from(), end) > from) {
        clear.add(new Span(from, Math.min(bad.from(), end)));
      }
      from = Math.max(from, Math.max(bad.to(), bad.from() + kerf));
    }
    if (end > from) {
      clear.add(new Span(from, end));
    }
    return List.copyOf(clear);
  }
}

package kitwright.cutting.solve;

import java.util.List;

/** How many of a part a plan makes. */
final class Made {
  private Made() {}

  static int of(String mark, int wanted, List<Shortfall> missing) {
    return wanted
        - missing.stream()
            .filter(each -> each.mark().equals(mark))
            .mapToInt(Shortfall::missing)
            .sum();
  }
}

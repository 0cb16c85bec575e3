package kitwright.cutting.solve;

import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * The most that a rectangle can be worth by any straight cuts from edge to edge, however many in a
 * row (the recursion of Gilmore and Gomory, Operations Research 14 (1966) 1045-1074). Lengths are
 * counted in steps of the rectangle, parts rounded down to them, and a part may come as often as
 * there is room: so nothing can be worth more, but perhaps nothing as much.
 */
final class AnyParting {
  private static final int STEPS = 160;

  private final List<PanelType.Lie> lies;
  private final long[] worth;
  private final PanelSaw saw;
  private final Work work;

  AnyParting(
      Map<Run, List<PanelType.Lie>> byRun, long[] worth, int[] left, PanelSaw saw, Work work) {
    this.lies =
        byRun.values().stream()
            .flatMap(List::stream)
            .filter(lie -> worth[lie.type()] > 0 && left[lie.type()] > 0)
            .toList();
    this.worth = worth;
    this.saw = saw;
    this.work = work;
  }

  /** No way of cutting that rectangle is worth more. */
  long most(Area area) {
    long length = area.length() + saw.crossKerf();
    long width = area.width() + saw.ripKerf();
    int n = (int) Math.min(STEPS, length);
    int m = (int) Math.min(STEPS, width);
    long[][] most = new long[n + 1][m + 1];
    for (PanelType.Lie lie : lies) {
      long along = (lie.run() == Run.ALONG ? lie.down() : lie.over()) + saw.crossKerf();
      long across = (lie.run() == Run.ALONG ? lie.over() : lie.down()) + saw.ripKerf();
      if (along <= length && across <= width) {
        int i = (int) (along * n / length);
        int j = (int) (across * m / width);
        most[i][j] = Math.max(most[i][j], worth[lie.type()]);
      }
    }
    part(most, n, m);
    return most[n][m];
  }

  private void part(long[][] most, int n, int m) {
    // A part of no whole step on one side could lie there any number of times.
    if (Arrays.stream(most[0]).anyMatch(w -> w > 0)
        || Arrays.stream(most).anyMatch(row -> row[0] > 0)) {
      most[n][m] = Long.MAX_VALUE / 4;
      return;
    }
    for (int i = 1; i <= n; i++) {
      for (int j = 1; j <= m; j++) {
        long best = Math.max(most[i][j], Math.max(most[i - 1][j], most[i][j - 1]));
        for (int a = 1; a <= i / 2; a++) {
          best = Math.max(best, most[a][j] + most[i - a][j]);
        }
        for (int b = 1; b <= j / 2; b++) {
          best = Math.max(best, most[i][b] + most[i][j - b]);
        }
        most[i][j] = best;
      }
    }
    work.spend((long) n * m * (n + m) / 4);
  }
}

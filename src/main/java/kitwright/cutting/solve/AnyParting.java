package kitwright.cutting.solve;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * The most that a rectangle can be worth by any straight cuts from edge to edge, however many in a
 * row (the recursion of Gilmore and Gomory, Operations Research 14 (1966) 1045-1074). A part may
 * come as often as there is room, and where there are many sizes lengths are counted in steps,
 * parts rounded down to them: so nothing can be worth more, but perhaps nothing as much.
 */
final class AnyParting {
  private static final int STEPS = 180;

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
    long[] x = points(lies.stream().mapToLong(this::along).toArray(), length);
    long[] y = points(lies.stream().mapToLong(this::across).toArray(), width);
    return x.length == 0 || y.length == 0 ? Long.MAX_VALUE / 4 : most(x, y, length, width);
  }

  private long along(PanelType.Lie lie) {
    return (lie.run() == Run.ALONG ? lie.down() : lie.over()) + saw.crossKerf();
  }

  private long across(PanelType.Lie lie) {
    return (lie.run() == Run.ALONG ? lie.over() : lie.down()) + saw.ripKerf();
  }

  /**
   * Where cuts are worth trying: at sums of parts (Herz, IBM Journal 16 (1972) 462-469), or, where
   * those are too many, in even steps. Empty where a part is smaller than such a step.
   */
  private static long[] points(long[] sizes, long room) {
    TreeSet<Long> sums = new TreeSet<>(List.of(0L));
    long[] each = Arrays.stream(sizes).distinct().sorted().toArray();
    for (Long at = 0L; at != null && sums.size() <= STEPS; at = sums.higher(at)) {
      for (long size : each) {
        if (at + size <= room) {
          sums.add(at + size);
        }
      }
    }
    if (sums.size() <= STEPS) {
      return sums.stream().mapToLong(n -> n).toArray();
    }
    long least = each.length == 0 ? room : each[0];
    return least * STEPS < room
        ? new long[0]
        : IntStream.rangeClosed(0, STEPS).mapToLong(i -> (room * i + STEPS - 1) / STEPS).toArray();
  }

  private long most(long[] x, long[] y, long length, long width) {
    long[][] most = new long[x.length][y.length];
    for (PanelType.Lie lie : lies) {
      if (along(lie) <= length && across(lie) <= width) {
        int i = below(x, along(lie));
        int j = below(y, across(lie));
        most[i][j] = Math.max(most[i][j], worth[lie.type()]);
      }
    }
    int[][] restX = rests(x);
    int[][] restY = rests(y);
    for (int i = 1; i < x.length; i++) {
      for (int j = 1; j < y.length; j++) {
        long best = Math.max(most[i][j], Math.max(most[i - 1][j], most[i][j - 1]));
        for (int a = 1; a < i && 2 * x[a] <= x[i] + 2; a++) {
          best = Math.max(best, most[a][j] + most[restX[i][a]][j]);
        }
        for (int b = 1; b < j && 2 * y[b] <= y[j] + 2; b++) {
          best = Math.max(best, most[i][b] + most[i][restY[j][b]]);
        }
        most[i][j] = best;
      }
    }
    work.spend((long) x.length * y.length * (x.length + y.length) / 4);
    return most[x.length - 1][y.length - 1];
  }

  /** Beyond each point the room up to each larger one, as the point that it reaches. */
  private static int[][] rests(long[] points) {
    int[][] rests = new int[points.length][points.length];
    boolean even = isEven(points);
    for (int i = 0; i < points.length; i++) {
      for (int a = 0; a <= i; a++) {
        rests[i][a] = even ? i - a : below(points, points[i] - points[a]);
      }
    }
    return rests;
  }

  /** Whether they are steps, whose rounding must not add up. */
  private static boolean isEven(long[] points) {
    return points.length == STEPS + 1;
  }

  private static int below(long[] points, long at) {
    int found = Arrays.binarySearch(points, at);
    return found >= 0 ? found : -found - 2;
  }
}

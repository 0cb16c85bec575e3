package kitwright.cutting.solve;

import java.util.Arrays;

/**
 * The bare problem: so many of each type of part, at most so many of each kind of stock, least
 * cost. A part left unmade costs its penalty.
 */
final class Cover {
  final int[] demand;
  final int[] stock;
  final long[] cost;
  final long[] penalty;

  /** Every total is a multiple of this, so a bound may be rounded up to one. */
  final long grain;

  /** Worth is counted in fractions of a unit of cost: this many to one. */
  final long scale;

  Cover(int[] demand, int[] stock, long[] cost, long[] penalty) {
    this.demand = demand.clone();
    this.stock = stock.clone();
    this.cost = cost.clone();
    this.penalty = penalty.clone();
    this.grain = Math.max(1, gcd(gcd(0, cost), penalty));
    this.scale = scale(demand, penalty);
  }

  /** The same with other demand and stock. */
  Cover with(int[] otherDemand, int[] otherStock) {
    return new Cover(otherDemand, otherStock, cost, penalty);
  }

  int types() {
    return demand.length;
  }

  int kinds() {
    return stock.length;
  }

  /** The dearest total there can be if every piece of stock is used. */
  static long ceiling(int[] stock, long[] cost) {
    long sum = 0;
    for (int s = 0; s < stock.length; s++) {
      sum += stock[s] * cost[s];
    }
    return sum;
  }

  long roundUp(long total) {
    return -Math.floorDiv(-total, grain) * grain;
  }

  long unmade(int[] left) {
    long sum = 0;
    for (int i = 0; i < left.length; i++) {
      sum += left[i] * penalty[i];
    }
    return sum;
  }

  private static long gcd(long start, long[] values) {
    return Arrays.stream(values).reduce(start, Cover::gcd);
  }

  private static long gcd(long a, long b) {
    return b == 0 ? Math.abs(a) : gcd(b, a % b);
  }

  private static long scale(int[] demand, long[] penalty) {
    double most = 1;
    for (int i = 0; i < demand.length; i++) {
      most += (double) demand[i] * penalty[i];
    }
    long scale = 1;
    while (scale < (1L << 24) && most * scale * 4 < 0x1p61) {
      scale <<= 1;
    }
    return scale;
  }
}

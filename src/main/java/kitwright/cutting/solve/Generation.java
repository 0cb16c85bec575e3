package kitwright.cutting.solve;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Column generation (Gilmore and Gomory, Operations Research 9 (1961) 849-859): the linear program
 * over all ways of cutting, built up from the few that matter.
 */
final class Generation<L> {
  private final Cover cover;
  private final Pricing<L> pricing;
  private final Work work;
  private final List<Column<L>> pool = new ArrayList<>();
  private final Set<String> known = new HashSet<>();

  Generation(Cover cover, Pricing<L> pricing, Work work) {
    this.cover = cover;
    this.pricing = pricing;
    this.work = work;
  }

  /** Remembers a way of cutting for all later programs. */
  void learn(Column<L> column) {
    if (known.add(column.key())) {
      pool.add(column);
    }
  }

  /** All ways of cutting remembered so far. */
  List<Column<L>> known() {
    return List.copyOf(pool);
  }

  /**
   * The relaxation at a node.
   *
   * @param target a bound from here on is enough, the node is then known to be no better
   */
  Relaxed<L> relax(Node<L> node, long target) {
    List<Column<L>> columns = new ArrayList<>();
    Set<String> here = new HashSet<>();
    for (Column<L> column : pool) {
      keep(column, node, columns, here);
    }
    long bound = 0;
    while (true) {
      Master master = Master.solve(cover, node, columns, work);
      if (work.isOver()) {
        return new Relaxed<>(bound, columns, master);
      }
      long[] worth = whole(master.worth);
      Offers<L> offers = pricing.offers(worth, floor(master), node, work);
      if (offers.complete()) {
        bound = Math.max(bound, bound(worth, node, offers));
      }
      boolean settled = bound >= target || bound >= cover.roundUp((long) (master.total + 0.999999));
      if (settled || !grow(offers, node, columns, here)) {
        return new Relaxed<>(bound, columns, master);
      }
    }
  }

  private boolean grow(Offers<L> offers, Node<L> node, List<Column<L>> columns, Set<String> here) {
    int before = columns.size();
    for (Column<L> column : offers.best()) {
      learn(column);
      keep(column, node, columns, here);
    }
    return columns.size() > before;
  }

  private void keep(Column<L> column, Node<L> node, List<Column<L>> columns, Set<String> here) {
    if (node.stock[column.kind] == 0) {
      return;
    }
    Column<L> clipped = column.clipped(node.left);
    if (!clipped.makesNothing() && !node.bans(clipped) && here.add(clipped.key())) {
      columns.add(clipped);
    }
  }

  /** A way of cutting must be worth more than its stock costs and saves elsewhere. */
  private long[] floor(Master master) {
    long[] floor = new long[cover.kinds()];
    for (int s = 0; s < floor.length; s++) {
      floor[s] = cover.cost[s] * cover.scale + (long) Math.ceil(master.saving[s] * cover.scale);
    }
    return floor;
  }

  private long[] whole(double[] worth) {
    long[] whole = new long[worth.length];
    for (int i = 0; i < worth.length; i++) {
      double scaled = Math.min(worth[i], (double) cover.penalty[i]) * cover.scale;
      whole[i] = Math.min((long) scaled, cover.penalty[i] * cover.scale);
    }
    return whole;
  }

  /**
   * Weak duality in whole numbers, so the bound holds whatever the linear program's rounding: all
   * parts' worth, less what the limited stock could yield above its cost. Where that is poor
   * because the worths are still too high, they are lowered in proportion (Farley, Operations
   * Research 38 (1990) 922-923).
   */
  private long bound(long[] worth, Node<L> node, Offers<L> offers) {
    BigInteger all = BigInteger.ZERO;
    for (int i = 0; i < worth.length; i++) {
      all = all.add(product(worth[i], node.left[i]));
    }
    BigInteger gain = BigInteger.ZERO;
    BigInteger lowered = all;
    for (int s = 0; s < cover.kinds(); s++) {
      long most = offers.most().get(s);
      long cost = cover.cost[s] * cover.scale;
      if (node.stock[s] > 0 && most > cost) {
        gain = gain.add(product(most - cost, node.stock[s]));
        lowered =
            lowered.min(all.multiply(BigInteger.valueOf(cost)).divide(BigInteger.valueOf(most)));
      }
    }
    BigInteger scaled = all.subtract(gain).max(lowered).max(BigInteger.ZERO);
    BigInteger[] parts = scaled.divideAndRemainder(BigInteger.valueOf(cover.scale));
    long up = parts[0].longValueExact() + (parts[1].signum() > 0 ? 1 : 0);
    return roundedFrom(up, node);
  }

  private long roundedFrom(long rest, Node<L> node) {
    return cover.roundUp(node.spent + rest) - node.spent;
  }

  private static BigInteger product(long a, long b) {
    return BigInteger.valueOf(a).multiply(BigInteger.valueOf(b));
  }
}

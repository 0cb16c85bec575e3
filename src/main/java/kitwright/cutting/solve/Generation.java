package kitwright.cutting.solve;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Column generation (Gilmore and Gomory, Operations Research 9 (1961) 849-859): the linear program
 * over all ways of cutting, built up from the few that matter.
 */
final class Generation<L> {
  /** Where finding the best way takes more steps than this, the last fraction is not hunted for. */
  private static final long DEAR = 4_000_000;

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
  Relaxed<L> relax(Node<L> node, long target, Care care) {
    Master<L> master = new Master<>(cover, node, work);
    pool.forEach(master::add);
    long bound = owed(node);
    while (true) {
      master.solve();
      if (work.isOver()) {
        return new Relaxed<>(bound, master);
      }
      long[] worth = worth(master);
      long[] floor = floor(master);
      Optional<List<Column<L>>> rough = pricing.rough(worth, floor, node, care, work);
      if (grow(rough.orElse(List.of()), master)) {
        continue;
      }
      if (rough.isPresent() && care == Care.ROUGH) {
        return new Relaxed<>(bound, master);
      }
      long before = work.spent();
      Offers<L> offers = pricing.offers(worth, floor, node, work);
      boolean isDear = work.spent() - before > DEAR;
      if (offers.complete()) {
        bound = Math.max(bound, bound(worth, node, offers));
      }
      double total = master.total() * (isDear ? 1 - 1e-4 : 1);
      long highest = cover.roundUp((long) (total + 0.999999));
      if (bound >= target || bound >= highest) {
        return new Relaxed<>(bound, master);
      }
      if (!grow(offers.best(), master)) {
        return new Relaxed<>(offers.complete() ? bound : limited(bound, worth, node), master);
      }
    }
  }

  /** The bound where the pricing did not try every way. */
  private long limited(long known, long[] worth, Node<L> node) {
    return pricing
        .limits(worth, node, work)
        .map(most -> bound(worth, node, new Offers<>(true, most, List.of())))
        .map(bound -> Math.max(known, bound))
        .orElse(known);
  }

  /** What must be used anyhow. */
  private long owed(Node<L> node) {
    long sum = 0;
    for (int s = 0; s < cover.kinds(); s++) {
      sum += node.owed[s] * cover.cost[s];
    }
    return sum;
  }

  private boolean grow(List<Column<L>> found, Master<L> master) {
    boolean grown = false;
    for (Column<L> column : found) {
      learn(column);
      grown |= master.add(column);
    }
    return grown;
  }

  /** A way of cutting must be worth more than its stock costs and saves elsewhere. */
  private long[] floor(Master<L> master) {
    long[] floor = new long[cover.kinds()];
    for (int s = 0; s < floor.length; s++) {
      long own = cover.cost[s] * cover.scale + (long) Math.ceil(master.saving(s) * cover.scale);
      floor[s] = Math.max(0, own);
    }
    return floor;
  }

  private long[] worth(Master<L> master) {
    long[] worth = new long[cover.types()];
    for (int i = 0; i < worth.length; i++) {
      double scaled = Math.min(master.worth(i), (double) cover.penalty[i]) * cover.scale;
      worth[i] = Math.min((long) scaled, cover.penalty[i] * cover.scale);
    }
    return worth;
  }

  /**
   * Weak duality in whole numbers, so the bound holds whatever the linear program's rounding: all
   * parts' worth, less what the stock that may or must be used could yield above its cost. Where
   * that is poor because the worths are still too high, they are lowered in proportion, as far as
   * serves (after Farley, Operations Research 38 (1990) 922-923).
   */
  private long bound(long[] worth, Node<L> node, Offers<L> offers) {
    BigInteger one = BigInteger.valueOf(cover.scale);
    long best = bound(worth, node, offers, one, one);
    for (int s = 0; s < cover.kinds(); s++) {
      long most = offers.most().get(s);
      long cost = cover.cost[s] * cover.scale;
      if (node.stock[s] > 0 && most > cost) {
        BigInteger lowered = BigInteger.valueOf(cost);
        best = Math.max(best, bound(worth, node, offers, lowered, BigInteger.valueOf(most)));
      }
    }
    return cover.roundUp(node.spent + best) - node.spent;
  }

  /** The bound with all worths multiplied by {@code times / over}. */
  private long bound(
      long[] worth, Node<L> node, Offers<L> offers, BigInteger times, BigInteger over) {
    BigInteger all = BigInteger.ZERO;
    for (int i = 0; i < worth.length; i++) {
      all = all.add(product(worth[i], node.left[i]));
    }
    BigInteger sum = all.multiply(times);
    for (int s = 0; s < cover.kinds(); s++) {
      BigInteger most = BigInteger.valueOf(offers.most().get(s)).multiply(times);
      BigInteger gain = most.subtract(product(cover.cost[s], cover.scale).multiply(over));
      // Where more of the kind only costs, no more than is owed is used.
      int pieces = gain.signum() > 0 ? node.stock[s] : node.owed[s];
      sum = sum.subtract(gain.multiply(BigInteger.valueOf(pieces)));
    }
    BigInteger unit = over.multiply(BigInteger.valueOf(cover.scale));
    BigInteger[] parts = sum.max(BigInteger.ZERO).divideAndRemainder(unit);
    return parts[0].longValueExact() + (parts[1].signum() > 0 ? 1 : 0);
  }

  private static BigInteger product(long a, long b) {
    return BigInteger.valueOf(a).multiply(BigInteger.valueOf(b));
  }
}

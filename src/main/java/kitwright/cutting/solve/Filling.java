package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Plans made piece after piece, each time the way of cutting that is worth most for its cost. Parts
 * that went badly are worth more in the next round (sequential value correction: Belov and
 * Scheithauer, OR Spectrum 29 (2007) 733-749).
 */
final class Filling<L> {
  private static final int ROUNDS = 12;

  private final Cover cover;
  private final Pricing<L> pricing;
  private final Work work;

  Filling(Cover cover, Pricing<L> pricing, Work work) {
    this.cover = cover;
    this.pricing = pricing;
    this.work = work;
  }

  /** Several plans, each from corrected worths. */
  List<Node<L>> plans(Node<L> start, long mostSteps) {
    List<Node<L>> plans = new ArrayList<>();
    long[] worth = firstWorth();
    for (int round = 0; round < ROUNDS && work.spent() < mostSteps; round++) {
      plans.add(fill(start, worth));
    }
    return plans;
  }

  /** One plan for the rest of a node. */
  Node<L> quick(Node<L> start) {
    return fill(start, firstWorth());
  }

  private long[] firstWorth() {
    boolean stockIsFree = Arrays.stream(cover.cost).allMatch(c -> c == 0);
    long[] size = pricing.size();
    long[] worth = new long[size.length];
    for (int i = 0; i < size.length; i++) {
      worth[i] = stockIsFree ? cover.penalty[i] : (long) (1000 * Math.pow((double) size[i], 1.02));
    }
    return worth;
  }

  private Node<L> fill(Node<L> start, long[] worth) {
    Node<L> node = start.withoutBans();
    double cheapest = Double.MAX_VALUE;
    while (!node.isDone() && !work.isOver()) {
      Offers<L> offers =
          pricing.offers(wanted(worth, node.left), new long[cover.kinds()], node, work);
      Optional<Column<L>> chosen = bestForCost(offers, node, worth);
      if (chosen.isEmpty()) {
        break;
      }
      Column<L> column = chosen.get();
      double size = column.worth(pricing.size());
      double price = (cover.cost[column.kind] + 1e-3) / size;
      cheapest = Math.min(cheapest, price);
      correct(worth, column, price / cheapest);
      node = node.use(column, column.times(node.left, node.stock[column.kind]), cover);
    }
    return node;
  }

  private static long[] wanted(long[] worth, int[] left) {
    long[] wanted = new long[worth.length];
    for (int i = 0; i < worth.length; i++) {
      wanted[i] = left[i] > 0 ? worth[i] : 0;
    }
    return wanted;
  }

  private Optional<Column<L>> bestForCost(Offers<L> offers, Node<L> node, long[] worth) {
    Optional<Column<L>> best = Optional.empty();
    double most = 0;
    for (Column<L> column : offers.best()) {
      Column<L> useful = column.clipped(node.left);
      double worthThen = useful.worth(worth);
      double perCost = worthThen / (cover.cost[column.kind] + 1e-3);
      if (node.stock[column.kind] > 0 && perCost > most * (1 + 1e-12)) {
        most = perCost;
        best = Optional.of(useful);
      }
    }
    return best;
  }

  private void correct(long[] worth, Column<L> column, double dearness) {
    long[] first = firstWorth();
    for (int i = 0; i < worth.length; i++) {
      if (column.made[i] > 0) {
        worth[i] = (long) (0.6 * worth[i] + 0.4 * first[i] * dearness);
      }
    }
  }
}

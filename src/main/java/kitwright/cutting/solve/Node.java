package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Some stock already cut, and what is left to do; some ways of cutting ruled out. */
final class Node<L> {
  private record Link<T>(T column, int times, @Nullable Link<T> before) {}

  final int[] left;
  final int[] stock;
  final long spent;
  private final @Nullable Link<Column<L>> uses;
  private final @Nullable Link<Column<L>> bans;

  private Node(
      int[] left,
      int[] stock,
      long spent,
      @Nullable Link<Column<L>> uses,
      @Nullable Link<Column<L>> bans) {
    this.left = left;
    this.stock = stock;
    this.spent = spent;
    this.uses = uses;
    this.bans = bans;
  }

  static <L> Node<L> start(Cover cover) {
    return new Node<>(cover.demand.clone(), cover.stock.clone(), 0, null, null);
  }

  Node<L> use(Column<L> column, int times, Cover cover) {
    int[] less = left.clone();
    for (int i = 0; i < less.length; i++) {
      less[i] = Math.max(0, less[i] - column.made[i] * times);
    }
    int[] fewer = stock.clone();
    fewer[column.kind] -= times;
    long cost = spent + cover.cost[column.kind] * times;
    return new Node<>(less, fewer, cost, new Link<>(column, times, uses), bans);
  }

  /** From here on no piece of that kind is cut into that, nor into a part of that. */
  Node<L> ban(Column<L> column) {
    return new Node<>(left, stock, spent, uses, new Link<>(column, 1, bans));
  }

  Node<L> withoutBans() {
    return new Node<>(left, stock, spent, uses, null);
  }

  boolean bans(Column<L> column) {
    for (Link<Column<L>> ban = bans; ban != null; ban = ban.before()) {
      if (column.isWithin(ban.column())) {
        return true;
      }
    }
    return false;
  }

  boolean hasBans() {
    return bans != null;
  }

  boolean isDone() {
    for (int n : left) {
      if (n > 0) {
        return false;
      }
    }
    return true;
  }

  long total(Cover cover) {
    return spent + cover.unmade(left);
  }

  /** One entry for each piece of stock used, in the order in which they were chosen. */
  List<Column<L>> columns() {
    List<Column<L>> all = new ArrayList<>();
    for (Link<Column<L>> use = uses; use != null; use = use.before()) {
      for (int i = 0; i < use.times(); i++) {
        all.add(use.column());
      }
    }
    Collections.reverse(all);
    return all;
  }
}

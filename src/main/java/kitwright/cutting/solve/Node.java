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

  /** So many of each kind are still to be used. */
  final int[] owed;

  final long spent;
  private final @Nullable Link<Column<L>> uses;
  private final @Nullable Link<Column<L>> bans;

  private Node(
      int[] left,
      int[] stock,
      int[] owed,
      long spent,
      @Nullable Link<Column<L>> uses,
      @Nullable Link<Column<L>> bans) {
    this.left = left;
    this.stock = stock;
    this.owed = owed;
    this.spent = spent;
    this.uses = uses;
    this.bans = bans;
  }

  static <L> Node<L> start(Cover cover) {
    return new Node<>(
        cover.demand.clone(), cover.stock.clone(), new int[cover.kinds()], 0, null, null);
  }

  Node<L> use(Column<L> column, int times, Cover cover) {
    int[] less = left.clone();
    for (int i = 0; i < less.length; i++) {
      less[i] = Math.max(0, less[i] - column.made[i] * times);
    }
    int[] fewer = stock.clone();
    fewer[column.kind] -= times;
    int[] owing = owed.clone();
    owing[column.kind] = Math.max(0, owing[column.kind] - times);
    long cost = spent + cover.cost[column.kind] * times;
    return new Node<>(less, fewer, owing, cost, new Link<>(column, times, uses), bans);
  }

  /** From here on at most so many of a kind. */
  Node<L> atMost(int kind, int most) {
    int[] fewer = stock.clone();
    fewer[kind] = Math.min(fewer[kind], most);
    return new Node<>(left, fewer, owed, spent, uses, bans);
  }

  /** From here on at least so many of a kind. */
  Node<L> atLeast(int kind, int least) {
    int[] owing = owed.clone();
    owing[kind] = Math.max(owing[kind], least);
    return new Node<>(left, stock, owing, spent, uses, bans);
  }

  /** From here on no piece of that kind is cut into that, nor into a part of that. */
  Node<L> ban(Column<L> column) {
    return new Node<>(left, stock, owed, spent, uses, new Link<>(column, 1, bans));
  }

  Node<L> withoutBans() {
    return new Node<>(left, stock, owed, spent, uses, null);
  }

  boolean bans(Column<L> column) {
    for (Link<Column<L>> ban = bans; ban != null; ban = ban.before()) {
      if (column.isWithin(ban.column())) {
        return true;
      }
    }
    return false;
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

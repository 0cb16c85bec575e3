package kitwright.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.cutting.solve.Joint;
import kitwright.ledger.Cut;

/** What is ordered from the saw where panels are cut: whole parts, and lengths to be joined. */
record Pieces(List<Order> orders) {
  /**
   * Like pieces.
   *
   * @param firstCopy the first part of that mark they are for
   * @param qty so many parts from there
   * @param piece which length of the part, from 1
   */
  record Order(
      Cut.Part part, int firstCopy, int qty, int piece, int of, long length, Optional<Long> width) {
    /** Its name in the search. */
    String name() {
      return of == 1 && firstCopy == 1
          ? part.mark()
          : part.mark() + " " + firstCopy + "/" + piece + "/" + of;
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Order that
          && part.at().equals(that.part.at())
          && firstCopy == that.firstCopy
          && qty == that.qty
          && piece == that.piece
          && of == that.of
          && length == that.length
          && width.equals(that.width);
    }

    @Override
    public int hashCode() {
      int hash = part.at().hashCode();
      hash = 31 * hash + firstCopy;
      hash = 31 * hash + qty;
      hash = 31 * hash + piece;
      hash = 31 * hash + of;
      hash = 31 * hash + Long.hashCode(length);
      hash = 31 * hash + width.hashCode();
      return hash;
    }
  }

  Pieces {
    orders = List.copyOf(orders);
  }

  /** Parts too long to come whole in lengths as long as there are. */
  static Pieces longest(Wanted wanted) {
    return of(wanted, false);
  }

  /** In lengths of about one size. */
  static Pieces even(Wanted wanted) {
    return of(wanted, true);
  }

  private static Pieces of(Wanted wanted, boolean even) {
    List<Order> orders = new ArrayList<>();
    for (Cut.Part part : wanted.parts()) {
      long most = longest(part, wanted);
      boolean whole = Sawn.length(part) <= most || wanted.joint(part).isEmpty();
      List<Long> lengths =
          whole ? List.of(Sawn.length(part)) : lengths(part, wanted.joint(part).get(), most, even);
      add(part, 1, part.qty(), lengths, orders);
    }
    return new Pieces(orders);
  }

  /** As for whole parts; but those that were missing in two lengths. */
  static Pieces joining(Wanted wanted, Map<String, Integer> missing) {
    List<Order> orders = new ArrayList<>();
    for (Cut.Part part : wanted.parts()) {
      long most = longest(part, wanted);
      long length = Sawn.length(part);
      int lacking = wanted.joint(part).isPresent() ? missing.getOrDefault(part.mark(), 0) : 0;
      if (length > most && wanted.joint(part).isPresent()) {
        add(part, 1, part.qty(), lengths(part, wanted.joint(part).get(), most, false), orders);
        continue;
      }
      add(part, 1, part.qty() - lacking, List.of(length), orders);
      if (lacking > 0) {
        Joint joint = wanted.joint(part).orElseThrow();
        long half = (length + joint.loss() + 1) / 2;
        boolean longEnough =
            half >= joint.shortest() && length + joint.loss() - half >= joint.shortest();
        List<Long> two = longEnough ? List.of(half, length + joint.loss() - half) : List.of(length);
        add(part, part.qty() - lacking + 1, lacking, two, orders);
      }
    }
    return new Pieces(orders);
  }

  private static void add(
      Cut.Part part, int firstCopy, int qty, List<Long> lengths, List<Order> orders) {
    for (int i = 0; qty > 0 && i < lengths.size(); i++) {
      orders.add(
          new Order(part, firstCopy, qty, i + 1, lengths.size(), lengths.get(i), Sawn.width(part)));
    }
  }

  private static long longest(Cut.Part part, Wanted wanted) {
    return wanted.stock().stream()
        .filter(free -> wanted.suits(part).containsKey(free.stock().id()))
        .mapToLong(free -> Clearance.of(free.stock(), wanted.cut()).longest())
        .max()
        .orElse(0);
  }

  private static List<Long> lengths(Cut.Part part, Joint joint, long most, boolean even) {
    long length = Sawn.length(part);
    if (most < joint.shortest()) {
      return List.of(length);
    }
    long gain = most - joint.loss();
    int pieces = (int) ((length - joint.loss() + gain - 1) / gain);
    long all = length + (pieces - 1) * joint.loss();
    List<Long> lengths = new ArrayList<>();
    for (int i = 0; i < pieces; i++) {
      long rest = all - lengths.stream().mapToLong(n -> n).sum();
      long least = joint.shortest() * (pieces - 1 - i);
      long next = even ? (rest + pieces - 1 - i) / (pieces - i) : Math.min(most, rest - least);
      lengths.add(i == pieces - 1 ? rest : next);
    }
    return lengths;
  }

  Order order(String name) {
    return orders.stream().filter(each -> each.name().equals(name)).findFirst().orElseThrow();
  }
}

package kitwright.cutting.solve;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.stream.IntStream;

/** Stock being cut: what lies in each clear stretch, and what room is left. */
final class BarBench {

  /** A piece that is to be cut, of a certain order and copy. */
  record Due(BarOrder order, int copy) {
    long length() {
      return order.length();
    }
  }

  /** One clear stretch of one piece of stock. */
  static final class Stretch {
    final BarKind kind;
    final Span span;
    final List<Due> pieces = new ArrayList<>();
    private final long kerf;

    Stretch(BarKind kind, Span span, long kerf) {
      this.kind = kind;
      this.span = span;
      this.kerf = kerf;
    }

    /** How long a piece can still be cut here. */
    long room() {
      long taken = pieces.stream().mapToLong(d -> d.length() + kerf).sum();
      return span.length() - taken;
    }

    List<BarPiece> laid(List<BarPart> parts) {
      List<BarPiece> laid = new ArrayList<>();
      long at = span.from();
      for (Due due : pieces) {
        BarOrder order = due.order();
        String mark = parts.get(order.part()).mark();
        laid.add(new BarPiece(mark, due.copy(), order.piece(), order.of(), at, due.length()));
        at += due.length() + kerf;
      }
      return laid;
    }
  }

  /** One piece of stock. */
  record Piece(int kind, List<Stretch> stretches) {
    boolean isWhole() {
      return stretches.stream().allMatch(s -> s.pieces.isEmpty());
    }

    long longestPart() {
      return stretches.stream()
          .flatMap(s -> s.pieces.stream())
          .mapToLong(Due::length)
          .max()
          .orElse(0);
    }
  }

  private final BarTask task;
  private final List<BarKind> kinds;
  final List<Piece> pieces = new ArrayList<>();

  BarBench(BarTask task, List<BarKind> kinds) {
    this.task = task;
    this.kinds = kinds;
  }

  /** Cuts what a solution says, as long as each type is wanted. */
  void lay(BarModel model, BarSolution solution) {
    int[] demand = model.demand();
    List<Deque<Due>> queues = new ArrayList<>();
    for (int type = 0; type < demand.length; type++) {
      Deque<Due> queue = new ArrayDeque<>();
      for (BarOrder order : model.orders(type)) {
        for (int n = 0; n < order.qty(); n++) {
          queue.add(new Due(order, order.copy() + n));
        }
      }
      queues.add(queue);
    }
    for (BarCut cut : solution.cuts()) {
      Piece piece = fetch(cut.kind());
      for (int c = 0; c < cut.stretches().size(); c++) {
        for (int type : cut.stretches().get(c)) {
          if (!queues.get(type).isEmpty()) {
            piece.stretches().get(c).pieces.add(queues.get(type).remove());
          }
        }
      }
    }
  }

  /** For each part the copies that are not complete; what there is of them is not cut after all. */
  List<List<Integer>> takeAwayIncomplete() {
    List<int[]> found = task.parts().stream().map(part -> new int[part.qty() + 1]).toList();
    for (Stretch stretch : stretches()) {
      stretch.pieces.forEach(due -> found.get(due.order().part())[due.copy()]++);
    }
    for (Stretch stretch : stretches()) {
      stretch.pieces.removeIf(due -> found.get(due.order().part())[due.copy()] < due.order().of());
    }
    List<int[]> kept = task.parts().stream().map(part -> new int[part.qty() + 1]).toList();
    for (Stretch stretch : stretches()) {
      stretch.pieces.forEach(due -> kept.get(due.order().part())[due.copy()]++);
    }
    return kept.stream()
        .map(
            copies ->
                IntStream.range(1, copies.length).filter(c -> copies[c] == 0).boxed().toList())
        .toList();
  }

  /** Every stretch of every piece on the bench. */
  List<Stretch> stretches() {
    return pieces.stream().flatMap(p -> p.stretches().stream()).toList();
  }

  /** Every stretch that a part may come from. */
  List<Stretch> stretches(int part) {
    return stretches().stream().filter(s -> s.kind.allows(part)).toList();
  }

  boolean hasJoints() {
    return pieces.stream()
        .flatMap(p -> p.stretches().stream())
        .flatMap(s -> s.pieces.stream())
        .anyMatch(due -> due.order().of() > 1);
  }

  /**
   * Fetches the piece for a part that is cheapest by length of those still in the rack; none where
   * there is none.
   */
  List<Stretch> fetchCheapest(int part) {
    int[] left = kinds.stream().mapToInt(BarKind::count).toArray();
    pieces.forEach(piece -> left[piece.kind()]--);
    return IntStream.range(0, left.length)
        .filter(k -> left[k] > 0 && kinds.get(k).allows(part))
        .boxed()
        .min(
            Comparator.comparingDouble(k -> (double) kinds.get(k).value() / kinds.get(k).longest()))
        .map(k -> fetch(k).stretches())
        .orElse(List.of());
  }

  /** Puts a fresh piece of a kind on the bench. */
  Piece fetch(int kind) {
    BarKind of = kinds.get(kind);
    List<Stretch> stretches =
        of.stretches().stream().map(s -> new Stretch(of, s, task.kerf())).toList();
    Piece piece = new Piece(kind, stretches);
    pieces.add(piece);
    return piece;
  }

  /** The plan for the pieces that are cut, in the order of the stock. */
  List<CutBar> cut() {
    List<CutBar> bars = new ArrayList<>();
    for (int k = 0; k < kinds.size(); k++) {
      int kind = k;
      List<Piece> used =
          pieces.stream()
              .filter(p -> p.kind() == kind && !p.isWhole())
              .sorted(Comparator.comparingLong(p -> -p.longestPart()))
              .toList();
      int next = 0;
      for (int member : kinds.get(k).members()) {
        Bar bar = task.stock().get(member);
        for (int n = 1; n <= bar.count() && next < used.size(); n++) {
          bars.add(cut(bar.id(), n, used.get(next++)));
        }
      }
    }
    return bars;
  }

  private CutBar cut(String id, int number, Piece piece) {
    List<BarPiece> laid = new ArrayList<>();
    List<Span> remnants = new ArrayList<>();
    for (Stretch stretch : piece.stretches()) {
      laid.addAll(stretch.laid(task.parts()));
      if (stretch.room() > 0 && stretch.room() >= task.remnant()) {
        remnants.add(new Span(stretch.span.to() - stretch.room(), stretch.span.to()));
      }
    }
    return new CutBar(id, number, laid, remnants);
  }

  /** The value of all stock that is cut. */
  long value() {
    return pieces.stream()
        .filter(p -> !p.isWhole())
        .mapToLong(p -> kinds.get(p.kind()).value())
        .sum();
  }
}

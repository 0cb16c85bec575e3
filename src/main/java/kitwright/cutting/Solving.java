package kitwright.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitwright.cutting.saw.Laid;
import kitwright.cutting.saw.Rect;
import kitwright.cutting.saw.Use;
import kitwright.cutting.solve.Area;
import kitwright.cutting.solve.Bar;
import kitwright.cutting.solve.BarCutter;
import kitwright.cutting.solve.BarPart;
import kitwright.cutting.solve.BarPiece;
import kitwright.cutting.solve.BarPlan;
import kitwright.cutting.solve.BarTask;
import kitwright.cutting.solve.CutBar;
import kitwright.cutting.solve.CutPanel;
import kitwright.cutting.solve.Effort;
import kitwright.cutting.solve.Outcome;
import kitwright.cutting.solve.Shortfall;
import kitwright.cutting.solve.Span;
import kitwright.ledger.Cut;
import kitwright.ledger.Stock;

/** Puts what is wanted to the search and takes down where each part lies. */
final class Solving {
  private static final int PANELS_TIMES = 2;

  private final Wanted wanted;
  private final Worths worths;
  private final Effort effort;

  private Solving(Wanted wanted, Worths worths, Effort effort) {
    this.wanted = wanted;
    this.worths = worths;
    this.effort = effort;
  }

  /** A piece of stock with what lies on it. */
  record On(Stock stock, int number, List<Laid> parts) {}

  /**
   * What the search found.
   *
   * @param missing how many of each part are not made, by its mark
   * @param bestInStrips whether nothing better can be had in strips
   */
  record Found(
      List<On> pieces,
      Map<String, Integer> missing,
      Outcome outcome,
      Manner manner,
      boolean bestInStrips) {
    int joints() {
      return (int)
          pieces.stream()
              .flatMap(on -> on.parts().stream())
              .filter(laid -> laid.part().piece() > 1)
              .count();
    }
  }

  static Found of(Wanted wanted, Worths worths, Effort effort) {
    Solving solving = new Solving(wanted, worths, effort);
    if (wanted.parts().isEmpty() || wanted.stock().isEmpty()) {
      Map<String, Integer> missing = new LinkedHashMap<>();
      wanted.parts().forEach(part -> missing.put(part.mark(), part.qty()));
      return new Found(List.of(), missing, new Outcome(0, 0, true, 0), Manner.ANY, false);
    }
    return wanted.isLengths() ? solving.lengths() : solving.panels();
  }

  private Found lengths() {
    List<BarPart> parts =
        wanted.parts().stream()
            .map(
                part ->
                    new BarPart(
                        part.mark(),
                        Sawn.length(part),
                        part.qty(),
                        part.priority().orElse(1),
                        wanted.joint(part),
                        wanted.suits(part).keySet()))
            .toList();
    List<Bar> stock =
        wanted.stock().stream()
            .map(
                free ->
                    new Bar(
                        free.stock().id(),
                        length(free.stock()),
                        free.count(),
                        worths.units().getOrDefault(free.stock().id(), 0L),
                        spans(free.stock())))
            .toList();
    BarTask task =
        new BarTask(
            parts, stock, wanted.saw().crossKerf(), wanted.saw().trim(), wanted.saw().keepLong());
    BarPlan plan = BarCutter.plan(task, effort);
    List<On> pieces = plan.bars().stream().map(this::on).toList();
    return new Found(pieces, missing(plan.missing()), plan.outcome(), Manner.LENGTHS, false);
  }

  private On on(CutBar bar) {
    Rack.Free free = free(bar.stock());
    long edge = wanted.saw().edgeTrim();
    long width = Tenths.side(free.stock().size().orElseThrow().width()) - 2 * edge;
    List<Laid> laid = new ArrayList<>();
    for (BarPiece piece : bar.pieces()) {
      long wide = Sawn.width(part(piece.mark())).orElse(width);
      laid.add(
          new Laid(
              new Rect(piece.from(), edge, piece.length(), wide),
              new Use.Part(piece.mark(), piece.copy(), piece.piece(), piece.of(), false)));
    }
    return new On(free.stock(), free.first() - 1 + bar.number(), laid);
  }

  private static List<Span> spans(Stock stock) {
    return Clearance.flaws(stock).stream().map(flaw -> new Span(flaw.from(), flaw.to())).toList();
  }

  /** Panels gain more from a longer search. */
  private Found panels() {
    List<Pieces> tries = new ArrayList<>(List.of(Pieces.longest(wanted)));
    Pieces even = Pieces.even(wanted);
    if (!tries.contains(even)) {
      tries.add(even);
    }
    Effort each = effort.of(effort.steps() / tries.size() * PANELS_TIMES);
    List<Found> all = new ArrayList<>();
    for (Pieces pieces : tries) {
      if (!effort.partsAlone() || all.stream().noneMatch(found -> found.missing().isEmpty())) {
        all.add(panels(pieces, each));
      }
    }
    Found best = best(all);
    boolean mayJoin =
        wanted.parts().stream()
            .anyMatch(
                part ->
                    best.missing().getOrDefault(part.mark(), 0) > 0
                        && wanted.joint(part).isPresent());
    if (!mayJoin) {
      return best;
    }
    Found joined = panels(Pieces.joining(wanted, best.missing()), each);
    return best(List.of(best, joined));
  }

  private Found panels(Pieces pieces, Effort each) {
    return new Panels(wanted, worths, pieces).plan(each);
  }

  /** More parts by priority, then less value, then fewer joints. */
  private Found best(List<Found> all) {
    Map<String, Integer> priority = new HashMap<>();
    wanted.parts().forEach(part -> priority.put(part.mark(), part.priority().orElse(1)));
    List<Integer> levels = priority.values().stream().distinct().sorted().toList();
    Comparator<Found> order = Comparator.comparingInt(found -> 0);
    for (int level : levels) {
      order =
          order.thenComparingInt(
              found ->
                  found.missing().entrySet().stream()
                      .filter(each -> priority.getOrDefault(each.getKey(), 1) == level)
                      .mapToInt(Map.Entry::getValue)
                      .sum());
    }
    return all.stream()
        .min(order.thenComparingLong(found -> found.outcome().value()).thenComparing(Found::joints))
        .orElseThrow();
  }

  /** Where a panel's parts lie, from the search's own terms. */
  static On on(CutPanel panel, Wanted wanted, Pieces pieces) {
    Rack.Free free =
        wanted.stock().stream()
            .filter(each -> each.stock().id().equals(panel.stock()))
            .findFirst()
            .orElseThrow();
    long trim = wanted.saw().trim();
    long edge = wanted.saw().edgeTrim();
    List<Laid> laid = new ArrayList<>();
    panel.strips().stream()
        .flatMap(strip -> strip.pieces().stream())
        .forEach(
            piece -> {
              Pieces.Order order = pieces.order(piece.mark());
              Area area = piece.area();
              boolean turned =
                  order.width().isPresent()
                      && area.length() != order.length()
                      && area.length() == order.width().get();
              laid.add(
                  new Laid(
                      new Rect(
                          area.along() + trim, area.across() + edge, area.length(), area.width()),
                      new Use.Part(
                          order.part().mark(),
                          order.firstCopy() - 1 + piece.copy(),
                          order.piece(),
                          order.of(),
                          turned)));
            });
    return new On(free.stock(), free.first() - 1 + panel.number(), laid);
  }

  private Map<String, Integer> missing(List<Shortfall> shortfalls) {
    Map<String, Integer> missing = new LinkedHashMap<>();
    shortfalls.forEach(each -> missing.merge(each.mark(), each.missing(), Integer::sum));
    return missing;
  }

  private Rack.Free free(String id) {
    return wanted.stock().stream()
        .filter(free -> free.stock().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private Cut.Part part(String mark) {
    return wanted.parts().stream().filter(p -> p.mark().equals(mark)).findFirst().orElseThrow();
  }

  private static long length(Stock stock) {
    return Tenths.side(stock.size().orElseThrow().length());
  }
}

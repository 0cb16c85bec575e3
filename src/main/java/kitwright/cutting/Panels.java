package kitwright.cutting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitwright.cutting.saw.Laid;
import kitwright.cutting.saw.Saw;
import kitwright.cutting.saw.Way;
import kitwright.cutting.solve.Effort;
import kitwright.cutting.solve.FirstCut;
import kitwright.cutting.solve.Grain;
import kitwright.cutting.solve.Panel;
import kitwright.cutting.solve.PanelCutter;
import kitwright.cutting.solve.PanelPart;
import kitwright.cutting.solve.PanelPlan;
import kitwright.cutting.solve.PanelSaw;
import kitwright.cutting.solve.PanelTask;
import kitwright.cutting.solve.Run;
import kitwright.cutting.solve.Span;
import kitwright.cutting.solve.Spoilt;
import kitwright.cutting.solve.Stages;
import kitwright.ledger.Cut;
import kitwright.ledger.Stock;
import kitwright.value.Size;

/** A cut in which parts lie side by side, in the search's terms. */
final class Panels {
  private final Wanted wanted;
  private final Worths worths;
  private final Pieces pieces;

  Panels(Wanted wanted, Worths worths, Pieces pieces) {
    this.wanted = wanted;
    this.worths = worths;
    this.pieces = pieces;
  }

  Solving.Found plan(Effort effort) {
    PanelPlan plan = PanelCutter.plan(task(), effort);
    Map<String, Integer> missing = missing(plan);
    List<Solving.On> laid = new ArrayList<>();
    plan.panels().stream()
        .map(panel -> Solving.on(panel, wanted, pieces))
        .map(on -> withoutHalves(on, plan))
        .filter(on -> !on.parts().isEmpty())
        .forEach(laid::add);
    Manner manner = stages() == Stages.TWO_AND_TRIM ? Manner.STRIPS : Manner.ANY;
    return new Solving.Found(
        laid,
        missing,
        plan.outcome(),
        manner,
        plan.bestInStrips() && pieces.orders().stream().allMatch(order -> order.of() == 1));
  }

  /** A jointed part is missing where one of its lengths is. */
  private Map<String, Integer> missing(PanelPlan plan) {
    Map<String, Integer> lacking = new HashMap<>();
    plan.missing().forEach(each -> lacking.put(each.mark(), each.missing()));
    Map<List<Object>, Integer> most = new LinkedHashMap<>();
    for (Pieces.Order order : pieces.orders()) {
      most.merge(
          List.of(order.part().mark(), order.firstCopy()),
          lacking.getOrDefault(order.name(), 0),
          Math::max);
    }
    Map<String, Integer> missing = new LinkedHashMap<>();
    most.forEach((part, n) -> missing.merge((String) part.get(0), n, Integer::sum));
    missing.values().removeIf(n -> n == 0);
    return missing;
  }

  /** Leaves out lengths whose other half could not be made. */
  private Solving.On withoutHalves(Solving.On on, PanelPlan plan) {
    Map<String, Integer> lacking = new HashMap<>();
    plan.missing().forEach(each -> lacking.put(each.mark(), each.missing()));
    List<Laid> whole = on.parts().stream().filter(laid -> isWhole(laid, lacking)).toList();
    return new Solving.On(on.stock(), on.number(), whole);
  }

  private boolean isWhole(Laid laid, Map<String, Integer> lacking) {
    return laid.part().of() == 1
        || pieces.orders().stream()
            .filter(order -> order.part().mark().equals(laid.part().mark()))
            .filter(
                order ->
                    order.firstCopy() <= laid.part().copy()
                        && laid.part().copy() < order.firstCopy() + order.qty())
            .allMatch(
                order ->
                    laid.part().copy()
                        < order.firstCopy() + order.qty() - lacking.getOrDefault(order.name(), 0));
  }

  PanelTask task() {
    List<PanelPart> parts =
        pieces.orders().stream()
            .map(
                order ->
                    new PanelPart(
                        order.name(),
                        order.length(),
                        order.width().orElse(0L),
                        order.qty(),
                        order.part().priority().orElse(1),
                        Grain.ALONG,
                        wanted.suits(order.part())))
            .toList();
    List<Panel> stock = wanted.stock().stream().map(this::panel).toList();
    Saw saw = wanted.saw();
    FirstCut first =
        saw.first()
            .map(way -> way == Way.RIP ? FirstCut.ALONG : FirstCut.ACROSS)
            .orElse(FirstCut.EITHER);
    return new PanelTask(
        parts,
        stock,
        new PanelSaw(saw.ripKerf(), saw.crossKerf(), 0, first, stages()),
        saw.keepLong(),
        saw.keepShort());
  }

  private Stages stages() {
    return wanted.cut().stages().filter(n -> n <= 2).isPresent()
        ? Stages.TWO_AND_TRIM
        : Stages.THREE_AND_TRIM;
  }

  /** The trimmed piece, from its trimmed corner. */
  private Panel panel(Rack.Free free) {
    Stock stock = free.stock();
    Size size = stock.size().orElseThrow();
    Cut cut = wanted.cut();
    long trim = Clearance.trim(cut);
    long length = Math.max(1, Tenths.side(size.length()) - 2 * trim);
    List<Spoilt> spoilt =
        Clearance.flaws(stock).stream()
            .filter(flaw -> flaw.to() > trim && flaw.from() < trim + length)
            .map(flaw -> new Span(Math.max(0, flaw.from() - trim), flaw.to() - trim))
            .map(span -> new Spoilt(Run.ACROSS, span))
            .toList();
    return new Panel(
        stock.id(),
        length,
        Math.max(1, Clearance.of(stock, cut).width()),
        free.count(),
        worths.units().getOrDefault(stock.id(), 0L),
        spoilt);
  }
}

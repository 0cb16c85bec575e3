package kitwright.cutting;

import java.util.List;
import java.util.Optional;
import kitwright.cutting.solve.BarCutter;
import kitwright.cutting.solve.BarPlan;
import kitwright.cutting.solve.Effort;
import kitwright.cutting.solve.Outcome;
import kitwright.cutting.solve.PanelCutter;
import kitwright.cutting.solve.PanelPlan;
import kitwright.cutting.solve.Shortfall;
import kitwright.kit.Positions;
import kitwright.ledger.Build;
import kitwright.ledger.Cut;
import kitwright.ledger.Ledger;
import kitwright.ledger.Stock;

/**
 * Which piece of the rack yields which parts of a cut.
 *
 * @param rack what could be drawn on
 * @param tape how its lengths are told
 * @param lengths the plan where it is a matter of lengths
 * @param panels the plan where it is one of panels; exactly one of the two is there
 */
public record CutPlan(
    Cut cut, Rack rack, Tape tape, Optional<BarPlan> lengths, Optional<PanelPlan> panels) {

  /** Plans with the effort that is usual for lengths or for panels. */
  public static CutPlan of(Cut cut, Ledger ledger, Positions positions) {
    Rack rack = Rack.of(cut, ledger, positions);
    boolean isLengths = Wanted.isLengths(cut, rack);
    return of(cut, ledger, rack, isLengths ? Effort.usual() : Effort.usualForPanels());
  }

  /** Plans a cut that {@link CutFaults} finds nothing wrong with. */
  public static CutPlan of(Cut cut, Ledger ledger, Positions positions, Effort effort) {
    return of(cut, ledger, Rack.of(cut, ledger, positions), effort);
  }

  private static CutPlan of(Cut cut, Ledger ledger, Rack rack, Effort effort) {
    Tape tape = new Tape(ledger.build().units() == Build.Units.IMPERIAL);
    return Wanted.isLengths(cut, rack)
        ? new CutPlan(
            cut,
            rack,
            tape,
            Optional.of(BarCutter.plan(Wanted.lengths(cut, rack), effort)),
            Optional.empty())
        : new CutPlan(
            cut,
            rack,
            tape,
            Optional.empty(),
            Optional.of(PanelCutter.plan(Wanted.panels(cut, rack), effort)));
  }

  /** The stock of that id among what could be drawn on. */
  public Stock stock(String id) {
    return rack.pieces().stream()
        .map(Rack.Free::stock)
        .filter(stock -> stock.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** Parts that cannot be made from what is there. */
  public List<Shortfall> missing() {
    return lengths.map(BarPlan::missing).or(() -> panels.map(PanelPlan::missing)).orElse(List.of());
  }

  /** How good the plan is known to be. */
  public Outcome outcome() {
    return lengths.map(BarPlan::outcome).or(() -> panels.map(PanelPlan::outcome)).orElseThrow();
  }

  /** How good the plan is, in words. */
  public String quality() {
    Outcome outcome = outcome();
    if (outcome.isProvedBest()) {
      return missing().isEmpty()
          ? "Proved best: no plan uses stock worth less."
          : "Proved best: no plan makes more of the parts, nor uses stock worth less for them.";
    }
    String stock =
        outcome.value() <= outcome.bound()
            ? "no plan for these parts uses stock worth less"
            : "at most "
                + outcome.percentAboveBound()
                + " % more stock than the least there could be";
    return outcome.mostParts()
        ? "Good: " + stock + "."
        : "Good: " + stock + "; whether more parts could be made is not proved.";
  }
}

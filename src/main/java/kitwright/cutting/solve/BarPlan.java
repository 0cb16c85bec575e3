package kitwright.cutting.solve;

import java.util.List;

/**
 * Which lengths come out of which piece.
 *
 * @param bars every piece of stock that is cut
 * @param missing what cannot be made
 * @param outcome how good the plan is known to be
 */
public record BarPlan(List<CutBar> bars, List<Shortfall> missing, Outcome outcome) {
  public BarPlan {
    bars = List.copyOf(bars);
    missing = List.copyOf(missing);
  }
}

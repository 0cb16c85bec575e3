package kitwright.cutting.solve;

import java.util.List;

/**
 * Which parts come out of which panel.
 *
 * @param panels every panel that is cut
 * @param missing what cannot be made
 * @param settings how many widths the fence is set to, for strips and for trimming
 * @param outcome how good the plan is known to be, by value of stock
 * @param bestInStrips whether it is proved that no plan in strips does better, whatever other cuts
 *     may
 */
public record PanelPlan(
    List<CutPanel> panels,
    List<Shortfall> missing,
    int settings,
    Outcome outcome,
    boolean bestInStrips) {
  public PanelPlan {
    panels = List.copyOf(panels);
    missing = List.copyOf(missing);
  }
}

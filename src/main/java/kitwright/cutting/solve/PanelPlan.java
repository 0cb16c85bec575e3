package kitwright.cutting.solve;

import java.util.List;

/**
 * Which parts come out of which panel.
 *
 * @param panels every panel that is cut
 * @param missing what cannot be made
 * @param settings how many widths the fence is set to, for strips and for trimming
 * @param outcome how good the plan is known to be, by value of stock
 */
public record PanelPlan(
    List<CutPanel> panels, List<Shortfall> missing, int settings, Outcome outcome) {
  public PanelPlan {
    panels = List.copyOf(panels);
    missing = List.copyOf(missing);
  }
}

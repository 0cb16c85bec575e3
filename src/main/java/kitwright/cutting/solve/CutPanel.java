package kitwright.cutting.solve;

import java.util.List;

/**
 * One panel and what is cut from it.
 *
 * @param stock its name
 * @param number which of the panels of that name, from 1
 * @param strips in cutting order
 * @param remnants left-overs worth keeping
 */
public record CutPanel(String stock, int number, List<CutStrip> strips, List<Area> remnants) {
  public CutPanel {
    strips = List.copyOf(strips);
    remnants = List.copyOf(remnants);
  }
}

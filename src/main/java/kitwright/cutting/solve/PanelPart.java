package kitwright.cutting.solve;

import java.util.Map;
import java.util.Optional;

/**
 * Rectangular parts wanted, alike.
 *
 * @param mark the caller's name for them
 * @param length tenths of a millimetre
 * @param width tenths of a millimetre; zero for a part as wide as its panel, which is never turned
 * @param qty how many
 * @param priority 1 is made first where not everything can be made
 * @param grain how it must lie
 * @param on the stock it may come from, and how it must lie there; empty for any stock, lying as
 *     {@code grain} says
 */
public record PanelPart(
    String mark,
    long length,
    long width,
    int qty,
    int priority,
    Grain grain,
    Map<String, Grain> on) {
  /** A part that may come from any stock. */
  public PanelPart(String mark, long length, long width, int qty, int priority, Grain grain) {
    this(mark, length, width, qty, priority, grain, Map.of());
  }

  public PanelPart {
    on = Map.copyOf(on);
    if (length <= 0 || width < 0 || qty < 0 || priority < 1) {
      throw new IllegalArgumentException("impossible part: " + mark);
    }
  }

  /** How it must lie on that stock; empty where it may not come from it. */
  public Optional<Grain> on(String stock) {
    Optional<Grain> way = on.isEmpty() ? Optional.of(grain) : Optional.ofNullable(on.get(stock));
    return way.map(lies -> width == 0 ? Grain.ALONG : lies);
  }
}

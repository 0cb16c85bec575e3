package kitwright.mechanics.beam;

import java.util.Optional;
import kitwright.mechanics.Refuse;

/**
 * One of several strips side by side in a layer.
 *
 * @param width m
 * @param material what it is made of; empty for a void
 */
public record Strip(double width, Optional<BeamMaterial> material) {
  public Strip {
    Refuse.unlessPositive("strip width", width);
  }

  public static Strip of(double width, BeamMaterial material) {
    return new Strip(width, Optional.of(material));
  }

  /** Nothing there. */
  public static Strip gap(double width) {
    return new Strip(width, Optional.empty());
  }
}

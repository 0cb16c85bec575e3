package kitwright.assessment.part;

import kitwright.ledger.Material;
import kitwright.ledger.MaterialProperty;
import kitwright.ledger.Section;

/**
 * Plywood that stands on edge: its outer veneers no longer bear the most, so that what it states
 * for bending as it lies flat says too much. A board told by its values in tension and compression,
 * in its own plane, is the same both ways.
 */
final class OnEdge {
  private OnEdge() {}

  /** Whether the values of a material are of a board that lies flat. */
  static boolean isMeantFlat(Material material) {
    return material.sort() == Material.Sort.PLYWOOD
        && material.properties().containsKey(MaterialProperty.BENDING_STRENGTH);
  }

  /** A clause. */
  static String words(Material material, Section section) {
    return "plywood "
        + material.id()
        + " stands on edge in "
        + section.named()
        + ", and with a bending-strength its values are of a board that lies flat: write a material"
        + " for it by its E and strengths in tension and compression in its own plane, without a"
        + " bending-strength";
  }
}

package kitwright.mechanics.load;

import kitwright.mechanics.Refuse;

/**
 * What a section can carry, as far as a break order needs it.
 *
 * @param moment N·m at first failure
 * @param momentMode how it then fails, in words
 * @param shear N at first failure
 * @param shearMode how it then fails, in words
 */
public record Strong(double moment, String momentMode, double shear, String shearMode) {
  public Strong {
    Refuse.unlessPositive("moment capacity", moment);
    Refuse.unlessPositive("shear capacity", shear);
  }
}

package kitwright.mechanics.timber;

import kitwright.mechanics.Refuse;

/**
 * A named factor on a clear-wood value, told on the sheet with its source.
 *
 * @param name such as "moisture 18 %"
 * @param value above nought, at most 2
 * @param source where it comes from
 */
public record Factor(String name, double value, String source) {
  public Factor {
    Refuse.unless(!name.isBlank(), "a factor has a name");
    Refuse.outside("factor", 0, 2, value);
  }
}

package kitwright.assessment.material;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.ledger.Assessment.KnockDown.For;
import kitwright.ledger.Material;
import kitwright.ledger.Material.Sort;
import kitwright.ledger.MaterialProperty;
import kitwright.value.Quantity;

/**
 * Wood is stronger dry than wet: values that hold at unlike moisture are no more compared than
 * means with least values. A factor for moisture on one part says that somebody saw to it.
 *
 * @see "Wood Handbook FPL-GTR-282, equation 5-3: 1 % of moisture is some 4 % of strength"
 */
public final class Moist {
  /** A share of the dry mass: less apart than a meter tells. */
  private static final double APART = 0.03;

  private Moist() {}

  /** Values of woods at unlike moisture, each a clause. */
  public static List<String> lacking(List<Material> used, Factors factors) {
    List<Material> woods =
        used.stream()
            .filter(one -> one.sort() == Sort.TIMBER || one.sort() == Sort.PLYWOOD)
            .filter(one -> moisture(one).isPresent())
            .toList();
    List<String> lacking = new ArrayList<>();
    for (Material one : woods.subList(0, Math.min(1, woods.size()))) {
      woods.stream()
          .filter(other -> Math.abs(share(other) - share(one)) > APART + 1e-9)
          .filter(other -> !factors.onOnePart(For.MOISTURE))
          .forEach(other -> lacking.add(words(one, other)));
    }
    return lacking;
  }

  private static Optional<Quantity> moisture(Material wood) {
    return Optional.ofNullable(wood.properties().get(MaterialProperty.MOISTURE));
  }

  private static double share(Material wood) {
    return moisture(wood).map(Quantity::base).orElse(0.0);
  }

  private static String words(Material one, Material other) {
    return "the values of "
        + one.id()
        + " hold at "
        + moisture(one).orElseThrow()
        + " moisture and those of "
        + other.id()
        + " at "
        + moisture(other).orElseThrow()
        + ": state values at one moisture, or a knock-down for moisture on one part";
  }
}

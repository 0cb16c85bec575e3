package kitwright.assessment.material;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.ledger.KnockDown.For;
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

  /** At which tables of wood mostly stand: Wood Handbook, table 5-3. */
  private static final double USUAL = 0.12;

  private Moist() {}

  /** Values of woods at unlike moisture, each a clause. */
  public static List<String> lacking(List<Material> used, Factors factors) {
    List<Material> woods =
        used.stream()
            .filter(one -> one.sort() == Sort.TIMBER || one.sort() == Sort.PLYWOOD)
            .filter(one -> moisture(one).isPresent())
            .toList();
    boolean knocked = factors.onOnePart(For.MOISTURE);
    List<String> lacking = new ArrayList<>();
    for (int i = 0; !knocked && i < woods.size(); i++) {
      Material one = woods.get(i);
      woods.subList(i + 1, woods.size()).stream()
          .filter(other -> apart(share(other), share(one)))
          .forEach(other -> lacking.add(words(one, other)));
    }
    if (!knocked && lacking.isEmpty()) {
      woods.stream()
          .filter(one -> apart(share(one), USUAL))
          .findFirst()
          .ifPresent(one -> unsaid(used).forEach(other -> lacking.add(unsaid(one, other))));
    }
    boolean apart =
        woods.stream().anyMatch(one -> apart(share(one), share(woods.get(0))))
            || woods.stream().anyMatch(one -> apart(share(one), USUAL));
    if (knocked && !apart && factors.onDrawnAlone(For.MOISTURE)) {
      lacking.add(
          "the factor for moisture is on the part as drawn alone, and no wood states its values at"
              + " another moisture than the rest: what stands in its place is as wet. State it on"
              + " the part as built too, or the moisture of each wood");
    }
    return lacking;
  }

  private static boolean apart(double one, double other) {
    return Math.abs(one - other) > APART + 1e-9;
  }

  private static List<Material> unsaid(List<Material> used) {
    return used.stream()
        .filter(one -> one.sort() == Sort.TIMBER || one.sort() == Sort.PLYWOOD)
        .filter(one -> moisture(one).isEmpty())
        .toList();
  }

  private static String unsaid(Material one, Material other) {
    return "the values of "
        + one.id()
        + " hold at "
        + moisture(one).orElseThrow()
        + " moisture, and "
        + other.id()
        + " does not say at which its values hold, mostly 12 %: state values at one moisture, or a"
        + " knock-down for moisture on one part";
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

package kitwright.assessment.material;

import java.util.Optional;
import java.util.Set;
import kitwright.ledger.Material;
import kitwright.ledger.Material.Basis;
import kitwright.ledger.MaterialProperty;
import kitwright.mechanics.scatter.Scattered;
import kitwright.value.Place;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/** How the materials of an assessment scatter, as shares of the values that they state. */
public final class Spreads {
  /** Characteristic values: one in twenty is below (EN 1990:2002, 4.2(3), from memory). */
  static final double BELOW = 0.05;

  private final Materials materials;
  private final Place place;
  private final Set<String> notes;

  /**
   * @param place whose it is, for references
   * @param notes where it is told what does not scatter or is taken for granted
   */
  public Spreads(Materials materials, Place place, Set<String> notes) {
    this.materials = materials;
    this.place = place;
    this.notes = notes;
  }

  /** A modulus is stated as a mean. */
  public Scattered modulus(String id) {
    return new Scattered(1, variation(id), Scattered.Shape.LOGNORMAL);
  }

  /** A strength may be stated as the value that one in twenty falls below. */
  public Scattered strength(String id) {
    Scattered mean = modulus(id);
    if (!(mean.variation() > 0) || !isLow(id)) {
      return mean;
    }
    notes.add(
        "the strength of "
            + id
            + " is a characteristic or least value: one in twenty is taken to be below it");
    return above(mean);
  }

  /** The mean share of which one in twenty falls below 1. */
  public static Scattered above(Scattered mean) {
    return new Scattered(mean.mean() / mean.quantile(BELOW), mean.variation(), mean.shape());
  }

  private boolean isLow(String id) {
    return material(id).flatMap(Material::basis).filter(basis -> basis != Basis.MEAN).isPresent();
  }

  private double variation(String id) {
    Optional<Double> stated =
        material(id)
            .flatMap(one -> Optional.ofNullable(one.properties().get(MaterialProperty.SCATTER)))
            .map(Quantity::base)
            .filter(share -> share < 1);
    if (stated.isEmpty()) {
      notes.add(id + " does not state its scatter, and is taken as it is");
    }
    return stated.orElse(0.0);
  }

  private Optional<Material> material(String id) {
    return materials.material(new Ref(id, place));
  }
}

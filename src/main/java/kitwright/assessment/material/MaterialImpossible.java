package kitwright.assessment.material;

import java.util.List;
import java.util.Optional;
import kitwright.assessment.sheet.Band;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Material;
import kitwright.ledger.Material.Sort;
import kitwright.ledger.MaterialProperty;
import kitwright.ledger.Rule;
import kitwright.value.Dimension;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Word;

/** Fires where a material states a value that no stuff has. */
public final class MaterialImpossible implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    for (Material material : day.ledger().materials()) {
      material.properties().forEach((property, value) -> check(material, property, value, out));
      if (material.isotropic()
          && (material.sort() == Sort.TIMBER || material.sort() == Sort.PLYWOOD)) {
        out.add(
            finding(
                material,
                "isotropic",
                "Material " + material.id() + " is wood and says that it is the same every way.",
                "Take “isotropic” out, and state its values across."));
      }
      itself(material, "fibre", material.fibre(), out);
      itself(material, "resin", material.resin(), out);
    }
  }

  private void check(Material material, MaterialProperty property, Quantity value, Findings out) {
    wrong(property, value)
        .map(
            why ->
                "the "
                    + property.key()
                    + " of material "
                    + material.id()
                    + " is "
                    + value
                    + ": "
                    + why)
        .or(
            () ->
                Band.of(material.sort(), property)
                    .flatMap(band -> band.misses(material, property, value)))
        .ifPresent(
            why ->
                out.add(
                    finding(
                        material,
                        property.key(),
                        Word.capital(why) + ".",
                        "Look the value up again, and its unit.")));
    if (property == MaterialProperty.FIBRE_FRACTION && material.sort() == Sort.FIBRE) {
      out.add(
          finding(
              material,
              property.key(),
              "The fibre " + material.id() + " states a fibre fraction, which is of a cloth.",
              "Move it to the cloth."));
    }
  }

  private static Optional<String> wrong(MaterialProperty property, Quantity value) {
    return switch (property) {
      case FIBRE_FRACTION ->
          outside(value, 0, 1, "fibre is a share of the laminate’s mass, between 0 and 1");
      case SCATTER -> outside(value, -1e-9, 1, "scatter is a share of the mean, below 1");
      case MOISTURE -> outside(value, -1e-9, 2, "moisture is a share of the dry mass");
      default ->
          isStiffOrStrong(property) && value.isNone()
              ? Optional.of("nothing is without it")
              : Optional.empty();
    };
  }

  private static boolean isStiffOrStrong(MaterialProperty property) {
    return property.dimension() == Dimension.STRESS
        || property.dimension() == Dimension.DENSITY
        || property.dimension() == Dimension.AREAL_MASS;
  }

  private static Optional<String> outside(Quantity value, double low, double high, String why) {
    double number = value.base();
    return number > low && number < high ? Optional.empty() : Optional.of(why);
  }

  private void itself(Material material, String key, Optional<Ref> part, Findings out) {
    if (part.filter(ref -> ref.id().equals(material.id())).isPresent()) {
      out.add(
          finding(
              material,
              key,
              "Material " + material.id() + " names itself as its " + key + ".",
              "Name another record: the " + key + " by itself."));
    }
  }

  private Finding finding(Material material, String key, String what, String mend) {
    return stop(
        material.at().of(key),
        what,
        "Every assessment that leans on it is open until it is put right.",
        mend,
        List.of(material.named()));
  }
}

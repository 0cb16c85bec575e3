package kitwright.assessment.sheet;

import java.math.BigDecimal;
import java.util.Optional;
import kitwright.ledger.Material.Basis;
import kitwright.ledger.MaterialProperty;

/**
 * A value that an assessment leans on.
 *
 * @param material the id of the material whose it is
 * @param sort what sort of material
 * @param property which
 * @param value with its unit, as the ledger or the table writes it
 * @param number the same without its unit
 * @param unit its symbol; empty where it has none
 * @param basis what the material says its values are: means, characteristic or least
 * @param trust how far it may be leaned on
 * @param source where it comes from, or by which rule it was worked out
 */
public record Input(
    String material,
    kitwright.ledger.Material.Sort sort,
    MaterialProperty property,
    String value,
    BigDecimal number,
    String unit,
    Optional<Basis> basis,
    Trust trust,
    String source) {

  /** “the E of larch”. */
  public String named() {
    return "the " + property.key() + " of " + material;
  }
}

package kitwright.ledger;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.value.Decimal;
import kitwright.value.Misread;
import kitwright.value.Price;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.yaml.Fields;

/**
 * A material, added to the built-in table or in place of a row of it.
 *
 * @param fibre the fibre of a cloth or laminate
 * @param resin the resin of a cloth or laminate
 * @param hardener what a resin is mixed with, by its mix ratio
 * @param metal which it is among those that corrode each other; of a fibre, carbon
 * @param properties by key of {@link MaterialProperty}
 * @param source where the values come from; without one nothing structural may lean on them
 * @param basis what the values are: mean of tests, characteristic, least
 * @param unconfirmed keys of the properties that nobody has looked up in their source yet; {@code
 *     all} for every one
 * @param angles fibre directions of a cloth, in degrees from the length
 */
public record Material(
    String id,
    Optional<String> what,
    Sort sort,
    Optional<Ref> fibre,
    Optional<Ref> resin,
    Optional<Ref> hardener,
    Optional<Weave> weave,
    Optional<Metal> metal,
    List<BigDecimal> angles,
    Map<MaterialProperty, Quantity> properties,
    Optional<String> source,
    Optional<Basis> basis,
    Optional<Price> price,
    List<String> unconfirmed,
    Written at)
    implements Entry {
  /** What sort of material. */
  public enum Sort {
    TIMBER,
    PLYWOOD,
    METAL,
    FIBRE,
    RESIN,
    CLOTH,
    LAMINATE,
    CORE,
    GLUE,
    BOLT,
    OTHER
  }

  /** How the fibres of a cloth lie. */
  public enum Weave {
    UNIDIRECTIONAL,
    WOVEN,
    BIAXIAL,
    DOUBLE_BIAS,
    TRIAXIAL,
    QUADRIAXIAL,
    MAT
  }

  /** A metal, or carbon, by what it does to others in sea water. */
  public enum Metal {
    MAGNESIUM,
    ZINC,
    GALVANISED_STEEL,
    ALUMINIUM,
    STEEL,
    BRASS,
    COPPER,
    MANGANESE_BRONZE,
    SILICON_BRONZE,
    LEAD,
    NICKEL_ALUMINIUM_BRONZE,
    STAINLESS_304,
    STAINLESS_316,
    TITANIUM,
    CARBON
  }

  /** What a value is. */
  public enum Basis {
    MEAN,
    CHARACTERISTIC,
    MINIMUM
  }

  private static BigDecimal angle(String text) throws Misread {
    BigDecimal degrees = Decimal.parse(text.replaceFirst("\\s*(deg|°)$", ""));
    if (degrees.abs().compareTo(BigDecimal.valueOf(180)) > 0) {
      throw new Misread("an angle of " + text + " degrees", "write it between -90 and 90");
    }
    return degrees;
  }

  static Material read(Fields f) {
    return new Material(
        f.id(),
        f.maybeText("what"),
        f.choice("kind", Sort.class, Sort.TIMBER),
        f.maybeRef("fibre"),
        f.maybeRef("resin"),
        f.maybeRef("hardener"),
        f.maybeChoice("weave", Weave.class),
        f.maybeChoice("metal", Metal.class),
        f.list("angles", Material::angle),
        MaterialProperty.readAll(f),
        f.maybeText("source"),
        f.maybeChoice("basis", Basis.class),
        f.maybePrice("price"),
        f.list("unconfirmed", text -> text),
        Written.of(f));
  }

  @Override
  public Kind kind() {
    return Kind.MATERIALS;
  }
}

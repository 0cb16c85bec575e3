package kitwright.ledger;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.value.Decimal;
import kitwright.value.Misread;
import kitwright.value.Money;
import kitwright.value.Nearest;
import kitwright.value.Price;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Unit;

/**
 * A material, added to the built-in table or in place of a row of it.
 *
 * @param fibre the fibre of a cloth or laminate
 * @param resin the resin of a cloth or laminate
 * @param hardener what a resin is mixed with, by its mix ratio
 * @param wood of a plywood that is worked out veneer by veneer: the wood of its veneers
 * @param isotropic whether it is the same in every direction, as foam and glass fibre are; nothing
 *     takes that for granted but of metals and resins
 * @param invented whether its values are made up: nothing structural passes on them but in a build
 *     that is invented itself
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
    Optional<Ref> wood,
    boolean isotropic,
    boolean invented,
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

  /** What so much of it costs; empty where it has no price, or none in such a unit. */
  public Optional<Money> cost(Quantity of) {
    return price.filter(each -> each.prices(of)).map(each -> each.of(of));
  }

  private static final kitwright.ledger.Sort<BigDecimal> ANGLE =
      kitwright.ledger.Sort.in(
          Unit.DEGREE,
          "degrees",
          "^" + kitwright.ledger.Sort.NUMBER + "\\s*(deg|°)?$",
          Material::angle);

  private static BigDecimal angle(String text, Keys keys) throws Misread {
    BigDecimal degrees = Decimal.parse(text.replaceFirst("\\s*(deg|°)$", ""));
    if (degrees.abs().compareTo(BigDecimal.valueOf(180)) > 0) {
      throw new Misread("an angle of " + text + " degrees", "write it between -90 and 90");
    }
    return degrees;
  }

  private static final kitwright.ledger.Sort<String> OPEN =
      kitwright.ledger.Sort.of("key of a property, or all", "", Material::open);

  /** A name that is none would leave what it means confirmed. */
  private static String open(String text, Keys keys) throws Misread {
    String key = text.strip();
    List<String> known = MaterialProperty.keys();
    if (key.equals("all") || known.contains(key)) {
      return key;
    }
    throw new Misread(
        "“" + key + "” is no property of a material",
        Nearest.ofWords(key.replace(' ', '-'), known)
            .map(near -> "write " + near)
            .orElse("write all, or one of: " + String.join(", ", known)));
  }

  /** The same with another value of a property. */
  public Material with(MaterialProperty property, Quantity value) {
    Map<MaterialProperty, Quantity> other = new EnumMap<>(MaterialProperty.class);
    other.putAll(properties);
    other.put(property, value);
    return new Material(
        id,
        what,
        sort,
        fibre,
        resin,
        hardener,
        wood,
        isotropic,
        invented,
        weave,
        metal,
        angles,
        other,
        source,
        basis,
        price,
        unconfirmed,
        at);
  }

  static Material read(Keys k) {
    return new Material(
        k.id("example-larch"),
        k.key("what", "what it is, in a few words", "larch at 12 % moisture").maybeText(),
        k.key("kind", "what sort of material it is", "timber").choice(Sort.class, Sort.TIMBER),
        k.key("fibre", "the fibre of a cloth or laminate", "e-glass").maybeRef(Kind.MATERIALS),
        k.key("resin", "the resin of a cloth or laminate", "epoxy-slow").maybeRef(Kind.MATERIALS),
        k.key("hardener", "what a resin is mixed with, by its mix-ratio", "epoxy-hardener")
            .maybeRef(Kind.MATERIALS),
        k.key("wood", "the wood of a plywood’s veneers, which count one by one", "okoume")
            .maybeRef(Kind.MATERIALS),
        k.key(
                "isotropic",
                "whether it is the same in every direction, as foam and glass fibre are",
                "yes")
            .flag(),
        k.key("invented", "whether its values are made up, for a demonstration", "yes").flag(),
        k.key("weave", "how the fibres of a cloth lie", "woven").maybeChoice(Weave.class),
        k.key(
                "metal",
                "which metal it is among those that corrode each other; of a fibre, carbon",
                "silicon-bronze")
            .maybeChoice(Metal.class),
        k.key("angles", "fibre directions of a cloth, in degrees from the length", "[45, -45]")
            .list(ANGLE),
        MaterialProperty.readAll(k),
        k.key(
                "source",
                "where the values come from; without one nothing structural may lean on them",
                "the maker’s data sheet")
            .maybeText(),
        k.key("basis", "what the values are", "mean").maybeChoice(Basis.class),
        k.key("price", "what one of it costs, or one of the unit that it names", "12.50 EUR/m")
            .maybePrice(),
        k.key(
                "unconfirmed",
                "keys of the properties that nobody has looked up in their source yet; all for"
                    + " every one",
                "[E, density]")
            .list(OPEN),
        k.written());
  }

  @Override
  public Kind kind() {
    return Kind.MATERIALS;
  }
}

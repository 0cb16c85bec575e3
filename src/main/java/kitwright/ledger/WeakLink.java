package kitwright.ledger;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.value.Dimension;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Unit;

/**
 * A part that shall break before another.
 *
 * @param sacrificial section of the part that shall break
 * @param protectedPart section of the part that shall not, unless a rating stands for it
 * @param rating what it is that shall not break bears, where it is no section
 * @param by what breaks it; bending where it is not said
 * @param margin the least ratio of their capacities at the load point
 * @param breaksAt distance from the support at which the break is meant
 * @param chance the most likely that the protected part may break first; 1 % where not said
 */
public record WeakLink(
    Ref sacrificial,
    Optional<Ref> protectedPart,
    Optional<Rating> rating,
    By by,
    BigDecimal margin,
    Optional<Quantity> breaksAt,
    Optional<BigDecimal> chance,
    At at) {
  /** What breaks a weak link: bent on a cantilever, or sheared or pulled with what it holds. */
  public enum By {
    BENDING,
    SHEAR,
    TENSION
  }

  /**
   * A load that somebody else has stated: of a shackle, a wire, a chainplate.
   *
   * @param scatter coefficient of variation
   */
  public record Rating(
      Quantity load,
      Optional<Material.Basis> basis,
      Optional<BigDecimal> scatter,
      Optional<String> source,
      At at) {
    static Rating read(Keys k) {
      return new Rating(
          k.key("load", "the load at which it breaks", "24 kN")
              .between("1 N", "10000 kN")
              .measure(Unit.ONE, Dimension.FORCE),
          k.key("basis", "what the load is: of a maker mostly minimum", "minimum")
              .maybeChoice(Material.Basis.class),
          k.key("scatter", "its coefficient of variation, where it is no minimum", "8 %")
              .maybeShare(),
          k.key("source", "where it comes from; without one nothing passes", "the maker’s sheet")
              .maybeText(),
          k.at());
    }
  }

  /** Both sections, or the one where a rating stands for the other. */
  public Stream<Ref> parts() {
    return Stream.concat(Stream.of(sacrificial), protectedPart.stream());
  }

  /** Whether it protects a section from itself. */
  public boolean isToItself() {
    return protectedPart.filter(ref -> ref.id().equals(sacrificial.id())).isPresent();
  }

  static WeakLink read(Keys k) {
    return new WeakLink(
        k.key("sacrificial", "the section of the part that shall break", "rudder-blade")
            .ref(Kind.SECTIONS),
        k.key("protected", "the section of the part that shall not", "rudder-stock")
            .maybeRef(Kind.SECTIONS),
        k.key("rating", "what it protects bears, where that is no section of yours")
            .maybeGroup(Rating::read),
        k.key("by", "what breaks it; bending where it is not said", "tension")
            .maybeChoice(By.class)
            .orElse(By.BENDING),
        k.key("margin", "the least ratio of their capacities at the load point", "1.1").number(),
        k.key(
                "breaks-at",
                "how far from the support the break is meant; a bent link without it is not told",
                "300 mm")
            .between("0 mm", "20 m")
            .maybeMeasure(Unit.ONE, Dimension.LENGTH),
        k.key(
                "chance",
                "how likely the protected part may break first, at most; 1 % where not said",
                "1 %")
            .maybeShare(),
        k.at());
  }
}

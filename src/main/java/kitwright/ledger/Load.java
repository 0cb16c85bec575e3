package kitwright.ledger;

import java.math.BigDecimal;
import java.util.Optional;
import kitwright.value.Dimension;
import kitwright.value.Quantity;
import kitwright.value.Unit;

/**
 * What the part carries. A force given, or worked out from speed, area and lift coefficient.
 *
 * @param overhang how far the part reaches beyond its second support
 * @param selfWeight whether the section's own weight is added, taken as level: each section its own
 * @param thrust a push along the part, which may buckle
 * @param ends how the part is held against buckling
 * @param torque about the length of the part
 * @param heldSideways how far apart a beam is kept from tipping over sideways
 * @param bearing how much of its length lies on each support, and under a force at one place
 * @param factor safety factor on the load, which a reserve needs
 */
public record Load(
    Optional<Shape> shape,
    Optional<Support> support,
    Optional<Quantity> force,
    Optional<Quantity> tipForce,
    Optional<Quantity> pressure,
    Optional<Quantity> span,
    Optional<Quantity> overhang,
    Optional<Quantity> breadth,
    Optional<Quantity> speed,
    Optional<Quantity> area,
    Optional<BigDecimal> lift,
    Optional<Quantity> density,
    Optional<Quantity> thrust,
    Optional<Ends> ends,
    Optional<Quantity> torque,
    Optional<Quantity> heldSideways,
    Optional<Quantity> bearing,
    boolean selfWeight,
    Optional<BigDecimal> factor,
    Optional<String> source,
    At at) {
  /** How a load lies along a part. */
  public enum Shape {
    POINT,
    UNIFORM,
    TRIANGULAR,
    ELLIPTIC
  }

  /** How the ends of a part are held where it may buckle. */
  public enum Ends {
    PINNED,
    FIXED,
    FIXED_PINNED,
    FIXED_FREE
  }

  /** How a part is held. */
  public enum Support {
    CANTILEVER,
    SIMPLE,
    CLAMPED,
    OVERHANG
  }

  /** The safety factor; 1 where none is stated. */
  public BigDecimal safety() {
    return factor.orElse(BigDecimal.ONE);
  }

  static Load read(Keys k) {
    return new Load(
        k.key(
                "shape",
                "how a force lies along the span, point being its middle, or the tip of a"
                    + " cantilever; a force without it is not worked out",
                "uniform")
            .maybeChoice(Shape.class),
        k.key("support", "how the part is held", "cantilever").maybeChoice(Support.class),
        k.key("force", "a force that lies along the span as its shape says", "1.2 kN")
            .between("0 N", "1000 kN")
            .maybeMeasure(Unit.ONE, Dimension.FORCE),
        k.key("tip-force", "a force at the end of the span", "900 N")
            .between("0 N", "1000 kN")
            .maybeMeasure(Unit.ONE, Dimension.FORCE),
        k.key("pressure", "a pressure on a breadth, or on a panel", "8 kPa")
            .between("0 Pa", "10 MPa")
            .maybeMeasure(Unit.ONE, Dimension.STRESS),
        k.key("span", "from the support to the end, or from support to support", "1.15 m")
            .between("1 mm", "50 m")
            .maybeMeasure(Unit.ONE, Dimension.LENGTH),
        k.key("overhang", "how far it reaches beyond the second of two supports", "600 mm")
            .between("1 mm", "50 m")
            .maybeMeasure(Unit.ONE, Dimension.LENGTH),
        k.key(
                "breadth",
                "how much of the pressure the part takes, or the other side of a panel",
                "400 mm")
            .between("1 mm", "50 m")
            .maybeMeasure(Unit.ONE, Dimension.LENGTH),
        k.key("speed", "the speed of the water past a foil", "8 kn")
            .between("0 kn", "60 kn")
            .maybeMeasure(Unit.ONE, Dimension.SPEED),
        k.key("area", "the area of a foil", "0.35 m2")
            .between("0 m2", "100 m2")
            .maybeMeasure(Unit.ONE, Dimension.AREA),
        k.key(
                "lift",
                "the lift coefficient of a foil: its force is ½ · density · speed² · area · lift",
                "1.1")
            .maybeNumber(),
        k.key("density", "the density of the water", "1025 kg/m3")
            .between("900 kg/m3", "1100 kg/m3")
            .maybeMeasure(Unit.ONE, Dimension.DENSITY),
        k.key("thrust", "a push along the part, such as of a mast or post", "12 kN")
            .between("0 N", "10000 kN")
            .maybeMeasure(Unit.ONE, Dimension.FORCE),
        k.key("ends", "how the part is held where a thrust may buckle it", "pinned")
            .maybeChoice(Ends.class),
        k.key(
                "torque",
                "a moment about the length of the part, as of a tiller on a stock",
                "300 Nm")
            .between("0 Nm", "1000 kNm")
            .maybeMeasure(Unit.ONE, Dimension.MOMENT),
        k.key(
                "held-sideways",
                "how far apart the places are at which plating or blocking keeps a beam from"
                    + " tipping over sideways; nothing holds it where not said",
                "400 mm")
            .between("1 mm", "50 m")
            .maybeMeasure(Unit.ONE, Dimension.LENGTH),
        k.key(
                "bearing",
                "how much of a beam’s length lies on each support, and under a force at one"
                    + " place, the least of them: where wood or core may be crushed",
                "40 mm")
            .between("1 mm", "5 m")
            .maybeMeasure(Unit.ONE, Dimension.LENGTH),
        k.key(
                "self-weight",
                "whether each section’s own weight, its mass times 9.80665 m/s², is added as if"
                    + " it lay level",
                "yes")
            .flag(),
        k.key("factor", "the safety factor on the load; without one no reserve passes", "3")
            .maybeNumber(),
        k.key("source", "where the load comes from; without one no reserve passes", "drawing D-07")
            .maybeText(),
        k.at());
  }
}

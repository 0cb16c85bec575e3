package kitwright.ledger;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.value.Dimension;
import kitwright.value.Money;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Unit;
import kitwright.value.Word;

/**
 * An engineering check of a substitution: computed here, or worked out elsewhere.
 *
 * @param on the day it was made
 * @param require ratios built over designed, by name: {@code stiffness}, {@code moment}, {@code
 *     shear}, {@code strength}, {@code reserve} …
 * @param lessBecause why less than as drawn is asked, by the name of each limit below 1
 * @param notStructural who says that nothing structural depends on it, though it looks so
 * @param allow the most that may be, by name: {@code mass}, {@code thickness}
 * @param by who worked it out, where that was elsewhere
 * @param numbers what came out of a check worked out elsewhere, by name as in {@code require}
 * @param sources where the inputs come from, where the materials do not say it
 * @param factors knock-down factors on both parts, by name as in {@code knock-downs}
 * @param knockDowns what takes from strength or stiffness, on one part or both
 * @param menu what a remedy may add
 * @param against materials that the part touches, such as the plate a bolt goes through
 */
public record Assessment(
    String id,
    Method method,
    Optional<LocalDate> on,
    Optional<Ref> designed,
    Optional<Ref> built,
    Map<Ref, BigDecimal> require,
    Map<Ref, String> lessBecause,
    Optional<NotStructural> notStructural,
    Map<Ref, BigDecimal> allow,
    Optional<WeakLink> weakLink,
    Optional<Load> load,
    Optional<Ref> by,
    Map<Ref, BigDecimal> numbers,
    List<String> sources,
    Map<Ref, BigDecimal> factors,
    List<KnockDown> knockDowns,
    List<Addition> menu,
    List<Ref> against,
    List<Evidence> evidence,
    Optional<String> remark,
    Written at)
    implements Entry {
  /** Somebody entitled to structural work says that nothing structural hangs on this. */
  public record NotStructural(Ref by, LocalDate on, String why, At at) {
    static NotStructural read(Keys k) {
      return new NotStructural(
          k.key("by", "somebody entitled to structural work", "designer").ref(Kind.PARTIES),
          k.key("on", "when", "2026-02-14").happened(),
          k.key("why", "why", "it carries nothing but its own weight").text(),
          k.at());
    }
  }

  /** How it is worked out. */
  public enum Method {
    SECTION,
    PANEL,
    LAMINATE,
    TIMBER,
    BOLT,
    EXTERNAL;

    /** Whether it works out a beam. */
    public boolean isOfBeam() {
      return this == SECTION || this == TIMBER;
    }
  }

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

  /**
   * What the part carries. A force given, or worked out from speed, area and lift coefficient.
   *
   * @param overhang how far the part reaches beyond its second support
   * @param selfWeight whether the section's own weight is added, taken as level: each section its
   *     own
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
          k.key(
                  "source",
                  "where the load comes from; without one no reserve passes",
                  "drawing D-07")
              .maybeText(),
          k.at());
    }
  }

  /**
   * Something that a remedy may add to the built section.
   *
   * @param material the cloth of which plies are added
   * @param faces how many faces take the plies: 1 or 2
   * @param most the largest number of plies or steps
   * @param step how much is added at a time where it is no cloth
   * @param dimension the measure that grows, such as {@code core} or {@code spine}
   */
  public record Addition(
      Optional<Ref> material,
      Optional<Integer> faces,
      Optional<Quantity> step,
      Optional<String> dimension,
      Optional<Integer> most,
      Optional<Money> cost,
      At at) {
    static Addition read(Keys k) {
      return new Addition(
          k.key("material", "the cloth of which plies are added", "glass-200")
              .maybeRef(Kind.MATERIALS),
          k.key("faces", "how many faces take the plies: 1 or 2", "2").maybeCount(),
          k.key("step", "how much is added at a time, where it is no cloth", "2 mm")
              .between("0.01 mm", "1 m")
              .maybeMeasure(Unit.ONE, Dimension.LENGTH),
          k.key("dimension", "the measure that grows, such as core or spine", "core").maybeText(),
          k.key("most", "the largest number of plies or steps", "3").maybeCount(),
          k.key("cost", "what one ply or step costs", "8 EUR").maybeMoney(),
          k.at());
    }
  }

  /**
   * What takes from the strength or stiffness of a part.
   *
   * @param on what it is for
   * @param value what it leaves, above 0 to 2
   * @param slope of a scarf: its length over the thickness
   * @param lasts how long the load lies on wood
   * @param serviceClass of wood: 1 indoors, 2 under cover, 3 in the open
   * @param side which part it is on
   * @param layer the only layer that it is on, counted from 1 at the bottom
   */
  public record KnockDown(
      For on,
      Optional<BigDecimal> value,
      Optional<BigDecimal> slope,
      Optional<Lasts> lasts,
      Optional<Integer> serviceClass,
      Side side,
      Optional<Integer> layer,
      Optional<String> source,
      At at) {
    /**
     * What it is for; stiffness to metal name what they are on, a design stress is of all
     * strengths, the others are of timber.
     */
    public enum For {
      MOISTURE,
      DURATION,
      GRADE,
      TEMPERATURE,
      SCARF,
      SLOPE_OF_GRAIN,
      STIFFNESS,
      LAMINATE,
      CORE,
      METAL,
      DESIGN_STRESS;

      /** As a ledger writes it. */
      public String word() {
        return Word.key(this);
      }

      /** All of them, as a ledger writes them. */
      public static List<String> words() {
        return Arrays.stream(values()).map(For::word).toList();
      }

      public static Optional<For> of(String word) {
        return Arrays.stream(values()).filter(one -> one.word().equals(word)).findFirst();
      }
    }

    /** How long a load lies on wood, as EN 1995-1-1 sorts it. */
    public enum Lasts {
      PERMANENT,
      LONG,
      MEDIUM,
      SHORT,
      INSTANTANEOUS
    }

    /** Which part it is on. */
    public enum Side {
      DESIGNED,
      BUILT,
      BOTH
    }

    static KnockDown read(Keys k) {
      return new KnockDown(
          k.key("for", "what takes from the strength", "scarf").choice(For.class, For.GRADE),
          k.key(
                  "value",
                  "what it leaves, above 0 to 2; of a design-stress by ISO 12215-5 without one a"
                      + " share that is not confirmed",
                  "0.85")
              .maybe(Sorts.RATIO),
          k.key("slope", "of a scarf: its length over the thickness", "12").maybeNumber(),
          k.key("lasts", "how long the load lies on wood, where no value is stated", "short")
              .maybeChoice(Lasts.class),
          k.key("service-class", "of wood: 1 indoors, 2 under cover, 3 in the open", "3")
              .maybeCount(),
          k.key("on", "which part it is on; both where not said", "built")
              .maybeChoice(Side.class)
              .orElse(Side.BOTH),
          k.key("layer", "the only layer that it is on, counted from the bottom", "1").maybeCount(),
          k.key("source", "where the value comes from; without one nothing passes", "EN 1912:2012")
              .maybeText(),
          k.at());
    }
  }

  static Assessment read(Keys k) {
    return new Assessment(
        k.id("sole-board"),
        k.key(
                "method",
                "how it is worked out; external is worked out elsewhere, by somebody you name",
                "section")
            .choice(Method.class, Method.EXTERNAL),
        k.key("on", "the day it was made", "2026-02-14").begins("TODAY").opens().maybeHappened(),
        k.key("designed", "the section as drawn", "sole-as-drawn").maybeRef(Kind.SECTIONS),
        k.key("built", "the section as you would build it", "sole-as-built")
            .maybeRef(Kind.SECTIONS),
        k.key(
                "require",
                "built over designed, at least, by name: stiffness, moment, shear, strength,"
                    + " reserve",
                "{stiffness: 1.0, moment: 1.0, shear: 1.0}")
            .named(Sorts.RATIO),
        k.key(
                "less-because",
                "why less than as drawn is asked, by the name of each limit below 1",
                "{shear: the drawn one is three times what is needed}")
            .named(Sorts.WORD),
        k.key(
                "not-structural",
                "who says that nothing structural depends on it, though it looks so")
            .maybeGroup(NotStructural::read),
        k.key("allow", "built over designed, at most, by name: mass, thickness", "{mass: 1.2}")
            .named(Sorts.RATIO),
        k.key("weak-link", "a part that shall break before another").maybeGroup(WeakLink::read),
        k.key(
                "load",
                "what the part carries: a force, or speed, area and lift of a foil",
                "{tip-force: 900 N, span: 1.15 m, factor: 3, self-weight: yes}")
            .maybeGroup(Load::read),
        k.key("by", "who worked it out, where that was elsewhere", "designer")
            .maybeRef(Kind.PARTIES),
        k.key("numbers", "what came out elsewhere, by name as in require", "{stiffness: 1.08}")
            .named(Sorts.RATIO),
        k.key(
                "sources",
                "where the values of a material or a factor come from, named before a colon, where"
                    + " the record does not say it",
                "[\"larch: test of the yard\"]")
            .list(Sorts.WORD),
        k.key(
                "factors",
                "knock-downs on both parts, by name as under knock-downs; their source stands"
                    + " among the sources",
                "{moisture: 0.9}")
            .named(Sorts.RATIO),
        k.key("knock-downs", "what takes from strength or stiffness, each with its source")
            .each(KnockDown::read),
        k.key(
                "menu",
                "what a remedy may add",
                "[{material: glass-200, faces: 2, most: 3, cost: 8 EUR}]")
            .each(Addition::read),
        k.key("against", "materials that its metal touches", "[aluminium-5083-h116-h321-plate]")
            .refs(Kind.MATERIALS),
        k.key("evidence", "files that show it", "[evidence/letter.txt]")
            .each("file", Evidence::read),
        k.key("remark", "what else there is to say", "the scarf lies inboard of the load")
            .maybeText(),
        k.written());
  }

  @Override
  public Kind kind() {
    return Kind.ASSESSMENTS;
  }
}

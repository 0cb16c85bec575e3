package kitwright.ledger;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.value.Dimension;
import kitwright.value.Misread;
import kitwright.value.Money;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Unit;
import kitwright.yaml.Fields;

/**
 * An engineering check of a substitution: computed here, or worked out elsewhere.
 *
 * @param on the day it was made
 * @param require ratios built over designed, by name: {@code stiffness}, {@code moment}, {@code
 *     shear}, {@code strength}, {@code reserve} …
 * @param lessBecause why less than as drawn is asked, by the name of each limit below 1
 * @param notStructural who says that nothing structural hangs on it, though it looks so
 * @param allow the most that may be, by name: {@code mass}, {@code thickness}
 * @param by who worked it out, where that was elsewhere
 * @param numbers what came out of a check worked out elsewhere, by name as in {@code require}
 * @param sources where the inputs come from, where the materials do not say it
 * @param factors knock-down factors by name: {@code moisture}, {@code duration}, {@code grade}, …
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
    List<Addition> menu,
    List<Ref> against,
    List<Evidence> evidence,
    Optional<String> remark,
    Written at)
    implements Entry {
  /** Somebody entitled to structural work says that nothing structural hangs on this. */
  public record NotStructural(Ref by, LocalDate on, String why, At at) {
    static NotStructural read(Fields f) {
      return new NotStructural(f.ref("by"), f.day("on"), f.text("why"), At.of(f));
    }
  }

  /** How it is worked out. */
  public enum Method {
    SECTION,
    PANEL,
    LAMINATE,
    TIMBER,
    BOLT,
    EXTERNAL
  }

  /** How a load lies along a part. */
  public enum Shape {
    POINT,
    UNIFORM,
    ELLIPTIC
  }

  /** How a part is held. */
  public enum Support {
    CANTILEVER,
    SIMPLE,
    CLAMPED
  }

  /**
   * A part that shall break before another.
   *
   * @param sacrificial section of the part that shall break
   * @param protectedPart section of the part that shall not
   * @param margin the least ratio of their capacities at the load point
   * @param breaksAt distance from the support at which the break is meant
   */
  public record WeakLink(
      Ref sacrificial, Ref protectedPart, BigDecimal margin, Optional<Quantity> breaksAt, At at) {
    static WeakLink read(Fields f) {
      return new WeakLink(
          f.ref("sacrificial"),
          f.ref("protected"),
          f.number("margin"),
          f.maybeMeasure("breaks-at", Unit.ONE, Dimension.LENGTH),
          At.of(f));
    }
  }

  /**
   * What the part carries. A force given, or worked out from speed, area and lift coefficient.
   *
   * @param selfWeight whether the section's own weight is added, taken as level: each section its
   *     own
   * @param factor safety factor on the load
   */
  public record Load(
      Optional<Shape> shape,
      Optional<Support> support,
      Optional<Quantity> force,
      Optional<Quantity> tipForce,
      Optional<Quantity> pressure,
      Optional<Quantity> span,
      Optional<Quantity> breadth,
      Optional<Quantity> speed,
      Optional<Quantity> area,
      Optional<BigDecimal> lift,
      Optional<Quantity> density,
      boolean selfWeight,
      BigDecimal factor,
      Optional<String> source,
      At at) {
    static Load read(Fields f) {
      return new Load(
          f.maybeChoice("shape", Shape.class),
          f.maybeChoice("support", Support.class),
          f.maybeMeasure("force", Unit.ONE, Dimension.FORCE),
          f.maybeMeasure("tip-force", Unit.ONE, Dimension.FORCE),
          f.maybeMeasure("pressure", Unit.ONE, Dimension.STRESS),
          f.maybeMeasure("span", Unit.ONE, Dimension.LENGTH),
          f.maybeMeasure("breadth", Unit.ONE, Dimension.LENGTH),
          f.maybeMeasure("speed", Unit.ONE, Dimension.SPEED),
          f.maybeMeasure("area", Unit.ONE, Dimension.AREA),
          f.maybeNumber("lift"),
          f.maybeMeasure("density", Unit.ONE, Dimension.DENSITY),
          f.flag("self-weight"),
          f.maybeNumber("factor").orElse(BigDecimal.ONE),
          f.maybeText("source"),
          At.of(f));
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
    static Addition read(Fields f) {
      return new Addition(
          f.maybeRef("material"),
          f.maybeCount("faces"),
          f.maybeMeasure("step", Unit.ONE, Dimension.LENGTH),
          f.maybeText("dimension"),
          f.maybeCount("most"),
          f.maybeMoney("cost"),
          At.of(f));
    }
  }

  private static BigDecimal ratio(String text) throws Misread {
    Quantity ratio = Quantity.parse(text, Unit.ONE, Dimension.RATIO);
    return ratio.amount().multiply(ratio.unit().factor());
  }

  static Assessment read(Fields f) {
    return new Assessment(
        f.id(),
        f.choice("method", Method.class, Method.EXTERNAL),
        f.maybeDay("on"),
        f.maybeRef("designed"),
        f.maybeRef("built"),
        f.map("require", Assessment::ratio),
        f.map("less-because", text -> text),
        f.maybeGroup("not-structural", NotStructural::read),
        f.map("allow", Assessment::ratio),
        f.maybeGroup("weak-link", WeakLink::read),
        f.maybeGroup("load", Load::read),
        f.maybeRef("by"),
        f.map("numbers", Assessment::ratio),
        f.list("sources", text -> text),
        f.map("factors", Assessment::ratio),
        f.each("menu", Addition::read),
        f.refs("against"),
        Evidence.list(f, "evidence"),
        f.maybeText("remark"),
        Written.of(f));
  }

  @Override
  public Kind kind() {
    return Kind.ASSESSMENTS;
  }
}

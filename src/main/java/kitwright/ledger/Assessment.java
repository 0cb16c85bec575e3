package kitwright.ledger;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.value.Dimension;
import kitwright.value.Money;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Unit;

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

package kitwright.ledger;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.value.Dimension;
import kitwright.value.Misread;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Unit;

/**
 * A cross-section, as designed or as built.
 *
 * @param width of a layered section
 * @param layers from bottom to top
 * @param shape of a section that is not layered, with its dimensions
 * @param dimensions by name: {@code height}, {@code width}, {@code diameter}, {@code wall}, {@code
 *     chord}, {@code thickness-ratio}, {@code flange}, {@code web}, {@code span}, …
 * @param skins layers of a skin round a foil or tube, from inside to outside
 * @param members inside the outline: a spine, a web
 * @param outline corners of a polygon, in order round it
 * @param glue between its parts, a material with a bond or shear strength
 * @param grade how much hangs on the part that has this section
 * @param tapersTo the section that it is at the far end of the span
 * @param notch at a support
 */
public record Section(
    String id,
    Optional<String> what,
    Optional<Quantity> width,
    List<Layer> layers,
    Optional<Shape> shape,
    Optional<Ref> material,
    Map<Ref, Quantity> dimensions,
    List<Layer> skins,
    List<Member> members,
    List<Corner> outline,
    Optional<Ref> glue,
    Optional<Grade> grade,
    Optional<Ref> tapersTo,
    Optional<Notch> notch,
    Written at)
    implements Entry {
  /** One of its dimensions, such as {@code height}; empty where it is not stated. */
  public Optional<Quantity> dimension(String name) {
    for (Map.Entry<Ref, Quantity> one : dimensions.entrySet()) {
      if (one.getKey().id().equals(name)) {
        return Optional.of(one.getValue());
      }
    }
    return Optional.empty();
  }

  public boolean isBolt() {
    return shape.filter(Shape.BOLT::equals).isPresent();
  }

  /**
   * A notch over a support.
   *
   * @param depth that is cut away
   * @param corner from the line of the support’s force to the corner of the notch
   * @param slope run of the notch along the beam over its depth; square where it is not said
   * @param opposite whether it is cut on the side away from the support
   */
  public record Notch(
      Quantity depth,
      Optional<Quantity> corner,
      Optional<BigDecimal> slope,
      boolean opposite,
      At at) {
    static Notch read(Keys k) {
      return new Notch(
          k.key("depth", "how deep it is cut", "15 mm")
              .between("0.1 mm", "1 m")
              .measure(Unit.ONE, Dimension.LENGTH),
          k.key("corner", "from the line of the support’s force to its corner", "40 mm")
              .between("0 mm", "1 m")
              .maybeMeasure(Unit.ONE, Dimension.LENGTH),
          k.key("slope", "its run along the beam over its depth; square where not said", "4")
              .maybeNumber(),
          k.key("opposite", "whether it is cut on the side away from the support", "yes").flag(),
          k.at());
    }
  }

  /** The outline of a section. */
  public enum Shape {
    RECTANGLE,
    ROUND,
    TUBE,
    I,
    FOIL,
    POLYGON,
    BOLT,
    NAIL,
    RINGED_NAIL,
    SCREW,
    LAG_SCREW;

    /** Whether it holds parts together and is no part itself. */
    public boolean isFastening() {
      return compareTo(BOLT) >= 0;
    }
  }

  /** How the grain of a layer runs against the length of the part. */
  public enum Grain {
    ALONG,
    ACROSS,
    BIAS
  }

  /**
   * A layer: one material over the whole width, or strips side by side.
   *
   * @param thickness where the layer is not so many plies
   * @param plies of a cloth
   * @param angle of a cloth's first fibre direction to the length, from 0 to 180 degrees
   */
  public record Layer(
      Optional<Ref> material,
      Optional<Quantity> thickness,
      Optional<BigDecimal> plies,
      Optional<Grain> grain,
      Optional<Quantity> angle,
      List<Strip> strips,
      At at) {
    private static final Sort<Quantity> ANGLE =
        Sort.in(
            Unit.DEGREE,
            "degrees",
            "^\\s*[-−]?\\s*" + Sort.NUMBER + "\\s*(deg|°)?\\s*$",
            Layer::angle);
    private static final BigDecimal HALF_TURN = BigDecimal.valueOf(180);

    /** Of the layer, or of its strips. */
    public Stream<Ref> materials() {
      return Stream.concat(
          material.stream(), strips.stream().flatMap(strip -> strip.material().stream()));
    }

    static Layer read(Keys k) {
      return new Layer(
          k.key("material", "its material, an id of the table of materials", "sitka-spruce")
              .maybeRef(Kind.MATERIALS),
          k.key("thickness", "its thickness, where it is not so many plies", "24 mm")
              .between("0.01 mm", "1 m")
              .maybeMeasure(Unit.ONE, Dimension.LENGTH),
          k.key("plies", "so many plies of a cloth", "2").maybeNumber(),
          k.key("grain", "how its grain runs, against the length of the part", "along")
              .maybeChoice(Grain.class),
          k.key("angle", "from the length of the part to a cloth’s first fibre direction", "45 deg")
              .maybe(ANGLE),
          k.key("strips", "strips side by side, where it is not one material over the whole width")
              .each(Strip::read),
          k.at());
    }

    /** Plies lie at plus and minus: −45 degrees is the same direction as 135. */
    private static Quantity angle(String text, Keys keys) throws Misread {
      boolean minus = text.startsWith("-") || text.startsWith("−");
      Quantity angle =
          Quantity.parse(minus ? text.substring(1).strip() : text, Unit.DEGREE, Dimension.ANGLE);
      return minus
          ? new Quantity(HALF_TURN.subtract(angle.amount().remainder(HALF_TURN)), Unit.DEGREE)
          : angle;
    }
  }

  /** A strip of a layer; without a material it is a void. */
  public record Strip(
      Optional<Ref> material, Optional<Grain> grain, Quantity width, boolean hollow, At at) {
    static Strip read(Keys k) {
      Optional<Ref> material =
          k.key("material", "its material, an id of the table of materials", "sitka-spruce")
              .maybeRef(Kind.MATERIALS);
      Optional<Grain> grain =
          k.key("grain", "how its grain runs, against the length of the part", "along")
              .maybeChoice(Grain.class);
      Optional<Quantity> width =
          k.key("width", "its width", "30 mm")
              .between("0.1 mm", "5 m")
              .maybeMeasure(Unit.ONE, Dimension.LENGTH);
      Optional<Quantity> hollow =
          k.key("void", "the width of an empty strip, in place of material and width", "40 mm")
              .between("0.1 mm", "5 m")
              .maybeMeasure(Unit.ONE, Dimension.LENGTH);
      At at = k.at();
      if (k.isSound() && width.isEmpty() && hollow.isEmpty()) {
        k.missing("width");
      }
      return new Strip(
          material,
          grain,
          hollow.or(() -> width).orElse(Quantity.none(Unit.MM)),
          hollow.isPresent(),
          at);
    }
  }

  /**
   * A member inside an outline, such as a spine, reaching from skin to skin.
   *
   * @param at where its middle lies, from the leading edge or the left corner; at three tenths of
   *     the chord where it is not said
   */
  public record Member(
      String what,
      Ref material,
      Quantity width,
      Optional<Quantity> at,
      Optional<Quantity> height,
      At place) {
    static Member read(Keys k) {
      return new Member(
          k.key("what", "what it is", "spine").text(),
          k.key("material", "its material, an id of the table of materials", "sitka-spruce")
              .ref(Kind.MATERIALS),
          k.key("width", "its width", "40 mm")
              .between("0.1 mm", "5 m")
              .measure(Unit.ONE, Dimension.LENGTH),
          k.key(
                  "at",
                  "where its middle lies, from the leading edge or the left corner; three tenths of"
                      + " the chord where it is not said",
                  "90 mm")
              .between("0 mm", "5 m")
              .maybeMeasure(Unit.ONE, Dimension.LENGTH),
          k.key("height", "its height, where it does not reach from skin to skin", "20 mm")
              .between("0.1 mm", "5 m")
              .maybeMeasure(Unit.ONE, Dimension.LENGTH),
          k.at());
    }
  }

  /**
   * A corner of a polygon.
   *
   * @param wall of the side from it to the next corner, of a hollow one
   */
  public record Corner(Quantity y, Quantity z, Optional<Quantity> wall) {
    static Corner read(Keys k) {
      return new Corner(
          k.key("y", "across", "0 mm").between("0 mm", "10 m").measure(Unit.ONE, Dimension.LENGTH),
          k.key("z", "up", "60 mm").between("0 mm", "10 m").measure(Unit.ONE, Dimension.LENGTH),
          k.key(
                  "wall",
                  "how thick the side from here to the next corner is, where each side of a hollow"
                      + " polygon has its own",
                  "12 mm")
              .between("0.1 mm", "1 m")
              .maybeMeasure(Unit.ONE, Dimension.LENGTH));
    }
  }

  static Section read(Keys k) {
    return new Section(
        k.id("sole-as-drawn"),
        k.key("what", "which part it is a section of", "a board of the cabin sole").maybeText(),
        k.key("width", "the width of a layered section", "120 mm")
            .between("0.1 mm", "10 m")
            .maybeMeasure(Unit.MM, Dimension.LENGTH),
        k.key(
                "layers",
                "from bottom to top",
                "[{material: sitka-spruce, thickness: 24 mm, grain: along}]")
            .each(Layer::read),
        k.key("shape", "the outline of a section that is not layered", "tube")
            .maybeChoice(Shape.class),
        k.key(
                "material",
                "the material within the outline, an id of the table of materials",
                "sitka-spruce")
            .maybeRef(Kind.MATERIALS),
        k.key(
                "dimensions",
                "height, width, diameter, wall, chord, thickness-ratio, flange, web; of"
                    + " fastenings count, spacing, end-distance, edge-distance, washer,"
                    + " washer-thickness, stress-area, penetration, root, head",
                "{diameter: 80 mm, wall: 5 mm}")
            .named(Sorts.ANY),
        k.key(
                "skins",
                "layers of a skin round a foil or tube, from inside to outside",
                "[{material: glass-cloth, plies: 2}]")
            .each(Layer::read),
        k.key("members", "what stands inside the outline: a spine, a web").each(Member::read),
        k.key("outline", "corners of a polygon, in order round it").each(Corner::read),
        k.key(
                "glue",
                "the glue between its parts, a material with a bond or shear strength",
                "epoxy-slow")
            .maybeRef(Kind.MATERIALS),
        k.key("grade", "how much depends on the part that has this section", "structural")
            .maybeChoice(Grade.class),
        k.key("tapers-to", "the section that it is at the far end of the span", "mast-head")
            .maybeRef(Kind.SECTIONS),
        k.key("notch", "a notch over a support").maybeGroup(Notch::read),
        k.written());
  }

  @Override
  public Kind kind() {
    return Kind.SECTIONS;
  }
}
